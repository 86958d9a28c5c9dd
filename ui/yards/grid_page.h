// SPDX-License-Identifier: GPL-3.0-or-later
// The ground of strips in, strips out and count: the hives of a yard as one grid that is entered in one go. Arrows and
// Enter walk it, a digit begins to type, Ctrl+Enter enters the whole of it, Esc goes back and keeps what was typed.
#pragma once

#include "core/work/how.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/parts/rows_model.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

class FlowLayout;
class HowButton;
class LowTable;
class PageScroll;
class RecordTable;
class Sentence;

class GridPage : public QWidget {
    Q_OBJECT

public:
    /// `name` is where the widths of the columns are kept and what the table and the button are called.
    GridPage(Desk& desk, const QString& name, const QString& spoken_name, const QString& enter_words, QWidget* parent);

    virtual QString title() const = 0;
    /// Asks the workbook again; what was typed stays.
    virtual void refresh() = 0;
    /// The grid as it was planned, without what was typed.
    virtual void forget_typing() = 0;
    void take_focus();

Q_SIGNALS:
    /// Back to where the page was opened from.
    void left();
    /// The grid was entered; the words say what came of it.
    void entered(const QString& news);
    void title_changed();

protected:
    Desk& desk() const { return m_desk; }
    FormFrame* form() const { return m_form; }
    Sentence* sentence() const { return m_sentence; }
    RecordTable* table() const;
    void set_heading(const QString& text);
    /// Softly beside the buttons: how many cells were typed over.
    void set_aside(const QString& text);
    QPushButton* add_button(const QString& words, const QString& object_name);
    void set_grid(RowsModelBase* model, const std::vector<int>& widths, int stretched_column, std::vector<int> may_go);
    /// Looks again which columns have room, after one was hidden or shown.
    void fit_columns();
    void add_caution(const QString& text);
    /// The column where the keyboard begins.
    void set_first_column(int column) { m_first_column = column; }
    /// Words under the head: what stands in the way. Empty puts them away.
    void set_complaint(const QString& words);
    /// Said of a cell whose text does not read.
    static QString number_wanted();
    /// Puts the keyboard into that cell.
    void go_to(qint64 row_id, int column);
    /// A refusal at row `index` of the entry that was sent; `part` is the rest of the field's name.
    virtual void refused_at(int index, const QString& part, const QString& words) = 0;
    /// The button that gives up what was typed is seen only where there is something.
    void settle_give_up();
    /// Called by a cell after each typing.
    void note_typing();
    /// Computes what follows from the typing, once for several keys.
    virtual void figure() = 0;
    /// Tells how the figures of the row with the keyboard came about, with tell_how.
    virtual void show_how() = 0;
    /// `of` is the hive whose figures they are; none put the button away.
    void tell_how(const std::vector<work::How>& hows, const QString& of);
    /// Call it when all fields are in: what is refused in a row is said under the head.
    void show_grid_refusals();

private:
    void lay_form();
    void place_refusal(const QString& rest, const QString& words);

    Desk& m_desk;
    PageScroll* m_scroll;
    Sentence* m_sentence;
    FormFrame* m_form;
    QLabel* m_heading;
    QLabel* m_aside;
    FlowLayout* m_buttons;
    HowButton* m_how;
    QPushButton* m_give_up;
    QLabel* m_complaint;
    LowTable* m_table;
    std::vector<int> m_may_go;
    QVBoxLayout* m_cautions;
    int m_first_column = 0;
};

/// The first cell whose text does not read, as a refusal at its row among those that were sent.
template <class Row, class Key>
std::optional<work::Refusal> unread_cell(const RowsModel<Row>& rows, const std::vector<Key>& sent) {
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const Row* row = rows.find(sent[i].value);
        if (row != nullptr && !row->unread().isEmpty()) {
            const QString field = QStringLiteral("rows/%1/").arg(i) + row->unread();
            return work::Refusal{work::Why::unreadable, field, {}, false};
        }
    }
    return std::nullopt;
}

} // namespace soakbook::ui
