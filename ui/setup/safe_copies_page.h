// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: how safe the workbook is, where its copies lie, and what can be done with one.
#pragma once

#include "ui/parts/habits.h"
#include "ui/setup/setup_page.h"
#include "ui/setup/setup_place.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace soakbook::ui {

class Card;
class CopiesTable;
class Desk;
class SecondPlaceCard;
class StateLine;

class SafeCopiesPage : public SetupPage {
    Q_OBJECT

public:
    SafeCopiesPage(Desk& desk, const WorkbookDoors& doors);
    void refresh() override;
    void take_focus() override;

private:
    void build_state();
    void build_list();
    void refresh_state();
    void refresh_list();
    void refresh_choice();
    void copy_now();
    void send_copy();
    void put_back();
    void compare();
    void answer(const QString& words);

    Desk& m_desk;
    WorkbookDoors m_doors;
    Habits m_habits; ///< for the form that puts a copy back: it is no entry, and works while looking alone
    StateLine* m_state = nullptr;
    QLabel* m_where = nullptr;
    QLabel* m_answer = nullptr;
    QProgressBar* m_progress = nullptr;
    QPushButton* m_now = nullptr;
    QPushButton* m_send = nullptr;
    SecondPlaceCard* m_second = nullptr;
    CopiesTable* m_copies = nullptr;
    QLabel* m_choice = nullptr;
    QPushButton* m_differs = nullptr;
    QPushButton* m_put_back = nullptr;
};

} // namespace soakbook::ui
