// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/pail_card.h"

#include "core/work/register_view.h"
#include "ui/papers/pail_labels.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"
#include "ui/store/fact_grid.h"
#include "ui/papers/history_dialog.h"
#include "ui/store/move_form.h"
#include "ui/store/pail_forms.h"
#include "ui/store/store_words.h"

#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace soakbook::ui {

using work::PailLine;
using work::PailState;

namespace {

constexpr int card_decimals = 2;

bool is_standing(const PailLine& pail) {
    return pail.state != PailState::used && pail.state != PailState::discarded && pail.state != PailState::made_void;
}

} // namespace

PailCard::PailCard(Desk& desk, QWidget* parent)
    : Card({}, parent), m_desk(desk), m_state(new StateMark(State::ready)), m_facts(new FactGrid),
      m_means(make_soft_label({}, Type::body)), m_buttons(new QWidget), m_flow(new FlowLayout(6, 6, m_buttons)) {
    setObjectName(QStringLiteral("pail_card"));
    column()->addWidget(m_state, 0, Qt::AlignLeft);
    column()->addWidget(m_facts);
    column()->addWidget(m_means);
    make_buttons();
    column()->addWidget(m_buttons);
    column()->addStretch(1);
    auto* back = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    back->setContext(Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &PailCard::left);
    show_pails({});
}

QPushButton* PailCard::add_button(const QString& words, const char* name) {
    auto* button = new QPushButton(words, m_buttons);
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(true);
    set_kind(button, "row");
    m_flow->addWidget(button);
    return button;
}

void PailCard::make_buttons() {
    //: Filled button: previews the labels of the pails that are chosen
    m_labels = add_button(tr("Print labels"), "pail_labels");
    set_kind(m_labels, "primary");
    //: Button: says where a pail stands from now on
    m_move = add_button(tr("Move"), "pail_move");
    //: Button: some of the liquid in a pail was used
    m_in_part = add_button(tr("Used in part"), "pail_used_in_part");
    //: Button: throws the liquid of a pail away
    m_discard = add_button(tr("Discard"), "pail_discard");
    //: Button: puts the mass of a pail right
    m_correct = add_button(tr("Correct mass"), "pail_correct");
    m_history = make_history_button(m_desk, this, [this] { return history(); }, QStringLiteral("pail_history"));
    m_flow->addWidget(m_history);
    connect(m_labels, &QPushButton::clicked, this, &PailCard::print_labels);
    connect(m_move, &QPushButton::clicked, this, &PailCard::move);
    connect(m_discard, &QPushButton::clicked, this, &PailCard::discard);
    connect(m_in_part, &QPushButton::clicked, this, [this] { open_used_in_part_form(m_desk, pail(), this); });
    connect(m_correct, &QPushButton::clicked, this, [this] { open_correct_pail_form(m_desk, pail(), this); });
}

HistoryOf PailCard::history() const {
    if (m_pails.size() != 1)
        return {};
    //: Title of a window; %1 the code of a pail
    return history_of(m_desk, tr("Pail %1").arg(pail().code), QStringLiteral("pail"), pail().id.value);
}

std::vector<work::PailId> PailCard::standing() const {
    std::vector<work::PailId> pails;
    for (const PailLine& pail : m_pails) {
        if (is_standing(pail))
            pails.push_back(pail.id);
    }
    return pails;
}

void PailCard::show_pails(const std::vector<PailLine>& pails) {
    m_pails = pails;
    m_state->setVisible(pails.size() == 1);
    m_means->clear();
    if (pails.size() == 1) {
        show_one();
    } else if (pails.empty()) {
        //: Heading of a card while no pail is chosen
        set_heading(tr("No pail chosen"));
        m_facts->set_facts({});
        //: In a card while no pail is chosen
        m_means->setText(tr("Choose a pail: all about it stands here then."));
    } else {
        show_several();
    }
    m_means->setVisible(!m_means->text().isEmpty());
    settle_buttons();
}

void PailCard::show_one() {
    //: Heading of a card; %1 the code of a pail
    set_heading(tr("Pail %1").arg(pail().code));
    m_state->set_state(pail_shape(pail().state), pail_state_word(pail()));
    m_facts->set_facts({
        //: Name of a fact of a pail: from which batch it was poured
        {tr("Poured from"), pail().batch_code, {}, true},
        //: Name of a fact of a pail: the mass in it
        {tr("Net mass"), m_desk.large(pail().mass, card_decimals)},
        //: Name of a fact of a pail
        {tr("Strength"), strength_or_unknown(m_desk, pail().strength)},
        //: Name of a fact of a pail: the day it was sealed
        {tr("Sealed"), m_desk.day(pail().sealed_on)},
        //: Name of a fact of a pail: the day on which the oldest liquid in it was mixed
        {tr("Oldest liquid"), m_desk.day(pail().oldest_on)},
        //: Name of a fact of a pail: how often its liquid was warmed
        {tr("Warmed"), tr("%n time(s)", nullptr, pail().times_warmed)},
        //: Name of a fact of a pail: how long it has been waiting; %n days
        {tr("Waits"), is_standing(pail()) ? tr("%n day(s)", nullptr, pail().days_waiting) : QString(),
         pail().waits_too_long ? std::optional(State::near) : std::nullopt},
        //: Name of a fact of a pail: the pails that go into a mix only together with it
        {tr("Goes in with"), pail().set.join(QStringLiteral("  ")), {}, true},
        //: Name of a fact of a pail: where it stands
        {tr("Stands"), pail().stands},
        //: Name of a fact of a pail: whether its label was printed
        {tr("Label"), label_word(pail().label), label_shape(pail().label)},
        //: Name of a fact of a pail: why it was thrown away or made void
        {tr("Because"), pail().reason},
    });
    if (pail().state == PailState::only_with_its_set) {
        //: Explains a pail that goes into a mix only with others
        m_means->setText(tr("These pails were poured together, cool or not scraped out: only all of them together have "
                            "the batch's strength."));
    } else if (pail().state == PailState::strength_unknown) {
        //: Explains a pail of unknown strength
        m_means->setText(tr("Its strength is unknown, so it goes into no mix. It can only be thrown away."));
    }
}

void PailCard::show_several() {
    maths::Mass mass{};
    QStringList codes;
    for (const PailLine& pail : m_pails) {
        mass += pail.mass;
        codes << pail.code;
    }
    //: Heading of a card; %n pails are chosen
    set_heading(tr("%n pail(s) chosen", nullptr, static_cast<int>(m_pails.size())));
    m_facts->set_facts({
        //: Name of a fact of several pails: their mass together
        {tr("Together"), m_desk.large(mass, card_decimals)},
        //: Name of a fact of several pails: their codes
        {tr("Pails"), codes.join(QStringLiteral("  ")), {}, true},
    });
}

void PailCard::settle_buttons() {
    const bool one = m_pails.size() == 1;
    const bool stands = one && is_standing(pail());
    const bool free = stands && pail().state != PailState::planned;
    const bool any = !standing().empty();
    m_labels->setVisible(any);
    m_move->setVisible(any);
    m_in_part->setVisible(free && pail().state != PailState::strength_unknown);
    m_discard->setVisible(free);
    m_correct->setVisible(free);
    m_history->setVisible(one);
}

void PailCard::take_focus() {
    for (QPushButton* button : {m_labels, m_history}) {
        if (button->isVisibleTo(this)) {
            button->setFocus(Qt::TabFocusReason);
            return;
        }
    }
}

void PailCard::print_labels() {
    if (const auto pails = standing(); !pails.empty())
        offer_pail_labels(m_desk, pails, this);
}

void PailCard::move() {
    if (const auto pails = standing(); !pails.empty())
        open_move_pails(m_desk, pails, m_pails.size() == 1 ? pail().stands : QString(), this);
}

void PailCard::discard() {
    if (m_discard->isVisibleTo(this))
        open_discard_pail_form(m_desk, pail(), this);
}

} // namespace soakbook::ui
