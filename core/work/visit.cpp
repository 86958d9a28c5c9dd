// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/visit.h"

#include "core/book/queries/placements.h"
#include "core/work/facts.h"
#include "core/work/perform.h"
#include "core/work/round_rule.h"
#include "core/work/standing.h"
#include "core/work/visit_rows.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// Refuses supers that nobody said anything about where strips are hung.
std::optional<Refusal> supers_not_said(std::optional<bool> of_all, const std::vector<HangRow>& rows) {
    const bool unknown = std::any_of(rows.begin(), rows.end(), [](const HangRow& row) { return !row.hive.supers_on; });
    return !of_all && unknown ? std::optional(Refusal{Why::missing, QStringLiteral("supers_on"), {}, false})
                              : std::nullopt;
}

} // namespace

Outcome<VisitPlan> plan_visit(const book::Workbook& workbook, RoundId id, YardId yard, maths::Day on) {
    const auto where = round_in_yard(workbook, id, yard);
    if (!where)
        return unexpected(where.error());
    const auto window = maths::pull_window(on, where->round.pull_from_days, where->round.pull_by_days);
    if (!window)
        return refuse(Why::too_large, QStringLiteral("on"));
    VisitPlan plan;
    plan.round = id;
    plan.round_name = where->round.name;
    plan.yard = yard;
    plan.yard_name = where->yard.name;
    plan.on = on;
    plan.pull_from = window->first;
    plan.pull_by = window->last;
    plan.visited = where->in_yard.visited_on.has_value();
    plan.meeting = times_meeting(workbook, yard, on, window->last);
    for (const YardTimeEntry& time : plan.meeting)
        plan.times << time_text(time);
    auto hanging = book::hanging_by_hive(workbook);
    const std::set<HiveId> hung = book::hung_in_round(workbook, id);
    const maths::DoseRule rule = rule_of(where->round);
    std::vector<Wish> wishes;
    for (const book::Hive& hive : hives_standing(workbook, yard, on)) {
        if (!lives_on(hive, on))
            continue;
        VisitLine line;
        line.hive = hive.id;
        line.name = hive.name;
        line.hives = hive.hives;
        line.brood_boxes = hive.brood_boxes;
        line.frames_of_bees = hive.frames_of_bees;
        line.planned = hung.count(hive.id) ? std::optional(0) : strips_by_rule(rule, hive);
        line.hanging = hanging[hive.id].strips;
        line.supers_on = hive.supers_on;
        line.untreated = hive.untreated;
        line.note = hive.note;
        plan.strips += line.planned.value_or(0);
        wishes.push_back({line.planned.value_or(0), {}, {}, {}});
        plan.lines.push_back(std::move(line));
    }
    const auto shares = share_from_bags(workbook, where->round.strip_kind, wishes, on);
    if (!shares)
        return unexpected(shares.error());
    for (std::size_t i = 0; i < plan.lines.size(); ++i)
        plan.lines[i].from = shares->of[i];
    plan.bags = uses_of(*shares);
    plan.short_of = shares->short_of;
    return plan;
}

Outcome<std::vector<std::vector<FromBag>>> share_out(const book::Workbook& workbook, const VisitEntry& entry,
                                                     maths::Day today) {
    VisitEntry filled = entry;
    for (VisitEntry::Row& row : filled.rows)
        row.strips = row.strips.value_or(0);
    const auto rows = read_visit(workbook, filled, today);
    if (!rows)
        return unexpected(rows.error());
    std::vector<Wish> wishes;
    int wanted = 0;
    for (const HangRow& row : rows->hanging) {
        wishes.push_back(row.wish);
        wanted += row.wish.bag ? 0 : row.wish.strips;
    }
    const auto shares = share_from_bags(workbook, rows->where.round.strip_kind, wishes, rows->on);
    if (!shares)
        return unexpected(shares.error());
    if (shares->first_short)
        return refuse(Why::not_enough_strips, wishes[*shares->first_short].strips_field,
                      {fact(wanted - shares->short_of), fact(wanted)});
    std::vector<std::vector<FromBag>> of(entry.rows.size());
    for (std::size_t i = 0; i < rows->row_of.size(); ++i)
        of[rows->row_of[i]] = shares->of[i];
    return of;
}

Outcome<VisitDone> enter_visit(book::Workbook& workbook, const VisitEntry& entry, const book::Doing& doing,
                               const Confirmed& confirmed) {
    auto rows = read_visit(workbook, entry, doing.today());
    if (!rows)
        return unexpected(rows.error());
    if (auto refusal = supers_not_said(entry.supers_on, rows->hanging))
        return unexpected(*refusal);
    const book::Round& round = rows->where.round;
    Hanging hanging;
    hanging.round = round.id;
    hanging.kind = round.strip_kind;
    hanging.yard = entry.yard;
    hanging.yard_name = rows->where.yard.name;
    hanging.on = rows->on;
    hanging.pull_from_days = round.pull_from_days;
    hanging.pull_by_days = round.pull_by_days;
    hanging.withdrawal_days = round.withdrawal_days;
    hanging.least = round.dose_least;
    hanging.most = round.dose_most;
    hanging.supers_on = entry.supers_on;
    hanging.past_limit_reason = entry.past_limit_reason;
    hanging.rows = rows->hanging;
    Hung hung;
    hung.done.pull_from = maths::days_after(rows->on, round.pull_from_days);
    hung.done.pull_by = maths::days_after(rows->on, round.pull_by_days);
    if (!hanging.rows.empty()) {
        auto planned = plan_hanging(workbook, hanging, doing, confirmed);
        if (!planned)
            return unexpected(planned.error());
        hung = std::move(*planned);
    } else if (auto question = asked_if_long_ago(rows->on, doing.today(), confirmed)) {
        return unexpected(*question);
    }
    // The yard is done when every living hive of it got its strips or was looked at.
    std::set<HiveId> done = rows->seen;
    done.merge(book::hung_in_round(workbook, round.id));
    const auto standing = hives_standing(workbook, entry.yard, rows->on);
    const bool all_done = std::all_of(standing.begin(), standing.end(), [&](const book::Hive& hive) {
        return hive.untreated || !lives_on(hive, rows->on) || done.count(hive.id);
    });
    book::RoundYard in_yard = rows->where.in_yard;
    if (all_done && !in_yard.visited_on)
        in_yard.visited_on = rows->on;
    if (hung.placements.empty() && rows->changed.empty() && in_yard == rows->where.in_yard)
        return refuse(Why::nothing_changed);
    const int hives = hung.placements.empty() ? static_cast<int>(entry.rows.size()) : hung.done.hives;
    return perform(workbook, {QStringLiteral("strips_in"), hives, rows->where.yard.name}, doing,
                   [&](book::Writing& w) -> Outcome<VisitDone> {
                       for (const book::Hive& hive : rows->changed)
                           book::update(w, hive);
                       write_hung(w, hung);
                       if (in_yard != rows->where.in_yard)
                           book::update(w, in_yard);
                       return hung.done;
                   });
}

} // namespace soakbook::work
