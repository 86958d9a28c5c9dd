// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of people, strip kinds and vessels share: a card with a table, a button that adds, and a form to change a row.
#pragma once

#include "ui/papers/history_dialog.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/setup/setup_page.h"

#include <functional>

namespace soakbook::ui {

class Card;
class Desk;
class FormDialog;

class ListPage : public SetupPage {
    Q_OBJECT

public:
    ListPage(Desk& desk, const QString& heading, const QString& explanation, const QString& add_words, const QString& name);
    void take_focus() override;

protected:
    /// Opens the form of the row with that id; 0 for a new one.
    virtual void open_form(qint64 id) = 0;
    /// A further quiet button in the card's head.
    void add_button(const QString& words, const QString& name, std::function<void()> pressed);
    Desk& desk() const { return m_desk; }
    RecordTable* table() const { return m_table; }
    /// Opens a dialog and asks the workbook again once its entry is made. `form` names its draft and `id` the row, 0 for a new
    /// one; `add` is the button that opens it for a new one.
    void open_dialog(FormDialog* dialog, const QString& form, qint64 id, const QString& add = {});

private:
    HistoryOf history() const;
    Desk& m_desk;
    QString m_name;
    Card* m_card;
    RecordTable* m_table;
};

} // namespace soakbook::ui
