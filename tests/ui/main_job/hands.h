// SPDX-License-Identifier: GPL-3.0-or-later
// What a person at the program has: eyes for the words on the window in front, ten fingers, a mouse. Fields, buttons and tables
// are known by their visible or spoken names alone. Every key and every click is counted.
#pragma once

#include <QString>
#include <QStringList>

#include <functional>
#include <ostream>

class QAbstractButton;
class QTableView;
class QWidget;

/// A failed comparison of texts shows the texts.
inline void PrintTo(const QString& text, std::ostream* out) { *out << '"' << text.toStdString() << '"'; }

namespace soakbook::tests {

class Hands {
public:
    // Keys go to whatever has the keyboard.
    void type(const QString& text);
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    /// Ctrl+Enter: makes the entry of a form.
    void enter();
    /// Answers a question of the form with "keep it as it is", after having had time to read it.
    void keep_as_it_is();
    /// Presses Tab until the keyboard stands in what is read aloud as `name`, or as `name` and an answer.
    void tab_to(const QString& name);
    /// Goes to a field and types over what stands there.
    void fill(const QString& field, const QString& text);
    /// Answers a question with its first letter.
    void answer(const QString& question, bool yes);
    /// Chooses from a list by typing the beginning of an entry.
    void choose(const QString& field, const QString& entry);
    /// Goes down a list that has the keyboard to the entry that begins with `entry`.
    void walk_list(const QString& list, const QString& entry);
    /// Walks to a cell with the arrow keys; `row` is any text of the row.
    void walk_to_cell(const QString& table, const QString& row, const QString& column);
    void type_into_cell(const QString& table, const QString& row, const QString& column, const QString& text);

    // The mouse.
    void click(const QString& button);
    /// Clicks a button that asks for a file, and answers with that one.
    void click_and_pick_file(const QString& button, const QString& path);

    // Eyes.
    /// The window in front: a dialog, or the program's window.
    QWidget* front() const;
    /// All that can be read there, one piece a line.
    QString words() const;
    bool sees(const QString& text) const;
    /// The spoken name of what has the keyboard.
    QString here() const;
    /// The text in a field of the window in front.
    QString text_of(const QString& field) const;
    QString cell(const QString& table, const QString& row, const QString& column) const;
    /// All texts of a table, a line a row, cells parted by " | ".
    QString rows(const QString& table) const;

    /// Lets the program do what it has put off.
    void settle() const;
    /// Keys and clicks since the last start_count().
    int count() const { return m_keys + m_clicks; }
    int keys() const { return m_keys; }
    int clicks() const { return m_clicks; }
    void start_count();

private:
    [[noreturn]] void lost(const QString& what) const;
    QAbstractButton* button(const QString& words) const;
    QTableView* table(const QString& name) const;
    int row_of(const QTableView& table, const QString& text) const;
    int column_of(const QTableView& table, const QString& header) const;
    bool is_at(const QString& name) const;
    QWidget* keyboard() const;

    int m_keys = 0;
    int m_clicks = 0;
};

} // namespace soakbook::tests
