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
    /// Columns hold their starting widths (at 100 % text) until the user drags them.
    void set_start_widths(const std::vector<int>& widths);
    /// Several rows can be chosen, for labels or a print.
    void set_many_can_be_chosen(bool many);
    /// A short table in a card stands at its full height and does not scroll by itself.
    void set_full_height(bool full);

    /// The id of the row with the keyboard, 0 without one.
    qint64 current_id() const;
    std::vector<qint64> chosen_ids() const;
    void choose(qint64 id);
    /// The cell that stays open because its text was not taken, or nothing.
    QWidget* refused_cell() const;

    /// Chooses that row alone, whatever keys are held down meanwhile; an id that is not there chooses none.
    QSize sizeHint() const override;
    /// The same for several rows. Gives back whether one of them is there; what was chosen stays where none is.
    bool choose_rows(const std::vector<qint64>& ids);
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
    void remember_widths();
    void edit_below(int row, int column);

    QString m_name;
    RowsModelBase* m_rows = nullptr;
    QString m_empty_text;
    std::vector<int> m_start_widths;
    std::vector<int> m_widths;
    int m_stretched = -1;
    bool m_full_height = false;
    bool m_laying = false;
};

} // namespace soakbook::ui
