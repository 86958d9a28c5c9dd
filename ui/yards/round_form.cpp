// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/round_form.h"

#include "core/work/figures.h"
#include "core/work/how_yards.h"
#include "core/work/setup.h"
#include "core/work/yards_view.h"
#include "ui/parts/bees_per_strip_field.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_checklist.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_form.h"
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

RoundForm::RoundForm(Desk& desk, const work::RoundEntry& entry, std::function<void(work::RoundId)> done, QWidget* parent)
    //: Title of a form
    : FormDialog(desk, entry.id ? tr("The round %1").arg(entry.name) : tr("Plan a round"), parent), m_desk(desk), m_id(entry.id) {
    setObjectName(QStringLiteral("round_form"));
    set_wanted_width(760);
    form()->add_caution(YardWords::harvest_caution());
    make_fields();
    make_rule_fields();
    make_window_fields();
    fill(entry);
    //: Filled button of a form
    form()->set_primary(m_id ? tr("Save the round") : tr("Plan the round"));
    form()->set_commit([this, done = std::move(done)](const work::Confirmed& confirmed) -> std::optional<work::Refusal> {
        const auto planned = work::plan_round(m_desk.workbook(), this->entry(), m_desk.doing(), confirmed);
        if (planned && done) {
            done(*planned);
        }
        return refusal_of(planned);
    });
    connect(m_kind, &ChoiceField::edited, this, &RoundForm::take_kind);
    connect(m_rule, &ChoiceField::edited, this, &RoundForm::show_rule);
    connect(form(), &FormFrame::edited, this, &RoundForm::show_result);
    form()->set_draft(m_id ? yard_draft(QStringLiteral("round"), QStringLiteral("round"), {m_id.value}, QStringLiteral("rounds_change"))
                           : yard_draft(QStringLiteral("new_round"), QStringLiteral("plan_round"), {}));
}

void RoundForm::make_fields() {
    FormFrame* f = form();
    //: Field: what a round is called
    m_name = named(f->add(tr("Name"), new TextField(f), QStringLiteral("name")), "round_name");
    //: Help of a field that shows an example
    m_name->set_placeholder(tr("Late summer"));
    //: Field: the day a round starts
    m_on = named(f->add(tr("Day"), new DayField(m_desk, f), QStringLiteral("planned_on")), "round_on");
    //: Field: the yards of a round
    m_yards = f->add_wide(tr("Yards"), new YardChecklist(yards(), f), QStringLiteral("yards"));
    connect(m_yards, &YardChecklist::wants_first, this, &RoundForm::add_first_yard);
    //: Field: the kind of strips
    m_kind = named(f->add(tr("Strips"), new ChoiceField(f), QStringLiteral("strip_kind")), "round_strip_kind");
    for (const work::StripKindEntry& kind : work::strip_kinds(m_desk.workbook())) {
        m_kind->add(kind.name, qint64{kind.id.value});
    }
}

std::vector<YardChecklist::Yard> RoundForm::yards() const {
    std::vector<YardChecklist::Yard> yards;
    for (const work::YardLine& yard : work::yard_lines(m_desk.workbook(), m_desk.today())) {
        if (yard.active) {
            //: Beside a yard's name
            yards.push_back({yard.id, yard.name, tr("%n hives", nullptr, yard.hives)});
        }
    }
    return yards;
}

void RoundForm::add_first_yard() {
    open_yard_form(this, m_desk, {}, [this](work::YardId yard) {
        m_yards->set_yards(yards());
        m_yards->set_value({yard});
        m_yards->take_focus();
        show_result();
    });
}

void RoundForm::make_rule_fields() {
    FormFrame* f = form();
    //: Field: how the number of strips for a hive is found
    m_rule = named(f->add(tr("Strips for each hive"), new ChoiceField(f), QStringLiteral("dose_rule"),
                          //: Help of a field
                          tr("The label or the vet decides. What you say here holds for this round.")),
                   "round_dose_rule");
    //: One of several rules
    m_rule->add(tr("the same for every hive"), static_cast<int>(work::DoseRule::fixed));
    //: One of several rules
    m_rule->add(tr("by brood boxes"), static_cast<int>(work::DoseRule::brood_boxes));
    //: One of several rules
    m_rule->add(tr("by frames of bees"), static_cast<int>(work::DoseRule::frames_of_bees));
    //: Field
    m_strips = named(f->add(tr("Strips"), new CountField(m_desk, {}, f), QStringLiteral("dose_strips")), "round_dose_strips");
    //: Field: frames of bees that get one strip
    m_frames = named(f->add(tr("One strip for"), new BeesPerStripField(m_desk, f), QStringLiteral("dose_frames_tenths")), "round_dose_frames");
    //: Field; the word at its right is "strips"
    m_least = named(f->add(tr("Never fewer than"), new CountField(m_desk, tr("strips a hive"), f), QStringLiteral("dose_least")), "round_dose_least");
    //: Field; the word at its right is "strips"
    m_most = named(f->add(tr("Never more than"), new CountField(m_desk, tr("strips a hive"), f), QStringLiteral("dose_most")), "round_dose_most");
}

void RoundForm::make_window_fields() {
    FormFrame* f = form();
    const auto said = [this](work::Figure which) { return work::figure(m_desk.workbook(), which); };
    const bool window = said(work::Figure::pull_from_days) && said(work::Figure::pull_by_days);
    const bool withdrawal = said(work::Figure::withdrawal_days).has_value();
    //: Heading within a form
    f->add_section(tr("Until the strips come out"),
                   window && withdrawal ? QString()
                                        //: Under a heading: figures that nobody said in Set-up
                                        : tr("Set-up does not say these days yet. What you say here holds for this round only; take it from the label."));
    //: Field; the words at its right are "days after hanging"
    m_from = named(f->add(tr("Pull from"), new CountField(m_desk, tr("days after hanging"), f), QStringLiteral("pull_from_days")), "round_pull_from");
    //: Field; the words at its right are "days after hanging"
    m_by = named(f->add(tr("Pull by"), new CountField(m_desk, tr("days after hanging"), f), QStringLiteral("pull_by_days")), "round_pull_by");
    //: Field: days until honey may be taken; the words at its right are "days after pulling"
    m_withdrawal = named(f->add(tr("No harvest for"), new CountField(m_desk, tr("days after pulling"), f), QStringLiteral("withdrawal_days"),
                                //: Help of a field
                                tr("The withdrawal time of the label, the vet or local rules.")),
                         "round_withdrawal");
    //: Field
    m_note = named(f->add_wide(tr("Note"), new NoteField(f), QStringLiteral("note")), "round_note");
}

void RoundForm::fill(const work::RoundEntry& entry) {
    const auto said = [this](std::optional<int> of_round, work::Figure which) {
        return of_round ? as_count(of_round) : work::figure(m_desk.workbook(), which);
    };
    m_name->set_value(entry.name);
    m_on->set_value(entry.planned_on.value_or(m_desk.today()));
    m_yards->set_value(entry.yards);
    const auto kinds = work::strip_kinds(m_desk.workbook());
    if (entry.strip_kind || kinds.size() == 1) {
        m_kind->set_value(qint64{entry.strip_kind.value_or(kinds.empty() ? work::StripKindId{} : kinds.front().id).value});
    }
    take_kind();
    if (entry.dose_rule) {
        m_rule->set_value(static_cast<int>(*entry.dose_rule));
        m_strips->set_value(as_count(entry.dose_strips));
        m_frames->set_tenths(entry.dose_frames_tenths);
        m_least->set_value(as_count(entry.dose_least));
        m_most->set_value(as_count(entry.dose_most));
    }
    m_from->set_value(said(entry.pull_from_days, work::Figure::pull_from_days));
    m_by->set_value(said(entry.pull_by_days, work::Figure::pull_by_days));
    m_withdrawal->set_value(said(entry.withdrawal_days, work::Figure::withdrawal_days));
    m_note->set_value(entry.note);
    show_rule();
    show_result();
}

void RoundForm::take_kind() {
    for (const work::StripKindEntry& kind : work::strip_kinds(m_desk.workbook(), true)) {
        if (kind.id.value == m_kind->id()) {
            m_rule->set_value(kind.dose_rule ? QVariant(static_cast<int>(*kind.dose_rule)) : QVariant());
            m_strips->set_value(as_count(kind.dose_strips));
            m_frames->set_tenths(kind.dose_frames_tenths);
            m_least->set_value(as_count(kind.dose_least));
            m_most->set_value(as_count(kind.dose_most));
        }
    }
    show_rule();
}

void RoundForm::show_rule() {
    const bool chosen = !m_rule->is_empty();
    const auto rule = static_cast<work::DoseRule>(m_rule->value().toInt());
    const bool frames = chosen && rule == work::DoseRule::frames_of_bees;
    form()->set_shown(QStringLiteral("dose_strips"), chosen && !frames);
    form()->set_shown(QStringLiteral("dose_frames_tenths"), frames);
    form()->set_shown(QStringLiteral("dose_least"), chosen && rule != work::DoseRule::fixed);
    form()->set_shown(QStringLiteral("dose_most"), chosen && rule != work::DoseRule::fixed);
    //: At the right of a field
    m_strips->set_of_what(rule == work::DoseRule::brood_boxes ? tr("strips a brood box") : tr("strips a hive"));
}

void RoundForm::show_result() {
    const auto figures = work::reckon_round(m_desk.workbook(), entry(), m_desk.today());
    if (figures) {
        say_figures(*figures);
    } else {
        say_refused(figures.error());
    }
}

void RoundForm::say_refused(const work::Refusal& refusal) {
    ResultCard* result = form()->result();
    result->clear();
    if (refusal.field == QLatin1String("yards")) {
        //: What to do next in a form
        result->set_next(tr("Tick the yards of this round to see how many strips it wants."));
    } else if (refusal.field.startsWith(QLatin1String("dose"))) {
        //: What to do next in a form
        result->set_next(tr("Say how many strips a hive gets to see what this round wants."));
    } else if (refusal.field.startsWith(QLatin1String("pull")) || refusal.field.startsWith(QLatin1String("withdrawal"))) {
        //: What to do next in a form
        result->set_next(tr("Say the days until the strips come out, and for how long nothing is harvested."));
    } else {
        result->set_next(refusal_words(refusal, m_desk));
    }
}

void RoundForm::say_figures(const work::RoundFigures& figures) {
    ResultCard* result = form()->result();
    result->clear();
    //: What follows from a form; rich text; %1 hives, %2 strips, %3 two days
    result->set_text(tr("<b>%1</b> hives want <b>%2</b> strips, to be pulled <b>%3</b>.")
                         .arg(figures.hives)
                         .arg(figures.strips)
                         .arg(YardWords::days(figures.pull_from, figures.pull_by, m_desk)));
    if (figures.short_of > 0) {
        //: A verdict: too few strips in the store
        result->set_verdict(State::past, tr("%n strips short", nullptr, figures.short_of),
                            //: After a verdict; %1 strips
                            tr("%1 are ready and in date on that day.").arg(figures.ready));
    } else {
        //: A verdict: enough strips in the store
        result->set_verdict(State::ready, tr("enough in the store"),
                            //: After a verdict; %1 strips
                            tr("%1 are ready and in date on that day.").arg(figures.ready));
    }
    std::vector<work::How> hows = work::how_dose(entry(), figures);
    hows.push_back(work::how_pull_window(m_on->value().value_or(m_desk.today()), figures.pull_from, figures.pull_by));
    result->set_how(hows, m_desk);
    QStringList next;
    if (figures.hives_without_figure > 0) {
        //: What to do next: the rule needs brood boxes or frames that were not said
        next += tr("%n hives have no boxes or frames said: the rule gives them no number yet.", nullptr, figures.hives_without_figure);
    }
    for (const work::YardTimeEntry& time : figures.meeting) {
        QString yard;
        for (const work::YardEntry& one : work::yards(m_desk.workbook(), true)) {
            yard = one.id == time.yard ? one.name : yard;
        }
        //: A time that meets the round; %1 a yard, %2 a flow or a closed time
        next += tr("%1: %2.").arg(yard, YardWords::time(time, m_desk));
    }
    result->set_next(next.join(QLatin1Char(' ')));
}

work::RoundEntry RoundForm::entry() const {
    work::RoundEntry entry;
    entry.id = m_id;
    entry.name = m_name->value();
    if (m_kind->id() != 0) {
        entry.strip_kind = work::StripKindId{m_kind->id()};
    }
    entry.planned_on = m_on->value();
    entry.yards = m_yards->value();
    if (!m_rule->is_empty()) {
        entry.dose_rule = static_cast<work::DoseRule>(m_rule->value().toInt());
        const bool frames = entry.dose_rule == work::DoseRule::frames_of_bees;
        entry.dose_strips = frames ? std::nullopt : as_int(m_strips->value());
        entry.dose_frames_tenths = frames ? m_frames->tenths() : std::nullopt;
    }
    entry.dose_least = as_int(m_least->value());
    entry.dose_most = as_int(m_most->value());
    entry.pull_from_days = as_int(m_from->value());
    entry.pull_by_days = as_int(m_by->value());
    entry.withdrawal_days = as_int(m_withdrawal->value());
    entry.note = m_note->value();
    return entry;
}

} // namespace soakbook::ui
