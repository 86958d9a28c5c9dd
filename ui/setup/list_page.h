// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of people, strip kinds and vessels share: a card with a table, a button that adds, and a form to change a row.
#pragma once

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
    /// Opens a dialog and asks the workbook again once its entry is made.
    void open_dialog(FormDialog* dialog);

private:
    Desk& m_desk;
    Card* m_card;
    RecordTable* m_table;
};

} // namespace soakbook::ui
