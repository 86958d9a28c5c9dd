// SPDX-License-Identifier: GPL-3.0-or-later
// The card of the pail that is chosen, or of several: what they hold, and what can be done with them.
#pragma once

#include "core/work/store_view.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"

#include <vector>

class QPushButton;

namespace soakbook::ui {

class FactGrid;
class FlowLayout;

class PailCard : public Card {
    Q_OBJECT

public:
    explicit PailCard(Desk& desk, QWidget* parent = nullptr);
    void show_pails(const std::vector<work::PailLine>& pails);
    /// Puts the keyboard on the first thing that can be done.
    void take_focus();

    /// The history of the one that is chosen.
    HistoryOf history() const;

    // What the buttons do, with the pails that are shown.
    void print_labels();
    void move();
    void discard();

Q_SIGNALS:
    /// Esc: back to the table.
    void left();

private:
    void make_buttons();
    QPushButton* add_button(const QString& words, const char* name);
    void settle_buttons();
    const work::PailLine& pail() const { return m_pails.front(); }
    /// Those shown whose liquid is still there.
    std::vector<work::PailId> standing() const;
    void show_one();
    void show_several();

    Desk& m_desk;
    std::vector<work::PailLine> m_pails;
    StateMark* m_state;
    FactGrid* m_facts;
    QLabel* m_means;
    QWidget* m_buttons;
    FlowLayout* m_flow;
    QPushButton* m_labels = nullptr;
    QPushButton* m_move = nullptr;
    QPushButton* m_in_part = nullptr;
    QPushButton* m_discard = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_history = nullptr;
};

} // namespace soakbook::ui
