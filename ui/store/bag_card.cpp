// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_card.h"

#include "ui/papers/bag_labels.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/how_button.h"
#include "ui/parts/theme.h"
#include "ui/store/bag_facts.h"
#include "ui/store/bag_forms.h"
#include "ui/store/bag_hows.h"
#include "ui/store/bag_story.h"
#include "ui/store/fact_grid.h"
#include "ui/papers/history_dialog.h"
#include "ui/store/move_form.h"
#include "ui/store/store_words.h"

#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace soakbook::ui {

using work::BagState;

BagCard::BagCard(Desk& desk, QWidget* parent)
    : Card({}, parent), m_desk(desk), m_state(new StateMark(State::ready)), m_facts(new FactGrid), m_how(new HowButton(this)),
      m_buttons(new QWidget), m_flow(new FlowLayout(6, 6, m_buttons)), m_story_head(nullptr),
      m_story(new BagStory(desk)) {
    setObjectName(QStringLiteral("bag_card"));
    add_head_widget(m_state);
    column()->addWidget(m_facts);
    m_how->setObjectName(QStringLiteral("bag_how"));
    column()->addWidget(m_how, 0, Qt::AlignLeft);
    make_buttons();
    column()->addWidget(m_buttons);
    //: Heading of a list of what happened to a bag
    m_story_head = make_label(tr("What happened"), Type::small_strong);
    column()->addWidget(m_story_head);
    column()->addWidget(m_story);
    column()->addStretch(1);
    auto* back = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    back->setContext(Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &BagCard::left);
    show_bags({});
}

QPushButton* BagCard::add_button(const QString& words, const char* name) {
    auto* button = new QPushButton(words, m_buttons);
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(true);
    set_kind(button, "row");
    m_flow->addWidget(button);
    return button;
}

void BagCard::make_buttons() {
    //: Filled button: previews the labels of the bags that are chosen
    m_labels = add_button(tr("Print labels"), "bag_labels");
    set_kind(m_labels, "primary");
    //: Button: says where a bag stands from now on
    m_move = add_button(tr("Move"), "bag_move");
    //: Button: a bag was opened
    m_open = add_button(tr("Opened"), "bag_opened");
    //: Button: a bag that was opened is sealed again
    m_reseal = add_button(tr("Resealed"), "bag_resealed");
    //: Button: throws strips away
    m_discard = add_button(tr("Discard strips"), "bag_discard");
    //: Button: the strips of a bag were counted anew
    m_recount = add_button(tr("Count anew"), "bag_recount");
    //: Button: the bag is filled in the Shed
    m_fill = add_button(tr("Fill it"), "bag_fill");
    //: Button: puts right what was entered of a bag
    m_correct = add_button(tr("Correct"), "bag_correct");
    //: Button: a spoilt label or a burst bag does not count any more
    m_void = add_button(tr("Make void"), "bag_void");
    m_history = make_history_button(m_desk, this, [this] { return history(); }, QStringLiteral("bag_history"));
    m_flow->addWidget(m_history);
    //: Button: shows the batch a bag was filled from
    m_batch = add_button(tr("Its batch"), "bag_batch");
    connect(m_labels, &QPushButton::clicked, this, &BagCard::print_labels);
    connect(m_move, &QPushButton::clicked, this, &BagCard::move);
    connect(m_discard, &QPushButton::clicked, this, &BagCard::discard);
    connect(m_open, &QPushButton::clicked, this, [this] { open_bag_opened_form(m_desk, bag(), this); });
    connect(m_reseal, &QPushButton::clicked, this, [this] { open_bag_resealed_form(m_desk, bag(), this); });
    connect(m_recount, &QPushButton::clicked, this, [this] { open_recount_form(m_desk, bag(), this); });
    connect(m_correct, &QPushButton::clicked, this, [this] { open_correct_bag_form(m_desk, bag(), this); });
    connect(m_void, &QPushButton::clicked, this, [this] { open_void_bag_form(m_desk, bag(), this); });
    connect(m_batch, &QPushButton::clicked, this, [this] { show_shed("show"); });
    connect(m_fill, &QPushButton::clicked, this, [this] { show_shed("fill_reserved"); });
}

HistoryOf BagCard::history() const {
    if (m_bags.size() != 1)
        return {};
    //: Title of a window; %1 the code of a bag
    return history_of(m_desk, tr("Bag %1").arg(bag().code), QStringLiteral("bag"), bag().id.value);
}

void BagCard::show_shed(const char* task) {
    Q_EMIT wishes({PlaceName::shed, QLatin1String(task), {bag().batch.value}, {}});
}

std::vector<work::BagLine> BagCard::with_strips() const {
    std::vector<work::BagLine> bags;
    for (const work::BagLine& bag : m_bags) {
        if (bag.left > 0 && bag.state != BagState::made_void && bag.state != BagState::reserved)
            bags.push_back(bag);
    }
    return bags;
}

std::vector<work::BagId> BagCard::not_void() const {
    std::vector<work::BagId> bags;
    for (const work::BagLine& bag : m_bags) {
        if (bag.state != BagState::made_void)
            bags.push_back(bag.id);
    }
    return bags;
}

void BagCard::show_bags(const std::vector<work::BagLine>& bags) {
    m_bags = bags;
    const bool one = bags.size() == 1;
    const BagCount count = one ? bag_count(m_desk, bag()) : std::nullopt;
    m_state->setVisible(one && bag_shape(bags.front().state).has_value());
    if (one) {
        //: Heading of a card; %1 the code of a bag
        set_heading(tr("Bag %1").arg(bag().code));
        if (const auto shape = bag_shape(bag().state))
            m_state->set_state(*shape, bag_state_word(bag().state));
        m_facts->set_facts(bag_facts(m_desk, bag(), count));
        m_story->show_bag(bag().id);
    } else if (bags.empty()) {
        //: Heading of a card while no bag is chosen
        set_heading(tr("No bag chosen"));
        //: In a card; its name, and what stands there while no bag is chosen
        m_facts->set_facts(
            {{QString(), tr("Choose a bag: all about it stands here then. Shift and Ctrl choose several.")}});
    } else {
        //: Heading of a card; %n bags are chosen
        set_heading(tr("%n bag(s) chosen", nullptr, static_cast<int>(bags.size())));
        m_facts->set_facts(facts_of_several(m_desk, bags));
    }
    m_how->set_hows(one ? bag_hows(m_desk, bag(), count) : std::vector<work::How>{}, m_desk);
    const bool has_story = one && bag().state != BagState::reserved;
    m_story_head->setVisible(has_story);
    m_story->setVisible(has_story);
    settle_buttons();
}

void BagCard::settle_buttons() {
    const bool one = m_bags.size() == 1;
    const BagState state = one ? bag().state : BagState::made_void;
    const bool counts = one && state != BagState::made_void;
    const bool filled = counts && state != BagState::reserved;
    const bool holds_strips = filled && bag().left > 0;
    const bool is_open = holds_strips && bag().opened_on && !bag().resealed_on;
    m_labels->setVisible(one ? counts && state != BagState::gone : !not_void().empty());
    m_move->setVisible(one ? filled && state != BagState::gone : !not_void().empty());
    m_discard->setVisible(!with_strips().empty());
    m_open->setVisible(holds_strips && !is_open);
    m_reseal->setVisible(is_open);
    m_recount->setVisible(filled);
    m_correct->setVisible(filled);
    m_void->setVisible(counts);
    m_fill->setVisible(counts && !filled);
    m_history->setVisible(one);
    m_batch->setVisible(one);
}

void BagCard::take_focus() {
    for (QPushButton* button : {m_labels, m_history}) {
        if (button->isVisibleTo(this)) {
            button->setFocus(Qt::TabFocusReason);
            return;
        }
    }
}

void BagCard::print_labels() {
    if (const auto bags = not_void(); !bags.empty())
        offer_bag_labels(m_desk, bags, this);
}

void BagCard::move() {
    if (const auto bags = not_void(); !bags.empty())
        open_move_bags(m_desk, bags, m_bags.size() == 1 ? bag().stands : QString(), this);
}

void BagCard::discard() {
    if (const auto bags = with_strips(); !bags.empty())
        open_discard_form(m_desk, bags, this);
}

} // namespace soakbook::ui
