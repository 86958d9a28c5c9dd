// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_plan_form.h"

#include "core/work/setup.h"
#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/parts/theme.h"
#include "ui/shed/lot_field.h"
#include "ui/shed/mix_result.h"
#include "ui/shed/pail_checklist.h"
#include "ui/shed/shed_words.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

QVariant key(qint64 id) { return QVariant::fromValue<qlonglong>(id); }

/// Whether an advice given for the one plan holds for the other.
bool asks_the_same(const work::MixPlan& a, const work::MixPlan& b) {
    return a.from == b.from && a.amount == b.amount && a.strips == b.strips && a.strength == b.strength && a.tank == b.tank &&
           a.strip_kind == b.strip_kind && a.acid_lot == b.acid_lot && a.glycerine_lot == b.glycerine_lot &&
           a.pails == b.pails;
}

} // namespace

MixPlanForm::MixPlanForm(Desk& desk, QWidget* parent) : FormFrame(desk, QString(), parent), m_desk(desk) {
    add_fields();
    refresh();
    fill(work::mix_start(desk.workbook(), desk.today()));
    //: Button that makes a new batch from the plan and gives it its code
    set_primary(tr("Start the batch"));
    set_commit([this](const work::Confirmed& confirmed) {
        const auto made = work::plan_mix(m_desk.workbook(), plan(), m_desk.doing(), confirmed);
        if (made)
            Q_EMIT planned(made->batch.value);
        return refusal_of(made);
    });
    connect(this, &FormFrame::edited, this, &MixPlanForm::reckon);
    connect(m_from, &Field::edited, this, &MixPlanForm::show_start);
    connect(m_kind, &Field::edited, this, &MixPlanForm::reckon);
    connect(m_pails, &PailChecklist::advice_wanted, this, &MixPlanForm::suggest_pails);
    //: What Due calls the form of a new batch
    set_draft({QStringLiteral("plan_mix"), 0, tr("New batch"), {PlaceName::shed, QStringLiteral("new_batch"), {}, {}}});
}

void MixPlanForm::add_fields() {
    m_missing = new NoticeBar({}, body());
    m_missing->hide();
    if (auto* column = qobject_cast<QVBoxLayout*>(body()->layout()))
        column->insertWidget(0, m_missing);
    m_from = new ChoiceField;
    m_from->setObjectName(QStringLiteral("mix_from"));
    //: What a new batch starts from
    m_from->add(tr("the amount to make"), static_cast<int>(work::MixFrom::total));
    //: What a new batch starts from
    m_from->add(tr("the acid at hand"), static_cast<int>(work::MixFrom::acid_at_hand));
    //: What a new batch starts from
    m_from->add(tr("the glycerine at hand"), static_cast<int>(work::MixFrom::glycerine_at_hand));
    //: What a new batch starts from
    m_from->add(tr("the strips wanted"), static_cast<int>(work::MixFrom::strips_wanted));
    //: Label of a choice: the amount to make, the acid at hand ...
    add(tr("Start from"), m_from, QStringLiteral("from"));
    m_amount = add(tr("How much"), new MassField(m_desk, MassSize::large), QStringLiteral("from_amount"));
    m_amount->setObjectName(QStringLiteral("mix_amount"));
    //: A unit behind a number of strips
    m_strips = add(tr("How many"), new CountField(m_desk, tr("strips")), QStringLiteral("strips"));
    m_strips->setObjectName(QStringLiteral("mix_strips"));
    m_strength = add(tr("Strength wanted"), new PercentField(m_desk), QStringLiteral("strength"),
                     //: Help under the strength of a mix
                     tr("By mass, counted as dihydrate."));
    m_strength->setObjectName(QStringLiteral("mix_strength"));
    m_tank = add(tr("Tank"), new ChoiceField, QStringLiteral("tank"));
    m_tank->setObjectName(QStringLiteral("mix_tank"));
    //: Label of a field
    m_acid = add(tr("Acid from"), new LotField(m_desk, work::MaterialKind::acid), QStringLiteral("acid_lot"));
    m_acid->setObjectName(QStringLiteral("mix_acid_lot"));
    //: Label of a field
    m_glycerine = add(tr("Glycerine from"), new LotField(m_desk, work::MaterialKind::glycerine),
                      QStringLiteral("glycerine_lot"));
    m_glycerine->setObjectName(QStringLiteral("mix_glycerine_lot"));
    //: Label of a field
    m_kind = add(tr("For strips of the kind"), new ChoiceField, QStringLiteral("strip_kind"));
    m_kind->setObjectName(QStringLiteral("mix_strip_kind"));
    //: Label of a field
    m_day = add(tr("Day"), new DayField(m_desk), QStringLiteral("planned_on"));
    m_day->setObjectName(QStringLiteral("mix_day"));
    //: Stands in an empty field
    m_day->set_placeholder(tr("today"));
    //: Label of a field
    m_pails = add_wide(tr("Leftover pails that go in"), new PailChecklist(m_desk), QStringLiteral("pails"),
                       //: Help under the list of pails
                       tr("Each whole, scraped to the bottom: acid settles, so the upper half of a pail may be almost pure "
                          "glycerine."));
    m_pails->setObjectName(QStringLiteral("mix_pails"));
    set_shown(QStringLiteral("pails"), m_pails->has_pails());
}

void MixPlanForm::fill(const work::MixStart& start) {
    m_from->set_value(static_cast<int>(start.plan.from));
    m_strength->set_value(start.plan.strength);
    m_tank->set_value(start.plan.tank ? key(start.plan.tank->value) : QVariant());
    m_kind->set_value(start.plan.strip_kind ? key(start.plan.strip_kind->value) : QVariant());
    m_acid->set_lot(start.plan.acid_lot);
    m_glycerine->set_lot(start.plan.glycerine_lot);
    m_acid->choose_newest();
    m_glycerine->choose_newest();
    m_pails->choose(start.plan.pails);
    show_start();
}

void MixPlanForm::prefill(const QVariantMap& wish) {
    if (wish.contains(QStringLiteral("strips"))) {
        m_from->set_value(static_cast<int>(work::MixFrom::strips_wanted));
        m_strips->set_value(wish.value(QStringLiteral("strips")).toLongLong());
    } else if (wish.contains(QStringLiteral("total"))) {
        m_from->set_value(static_cast<int>(work::MixFrom::total));
        m_amount->set_value(maths::Mass{wish.value(QStringLiteral("total")).toLongLong()});
    }
    show_start();
    reckon();
}

void MixPlanForm::refresh() {
    std::vector<ChoiceField::Choice> tanks;
    for (const work::VesselEntry& vessel : work::vessels(m_desk.workbook())) {
        if (!vessel.is_tank)
            continue;
        tanks.push_back({key(vessel.id.value), vessel.capacity
                                                   //: A tank in a list; %1 its name, %2 the most it holds
                                                   ? tr("%1 · holds %2").arg(vessel.name, large(m_desk, *vessel.capacity))
                                                   : vessel.name});
    }
    std::vector<ChoiceField::Choice> kinds;
    for (const work::StripKindEntry& kind : work::strip_kinds(m_desk.workbook()))
        kinds.push_back({key(kind.id.value), kind.name});
    m_tank->set_choices(tanks);
    m_kind->set_choices(kinds);
    if (tanks.size() == 1)
        m_tank->set_value(tanks.front().id);
    if (kinds.size() == 1)
        m_kind->set_value(kinds.front().id);
    m_acid->refresh();
    m_glycerine->refresh();
    const bool missing = tanks.empty() || kinds.empty();
    m_missing->setVisible(missing);
    if (missing && m_missing->property("ready").isNull()) {
        m_missing->setProperty("ready", true);
        //: Over the form of a new batch, while Set-up has no tank
        m_missing->set_text(tanks.empty() ? tr("A batch needs a tank, and the workbook has none yet.")
                                          //: Over the form of a new batch, while Set-up has no kind of strip
                                          : tr("A batch needs a kind of strip, and the workbook has none yet."));
        //: Button that leads to Set-up
        QPushButton* button = m_missing->add_button(tr("Go to Set-up"));
        const QString task = tanks.empty() ? QStringLiteral("tank") : QStringLiteral("strip_kind");
        connect(button, &QPushButton::clicked, this, [this, task] { Q_EMIT wishes({PlaceName::setup, task, {}, {}}); });
    }
}

void MixPlanForm::show_start() {
    const bool strips = from() == work::MixFrom::strips_wanted;
    set_shown(QStringLiteral("from_amount"), !strips);
    set_shown(QStringLiteral("strips"), strips);
}

work::MixFrom MixPlanForm::from() const {
    return m_from->is_empty() ? work::MixFrom::total : static_cast<work::MixFrom>(m_from->value().toInt());
}

work::MixPlan MixPlanForm::plan() const {
    work::MixPlan plan;
    plan.from = from();
    if (plan.from == work::MixFrom::strips_wanted) {
        if (const auto n = m_strips->value())
            plan.strips = static_cast<int>(*n);
    } else {
        plan.amount = m_amount->value();
    }
    plan.strength = m_strength->value();
    if (m_tank->id() != 0)
        plan.tank = work::VesselId{m_tank->id()};
    if (m_kind->id() != 0)
        plan.strip_kind = work::StripKindId{m_kind->id()};
    plan.acid_lot = m_acid->lot();
    plan.glycerine_lot = m_glycerine->lot();
    plan.pails = m_pails->chosen();
    plan.planned_on = m_day->value();
    return plan;
}

void MixPlanForm::suggest_pails() {
    const auto advice = work::pail_advice(m_desk.workbook(), plan());
    if (!advice) {
        show_refusal(advice.error());
        return;
    }
    m_advice = *advice;
    m_pails->take_advice(*advice);
    m_advised = plan();
    reckon();
}

void MixPlanForm::reckon() {
    const work::MixPlan wanted = plan();
    if (m_advice && !asks_the_same(m_advised, wanted)) {
        m_advice.reset();
        m_pails->drop_advice();
    }
    const auto figures = work::reckon_mix(m_desk.workbook(), wanted, m_desk.today());
    if (figures) {
        show_mix_plan(*this, m_desk, wanted, *figures, m_advice);
        return;
    }
    result()->clear();
    if (figures.error().why != work::Why::missing) {
        //: Over a sentence that says why a mix cannot be made like this
        result()->set_verdict(State::near, tr("Not like this"));
        result()->set_next(refusal_words(figures.error(), m_desk));
    }
}

} // namespace soakbook::ui
