// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: the way to another workbook, to a copy beside this one, and to what is left of a damaged one.
#pragma once

#include "ui/setup/setup_page.h"
#include "ui/setup/setup_place.h"

class QLabel;
class QPushButton;

namespace soakbook::ui {

class Card;

class WorkbooksPage : public SetupPage {
    Q_OBJECT

public:
    WorkbooksPage(Desk& desk, const WorkbookDoors& doors);
    void refresh() override {}
    void take_focus() override;
    /// Opens what is left in a damaged file; of the open one it says that there is nothing to read.
    void read_damaged(const QString& path);

private:
    void add(Card& card, const QString& words, const QString& name, const std::function<void()>& door);
    QString ask_for_file(const QString& title);

    Desk& m_desk;
    QPushButton* m_first = nullptr;
    QLabel* m_answer = nullptr;
};

} // namespace soakbook::ui
