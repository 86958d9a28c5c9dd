// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/place_form.h"

#include "core/work/how_yards.h"
#include "core/work/figures.h"
#include "core/work/store_view.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

PlaceForm::PlaceForm(Desk& desk, const work::HiveEntry& hive, QWidget* parent)
    //: Title of a form; %1 a hive
    : FormDialog(desk, tr("Strips into %1").arg(YardWords::hive(hive.name, hive.hives)), parent), m_desk(desk), m_hive(hive.id) {
    setObjectName(QStringLiteral("place_form"));
    form()->add_caution(YardWords::gloves_caution() + QLatin1Char(' ') + YardWords::harvest_caution());
    make_fields(hive);
    //: Filled button of a form
    form()->set_primary(tr("Enter the strips"));
    form()->set_commit([this](const work::Confirmed& confirmed) -> std::optional<work::Refusal> {
        const auto done = work::place_strips(m_desk.workbook(), entry(), m_desk.doing(), confirmed);
        if (!done && done.error().why == work::Why::bag_past_limit) {
            form()->set_shown(QStringLiteral("past_limit_reason"), true);
        }
        return refusal_of(done);
    });
    connect(form(), &FormFrame::edited, this, &PlaceForm::show_result);
    form()->set_draft(yard_draft(QStringLiteral("strips_into_hive"), QStringLiteral("hive"), {m_hive.value}, QStringLiteral("story_place")));
    show_result();
}

void PlaceForm::make_fields(const work::HiveEntry& hive) {
    FormFrame* f = form();
    //: Field; the word at its right is "strips"
    m_strips = named(f->add(tr("Strips in"), new CountField(m_desk, tr("strips"), f), QStringLiteral("strips")), "place_strips");
    //: Field: the bag the strips come from
    m_bag = named(f->add(tr("From bag"), new ChoiceField(f), QStringLiteral("bag")), "place_bag");
    offer_bags(*m_bag, m_desk);
    //: Field
    m_on = named(f->add(tr("Day"), new DayField(m_desk, f), QStringLiteral("on")), "place_on");
    m_on->set_value(m_desk.today());
    //: Field
    m_supers = named(f->add(tr("Honey supers on?"), new YesNoField(YesNoField::Ways::two, f), QStringLiteral("supers_on")), "place_supers_on");
    m_supers->set_value(hive.supers_on);
    //: Field: why strips past their limit are hung
    m_reason = named(f->add_wide(tr("Why strips past their limit"), new TextField(f), QStringLiteral("past_limit_reason"),
                                 //: Help of a field
                                 tr("The register will show the reason.")),
                     "place_past_limit_reason");
    //: Field
    m_note = named(f->add_wide(tr("Note"), new NoteField(f), QStringLiteral("note")), "place_note");
}

bool PlaceForm::bag_is_past() const {
    const auto bag = m_bag->is_empty() ? std::nullopt : work::bag(m_desk.workbook(), work::BagId{m_bag->id()}, m_desk.today());
    return bag && bag->use_by && *bag->use_by < m_on->value().value_or(m_desk.today());
}

void PlaceForm::show_result() {
    form()->set_shown(QStringLiteral("past_limit_reason"), bag_is_past() || !m_reason->is_empty());
    const auto from = work::figure(m_desk.workbook(), work::Figure::pull_from_days);
    const auto by = work::figure(m_desk.workbook(), work::Figure::pull_by_days);
    if (!from || !by) {
        form()->result()->set_how(std::vector<work::How>(), m_desk);
        //: What follows from a form
        form()->result()->set_text(tr("The days until strips come out are not said in Set-up yet; say them there first."));
        return;
    }
    const maths::Day on = m_on->value().value_or(m_desk.today());
    const maths::Day first = maths::days_after(on, *from);
    const maths::Day last = maths::days_after(on, *by);
    form()->result()->set_how({work::how_pull_window(on, first, last)}, m_desk);
    //: What follows from a form; rich text; %1 two days
    form()->result()->set_text(tr("To be pulled <b>%1</b>. Without a round: it stands in the register all the same.")
                                   .arg(YardWords::days(first, last, m_desk)));
}

work::PlaceEntry PlaceForm::entry() const {
    work::PlaceEntry entry;
    entry.hive = m_hive;
    entry.strips = as_int(m_strips->value());
    if (m_bag->id() != 0) {
        entry.bag = work::BagId{m_bag->id()};
    }
    entry.on = m_on->value();
    entry.supers_on = m_supers->value();
    entry.past_limit_reason = m_reason->value();
    entry.note = m_note->value();
    return entry;
}

void offer_bags(ChoiceField& field, const Desk& desk) {
    //: First entry of a list of bags: the work takes them in order of their limits
    field.set_none_text(PlaceForm::tr("nearest limit first"));
    std::vector<ChoiceField::Choice> choices;
    for (const work::BagLine& bag : work::bags(desk.workbook(), desk.today())) {
        const QString by = bag.use_by ? desk.day(*bag.use_by) : QString();
        //: A bag: its code, the strips left in it, its use-by day
        const QString words = PlaceForm::tr("%1, %2 left, use by %3").arg(bag.code).arg(bag.left).arg(by);
        choices.push_back({qint64(bag.id.value), words});
    }
    field.set_choices(choices);
}

} // namespace soakbook::ui
