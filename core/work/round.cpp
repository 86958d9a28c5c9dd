// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/round.h"

#include "core/book/queries/bags.h"
#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/book/queries/rounds.h"
#include "core/maths/keeping.h"
#include "core/work/bag_choice.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/perform.h"
#include "core/work/round_rule.h"
#include "core/work/standing.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// A round's entry made whole from the strip kind and Set-up.
struct Checked {
    book::Round round;
    std::vector<book::Yard> yards;
    maths::Window window;
};

std::optional<Refusal> count_refused(std::optional<int> count, const char* field, int least, int most) {
    if (count && *count < least)
        return Refusal{least == 1 ? Why::not_positive : Why::too_small, QLatin1String(field), {fact(least)}, false};
    if (count && *count > most)
        return Refusal{Why::too_large, QLatin1String(field), {fact(most)}, false};
    return std::nullopt;
}

Outcome<int> said_or_figure(const book::Workbook& workbook, std::optional<int> said, Figure which, const char* field) {
    if (!said) {
        const auto found = needed(workbook, which, QLatin1String(field));
        return found ? Outcome<int>(static_cast<int>(*found)) : unexpected(found.error());
    }
    const FigureInfo& limits = info(which);
    if (*said < limits.least)
        return refuse(Why::too_small, QLatin1String(field), {fact(limits.least)});
    if (*said > limits.most)
        return refuse(Why::too_large, QLatin1String(field), {fact(limits.most)});
    return *said;
}

std::optional<Refusal> take_rule(const RoundEntry& entry, const book::StripKind& kind, book::Round& round) {
    const auto rule = entry.dose_rule ? std::optional(static_cast<book::DoseKind>(*entry.dose_rule)) : kind.dose_kind;
    if (!rule)
        return Refusal{Why::missing, QStringLiteral("dose_rule"), {}, false};
    // The kind's figures belong to the kind's rule alone.
    const bool same = kind.dose_kind == rule;
    round.dose_kind = *rule;
    if (*rule == book::DoseKind::frames_of_bees) {
        round.dose_frames_tenths = entry.dose_frames_tenths ? entry.dose_frames_tenths
                                   : same                   ? kind.dose_frames_tenths
                                                            : std::nullopt;
        if (!round.dose_frames_tenths)
            return Refusal{Why::missing, QStringLiteral("dose_frames_tenths"), {}, false};
    } else {
        round.dose_strips = entry.dose_strips ? entry.dose_strips : same ? kind.dose_strips : std::nullopt;
        if (!round.dose_strips)
            return Refusal{Why::missing, QStringLiteral("dose_strips"), {}, false};
    }
    round.dose_least = entry.dose_least ? entry.dose_least : same ? kind.dose_least : std::nullopt;
    round.dose_most = entry.dose_most ? entry.dose_most : same ? kind.dose_most : std::nullopt;
    if (auto r = count_refused(round.dose_frames_tenths, "dose_frames_tenths", 1, 1'000))
        return r;
    if (auto r = count_refused(round.dose_strips, "dose_strips", 1, 1'000))
        return r;
    if (auto r = count_refused(round.dose_least, "dose_least", 0, 1'000))
        return r;
    if (auto r = count_refused(round.dose_most, "dose_most", 1, 1'000))
        return r;
    if (round.dose_least && round.dose_most && *round.dose_least > *round.dose_most)
        return Refusal{Why::too_small, QStringLiteral("dose_most"), {fact(*round.dose_least)}, false};
    return std::nullopt;
}

Outcome<book::StripKind> kind_of(const book::Workbook& workbook, std::optional<StripKindId> said) {
    if (said) {
        const auto kind = book::fetch(workbook, *said);
        return kind ? Outcome<book::StripKind>(*kind) : refuse(Why::not_found, QStringLiteral("strip_kind"));
    }
    auto kinds = book::fetch_all<book::StripKind>(workbook);
    std::erase_if(kinds, [](const book::StripKind& k) { return !k.active; });
    if (kinds.size() != 1)
        return refuse(Why::missing, QStringLiteral("strip_kind"));
    return kinds.front();
}

Outcome<Checked> checked_round(const book::Workbook& workbook, const RoundEntry& entry, bool name_needed) {
    Checked c;
    if (auto refusal = name_refused(entry.name, longest_name, QStringLiteral("name"), name_needed))
        return unexpected(*refusal);
    if (auto refusal = text_refused(entry.note, longest_note, QStringLiteral("note")))
        return unexpected(*refusal);
    const auto kind = kind_of(workbook, entry.strip_kind);
    if (!kind)
        return unexpected(kind.error());
    if (!entry.planned_on)
        return refuse(Why::missing, QStringLiteral("planned_on"));
    if (entry.yards.empty())
        return refuse(Why::missing, QStringLiteral("yards"));
    for (const YardId id : std::set<YardId>(entry.yards.begin(), entry.yards.end())) {
        const auto yard = book::fetch(workbook, id);
        if (!yard)
            return refuse(Why::not_found, QStringLiteral("yards"));
        c.yards.push_back(*yard);
    }
    c.round.name = entry.name.trimmed();
    c.round.strip_kind = kind->id;
    c.round.planned_on = *entry.planned_on;
    c.round.note = entry.note.trimmed();
    if (auto refusal = take_rule(entry, *kind, c.round))
        return unexpected(*refusal);
    const auto from = said_or_figure(workbook, entry.pull_from_days, Figure::pull_from_days, "pull_from_days");
    if (!from)
        return unexpected(from.error());
    const auto by = said_or_figure(workbook, entry.pull_by_days, Figure::pull_by_days, "pull_by_days");
    if (!by)
        return unexpected(by.error());
    if (*by < *from)
        return refuse(Why::too_small, QStringLiteral("pull_by_days"), {fact(*from)});
    const auto withdrawal = said_or_figure(workbook, entry.withdrawal_days, Figure::withdrawal_days, "withdrawal_days");
    if (!withdrawal)
        return unexpected(withdrawal.error());
    c.round.pull_from_days = *from;
    c.round.pull_by_days = *by;
    c.round.withdrawal_days = *withdrawal;
    const auto window = maths::pull_window(*entry.planned_on, *from, *by);
    if (!window)
        return refuse(Why::too_large, QStringLiteral("planned_on"));
    c.window = *window;
    return c;
}

} // namespace

namespace {

/// Puts the hive to those with as much of what the rule looks at, a hive.
void add_dose(std::vector<DoseOfAlike>& doses, maths::DoseKind kind, const book::Hive& hive, std::optional<int> strips) {
    DoseOfAlike one{hive.hives, hive.brood_boxes, hive.frames_of_bees, strips};
    if (kind != maths::DoseKind::per_brood_box)
        one.brood_boxes.reset();
    if (kind != maths::DoseKind::per_bee_frames)
        one.frames_of_bees.reset();
    const auto is_as_much = [&one](std::optional<int> a, int hives, std::optional<int> b) {
        return a.has_value() == b.has_value() && (!a || qint64{*a} * one.hives == qint64{*b} * hives);
    };
    for (DoseOfAlike& dose : doses) {
        if (!is_as_much(dose.brood_boxes, dose.hives, one.brood_boxes) ||
            !is_as_much(dose.frames_of_bees, dose.hives, one.frames_of_bees))
            continue;
        dose.hives += one.hives;
        for (const auto part : {&DoseOfAlike::brood_boxes, &DoseOfAlike::frames_of_bees, &DoseOfAlike::strips}) {
            if (dose.*part && one.*part)
                *(dose.*part) += *(one.*part);
        }
        return;
    }
    doses.push_back(one);
}

} // namespace

Outcome<RoundFigures> reckon_round(const book::Workbook& workbook, const RoundEntry& entry, maths::Day) {
    const auto checked = checked_round(workbook, entry, false);
    if (!checked)
        return unexpected(checked.error());
    RoundFigures figures;
    const maths::DoseRule rule = rule_of(checked->round);
    const maths::Day on = checked->round.planned_on;
    for (const book::Yard& yard : checked->yards) {
        for (const book::Hive& hive : hives_standing(workbook, yard.id, on)) {
            if (!lives_on(hive, on) || hive.untreated)
                continue;
            figures.hives += hive.hives;
            const auto strips = strips_by_rule(rule, hive);
            if (strips)
                figures.strips += *strips;
            else
                figures.hives_without_figure += hive.hives;
            add_dose(figures.doses, rule.kind, hive, strips);
        }
        for (const YardTimeEntry& time : times_meeting(workbook, yard.id, on, checked->window.last)) {
            figures.warnings_yards << yard.name + QStringLiteral(": ") + time_text(time);
            figures.meeting.push_back(time);
        }
    }
    std::stable_sort(figures.doses.begin(), figures.doses.end(),
                     [](const DoseOfAlike& a, const DoseOfAlike& b) { return a.hives > b.hives; });
    figures.ready = strips_ready(book::bag_stock_of_kind(workbook, checked->round.strip_kind), on);
    figures.short_of = std::max(0, figures.strips - figures.ready);
    figures.pull_from = checked->window.first;
    figures.pull_by = checked->window.last;
    return figures;
}

Outcome<RoundId> plan_round(book::Workbook& workbook, const RoundEntry& entry, const book::Doing& doing,
                            const Confirmed& confirmed) {
    auto checked = checked_round(workbook, entry, true);
    if (!checked)
        return unexpected(checked.error());
    book::Round& round = checked->round;
    round.id = entry.id;
    if (auto question = asked_if_long_ago(round.planned_on, doing.today(), confirmed, QStringLiteral("planned_on")))
        return unexpected(*question);
    if (const auto latest = maths::days_after(doing.today(), 3 * 366); round.planned_on > latest)
        return refuse(Why::too_large, QStringLiteral("planned_on"), {fact(latest)});
    for (const book::Round& other : book::rounds_newest_first(workbook))
        if (other.id != entry.id && !other.closed_on && other.name.compare(round.name, Qt::CaseInsensitive) == 0)
            return refuse(Why::name_taken, QStringLiteral("name"), {fact(other.name)});
    std::vector<book::RoundYard> before;
    if (entry.id) {
        const auto old = book::fetch(workbook, entry.id);
        if (!old || old->void_reason || old->closed_on)
            return refuse(Why::not_found, QStringLiteral("name"), {fact(round.name)});
        book::PlacementFilter filter;
        filter.round = entry.id;
        if (const auto hung = book::placements(workbook, filter); !hung.empty())
            return refuse(
                Why::hive_has_strips, {},
                {fact(hung.front().hive), fact(hung.front().placement.strips), fact(hung.front().placement.placed_on)});
        before = book::yards_of_round(workbook, entry.id);
        std::set<YardId> old_yards;
        for (const book::RoundYard& y : before)
            old_yards.insert(y.yard);
        if (*old == round && old_yards == std::set<YardId>(entry.yards.begin(), entry.yards.end()))
            return refuse(Why::nothing_changed);
    }
    for (const book::Yard& yard : checked->yards)
        for (const YardTimeEntry& time : times_meeting(workbook, yard.id, round.planned_on, round.planned_on)) {
            const Why why = time.kind == TimeKind::flow ? Why::in_flow : Why::yard_closed;
            if (!confirmed.count(why))
                return ask(why, QStringLiteral("planned_on"), {fact(time.what), fact(*time.from), fact(*time.to)});
        }
    return perform(
        workbook, {QStringLiteral("round_planned"), 1, round.name}, doing, [&](book::Writing& w) -> Outcome<RoundId> {
            if (entry.id)
                book::update(w, round);
            else
                round.id = book::insert(w, round);
            std::set<YardId> still;
            for (book::RoundYard& y : before) {
                const bool stays = std::find(entry.yards.begin(), entry.yards.end(), y.yard) != entry.yards.end();
                if (stays) {
                    still.insert(y.yard);
                    y.planned_on = round.planned_on;
                } else {
                    y.void_reason = QStringLiteral("taken out");
                }
                book::update(w, y);
            }
            for (const YardId yard : entry.yards)
                if (still.insert(yard).second)
                    book::insert(w, book::RoundYard{{}, round.id, yard, round.planned_on, {}, {}});
            return round.id;
        });
}

Outcome<int> close_round(book::Workbook& workbook, RoundId id, const book::Doing& doing) {
    auto round = book::fetch(workbook, id);
    if (!round || round->void_reason)
        return refuse(Why::not_found);
    if (round->closed_on)
        return refuse(Why::nothing_changed);
    round->closed_on = doing.today();
    return perform(workbook, {QStringLiteral("round_closed"), 1, round->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, *round);
                       return 1;
                   });
}

} // namespace soakbook::work
