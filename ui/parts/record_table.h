// SPDX-License-Identifier: GPL-3.0-or-later
// The table of every page: rows a gloved hand can hit, figures to the right, codes in their own type, states with shape and
// word; Enter or a double click opens a row.
#pragma once

#include <QTableView>

#include <vector>

namespace soakbook::ui {

class RowsModelBase;

class RecordTable : public QTableView {
    Q_OBJECT

public:
    /// `name` is where the widths of the columns are remembered, such as "store/bags"; read aloud as `spoken_name`.
    RecordTable(const QString& name, const QString& spoken_name, QWidget* parent = nullptr);

    void set_rows_model(RowsModelBase* model);
    RowsModelBase* rows_model() const { return m_rows; }
    /// What stands in the table while it has no row.
    void set_empty_text(const QString& text);
    /// The column that takes the width that is left; the last one at first.
    void set_stretched_column(int column);
    /// Widths to begin with (at 100 % text). Columns give way or grow to what stands in them; one that the user dragged holds.
    void set_start_widths(const std::vector<int>& widths);
    /// Columns that go, the first ones first, while the others have no room.
    void set_spared_columns(std::vector<int> columns);
    /// Rows of two lines: what a column has below stands small under its text.
    void set_two_lines(bool two);
    /// Several rows can be chosen, for labels or a print.
    void set_many_can_be_chosen(bool many);
    /// A short table in a card stands at its full height and does not scroll by itself.
    void set_full_height(bool full);

    /// The id of the row with the keyboard, 0 without one.
    qint64 current_id() const;
    std::vector<qint64> chosen_ids() const;
    /// Chooses that row alone, whatever keys are held down meanwhile; an id that is not there chooses none.
    void choose(qint64 id);
    /// The same for several rows. Gives back whether one of them is there; what was chosen stays where none is.
    bool choose_rows(const std::vector<qint64>& ids);
    /// The cell that stays open because its text was not taken, or nothing.
    QWidget* refused_cell() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// Enter or a double click on a row.
    void opened(qint64 id);
    /// Another row has the keyboard.
    void current_changed(qint64 id);
    void chosen_changed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void set_heights();
    void lay_widths();
    void lay_widths_soon();
    void measure();
    std::vector<int> fitted(int room);
    void remember_widths();
    void edit_below(int row, int column);

    QString m_name;
    RowsModelBase* m_rows = nullptr;
    QString m_empty_text;
    std::vector<int> m_start_widths;
    std::vector<int> m_widths;
    std::vector<int> m_content; ///< the width that what stands in a column needs; empty when it is to be measured anew
    std::vector<bool> m_dragged;
    std::vector<int> m_spared;
    int m_stretched = -1;
    bool m_full_height = false;
    bool m_two_lines = false;
    bool m_laying = false;
    bool m_lay_soon = false;
};

} // namespace soakbook::ui
