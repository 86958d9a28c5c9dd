// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: the second place for safe copies, chosen here.
#pragma once

#include "ui/parts/cards.h"

#include <functional>

namespace soakbook::ui {

class CopyKeeper;
class Desk;
class StateLine;

class SecondPlaceCard : public Card {
    Q_OBJECT

public:
    /// `home` is the folder of safe copies on this computer.
    SecondPlaceCard(Desk& desk, QString home, CopyKeeper* keeper, QWidget* parent = nullptr);
    void refresh();

private:
    void choose();
    void choose_none();

    Desk& m_desk;
    QString m_home;
    CopyKeeper* m_keeper;
    StateLine* m_state;
    QLabel* m_answer;
    QPushButton* m_choose;
    QPushButton* m_none;
};

/// Something else answers which folder is to be the second place, such as a test; an empty function gives the dialog back
/// its place.
void let_folder_answer(std::function<QString()> answer);

} // namespace soakbook::ui
