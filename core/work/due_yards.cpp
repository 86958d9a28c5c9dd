// SPDX-License-Identifier: GPL-3.0-or-later
// Due in the yards: strips to pull, counts after pulling, visits of rounds, and rounds whose strips are short.
#include "core/book/queries/counts.h"
#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/work/due_rows.h"
#include "core/work/pull.h"
#include "core/work/shelf_ahead.h"

#include <algorithm>

namespace soakbook::work {

namespace {

DueRow& add_pull(DueList& list, DueKind kind, DueGroup group, maths::Day sort_day,
                 const std::vector<const PullLine*>& lines) {
    DueRow& row = list.add(kind, group, sort_day);
    std::set<HiveId> hives;
    maths::Day since = maths::Day::max();
    for (const PullLine* line : lines) {
        row.ids.push_back(line->placement.value);
        row.strips += line->strips;
        if (hives.insert(line->hive).second)
            row.count += line->hives;
        since = std::min(since, line->placed_on);
        if (line->pull_from && (!row.from || *line->pull_from < *row.from))
            row.from = line->pull_from;
        if (line->pull_by && (!row.by || *line->pull_by < *row.by))
            row.by = line->pull_by;
    }
    row.yard = lines.front()->yard;
    row.subject = lines.front()->yard_name;
    row.since = start_of(since);
    return row;
}

/// Strips hung on one day in one yard come due together: the same yard may stand twice, with two windows.
void pulls(DueList& list, const std::vector<PullLine>& lines) {
    std::map<std::pair<YardId, maths::Day>, std::vector<const PullLine*>> waiting;
    std::map<YardId, std::vector<const PullLine*>> open;
    std::map<YardId, std::vector<const PullLine*>> past;
    std::map<YardId, std::vector<const PullLine*>> dead;
    for (const PullLine& line : lines) {
        if (line.hive_dead)
            dead[line.yard].push_back(&line);
        else if (line.state == PullState::past)
            past[line.yard].push_back(&line);
        else if (line.state == PullState::waiting || (line.pull_from && *line.pull_from > list.today))
            waiting[{line.yard, line.pull_from.value_or(list.today)}].push_back(&line);
        else
            open[line.yard].push_back(&line);
    }
    for (const auto& [yard, some] : past)
        add_pull(list, DueKind::pull_past, DueGroup::now, some.front()->pull_by.value_or(list.today), some);
    for (const auto& [yard, some] : dead)
        add_pull(list, DueKind::pull_dead, DueGroup::today, list.today, some);
    for (const auto& [yard, some] : open) {
        const maths::Day by = some.front()->pull_by.value_or(list.today);
        const bool closing = std::any_of(some.begin(), some.end(),
                                         [](const PullLine* l) { return l->state == PullState::closing_soon; });
        const DueGroup group = list.group_of(by);
        add_pull(list, DueKind::pull_open, closing ? std::min(group, DueGroup::this_week) : group, by, some);
    }
    for (const auto& [when, some] : waiting)
        add_pull(list, DueKind::pull_opens, list.group_of(when.second), when.second, some);
    if (!lines.empty())
        list.wanted(Figure::pull_warn_days);
}

/// Living hives whose strips came out and that were not counted since, where nothing new hangs.
void counts_after(DueList& list, const std::vector<PullLine>& hanging_now) {
    std::map<HiveId, maths::Day> pulled;
    for (const book::LastPulled& last : book::last_pulled(list.workbook)) {
        auto& day = pulled.emplace(last.hive, last.pulled_on).first->second;
        day = std::max(day, last.pulled_on);
    }
    if (pulled.empty())
        return;
    const auto after = list.wanted(Figure::count_after_days);
    if (!after)
        return;
    for (const PullLine& line : hanging_now)
        pulled.erase(line.hive);
    for (const book::CountRow& row : book::newest_counts(list.workbook))
        if (const auto found = pulled.find(row.count.hive); found != pulled.end() && row.count.on >= found->second)
            pulled.erase(found);
    std::map<YardId, QString> names;
    for (const book::Yard& yard : book::yards_by_name(list.workbook))
        names[yard.id] = yard.name;
    std::map<std::pair<YardId, maths::Day>, std::vector<book::Hive>> to_count;
    for (book::Hive& hive : book::hives_of_yard(list.workbook, {}))
        if (const auto found = pulled.find(hive.id); found != pulled.end() && hive.state == book::HiveState::alive)
            to_count[{hive.yard, found->second}].push_back(std::move(hive));
    for (const auto& [when, hives] : to_count) {
        const maths::Day by = maths::days_after(when.second, *after);
        DueRow& row = list.add(DueKind::count_mites, list.group_of(by), by);
        for (const book::Hive& hive : hives) {
            row.ids.push_back(hive.id.value);
            row.count += hive.hives;
        }
        row.yard = when.first;
        row.subject = names[when.first];
        row.since = start_of(when.second);
        row.by = by;
    }
}

void rounds_ahead(DueList& list) {
    ShelfAhead shelf(list.workbook, list.today);
    for (const Wanted& wanted : shelf.wanted()) {
        DueRow& row = list.add(DueKind::visit_yard, list.group_of(wanted.on), wanted.on);
        row.round = wanted.round;
        row.yard = wanted.yard;
        row.subject = wanted.yard_name;
        row.count = wanted.hives;
        row.strips = wanted.strips;
        row.by = wanted.on;
    }
    shelf.go_to(maths::days_after(list.today, 4 * 366));
    const auto rest = figure(list.workbook, Figure::rest_days).value_or(0);
    for (const RoundAhead& round : shelf.rounds()) {
        if (round.short_of == 0)
            continue;
        // Strips sealed after this day still rest when the round begins.
        const maths::Day last_to_seal = maths::days_after(round.on, -rest);
        DueRow& row = list.add(DueKind::round_short, list.group_of(last_to_seal), last_to_seal);
        row.round = round.round;
        row.subject = round.name;
        row.strips = round.short_of;
        row.by = round.on;
    }
}

} // namespace

void due_in_yards(DueList& list) {
    const std::vector<PullLine> lines = hanging(list.workbook, {}, list.today);
    pulls(list, lines);
    counts_after(list, lines);
    rounds_ahead(list);
}

} // namespace soakbook::work
