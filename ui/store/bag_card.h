// SPDX-License-Identifier: GPL-3.0-or-later
// The card of the bag that is chosen: everything about it, what happened to it, and what can be done with it. Of
// several bags: what they are together, and what can be done with all of them.
#pragma once

#include "core/work/store_view.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/intent.h"

#include <QString>

#include <vector>

class QPushButton;

namespace soakbook::ui {

class BagStory;
class FactGrid;
class FlowLayout;
class HowButton;

class BagCard : public Card {
    Q_OBJECT

public:
    explicit BagCard(Desk& desk, QWidget* parent = nullptr);
    void show_bags(const std::vector<work::BagLine>& bags);
    /// Puts the keyboard on the first thing that can be done.
    void take_focus();

    /// The history of the one that is chosen.
    HistoryOf history() const;

    // What the buttons do, with the bags that are shown.
    void print_labels();
    void move();
    void discard();

Q_SIGNALS:
    void wishes(const soakbook::ui::Intent& intent);
    /// Esc: back to the table.
    void left();

private:
    void make_buttons();
    QPushButton* add_button(const QString& words, const char* name);
    void settle_buttons();
    const work::BagLine& bag() const { return m_bags.front(); }
    /// Those shown that still hold strips.
    std::vector<work::BagLine> with_strips() const;
    /// Those shown that count.
    std::vector<work::BagId> not_void() const;
    void show_shed(const char* task);

    Desk& m_desk;
    std::vector<work::BagLine> m_bags;
    StateMark* m_state;
    FactGrid* m_facts;
    HowButton* m_how;
    QWidget* m_buttons;
    FlowLayout* m_flow;
    QWidget* m_story_head;
    BagStory* m_story;
    QPushButton* m_labels = nullptr;
    QPushButton* m_move = nullptr;
    QPushButton* m_open = nullptr;
    QPushButton* m_reseal = nullptr;
    QPushButton* m_discard = nullptr;
    QPushButton* m_recount = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_void = nullptr;
    QPushButton* m_history = nullptr;
    QPushButton* m_batch = nullptr;
    QPushButton* m_fill = nullptr;
};

} // namespace soakbook::ui
