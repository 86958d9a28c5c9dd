// SPDX-License-Identifier: GPL-3.0-or-later
// One hive's story.
#include "core/book/queries/counts.h"
#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/work/yards_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// "9 / 300" for bees, "12 / 3 d" would need words: mites and days stand as "12 : 3".
QString in_figures(const book::MiteCount& c) {
    return c.bees ? QStringLiteral("%1 / %2").arg(c.mites).arg(*c.bees)
                  : QStringLiteral("%1 : %2").arg(c.mites).arg(c.days.value_or(1));
}

} // namespace

std::vector<HiveEvent> hive_events(const book::Workbook& workbook, HiveId id) {
    std::vector<HiveEvent> events;
    const auto hive = book::fetch(workbook, id);
    if (!hive)
        return events;
    book::PlacementFilter filter;
    filter.hive = id;
    filter.also_void = true;
    filter.pulls_written = true;
    for (const book::PlacementRow& row : book::placements(workbook, filter)) {
        const book::Placement& p = row.placement;
        HiveEvent in;
        in.on = p.placed_on;
        in.kind = HiveEvent::Kind::strips_in;
        in.placement = p.id;
        in.strips = p.strips;
        in.text = row.bag_code;
        in.note = p.note;
        in.made_void = p.void_reason.has_value();
        in.written_late = p.written.local_day() > p.placed_on;
        events.push_back(in);
        if (!p.pulled_on)
            continue;
        HiveEvent out = in;
        out.on = *p.pulled_on;
        out.kind = HiveEvent::Kind::strips_out;
        out.strips = p.pulled.value_or(0);
        out.missing = p.missing.value_or(0);
        out.written_late = row.pull_written && row.pull_written->local_day() > *p.pulled_on;
        events.push_back(std::move(out));
    }
    for (const book::CountRow& row : book::mite_counts(workbook, id, {}, true)) {
        HiveEvent count;
        count.on = row.count.on;
        count.kind = HiveEvent::Kind::count;
        count.count = row.count.id;
        count.text = in_figures(row.count);
        count.note = row.count.note;
        count.made_void = row.count.void_reason.has_value();
        events.push_back(std::move(count));
    }
    for (const book::HiveMove& move : book::moves_of_hive(workbook, id)) {
        HiveEvent moved;
        moved.on = move.on;
        moved.kind = HiveEvent::Kind::moved;
        const auto to = book::fetch(workbook, move.to);
        moved.text = to ? to->name : QString();
        events.push_back(std::move(moved));
    }
    if (hive->state != book::HiveState::alive && hive->state_on) {
        HiveEvent died;
        died.on = *hive->state_on;
        died.kind = HiveEvent::Kind::died;
        died.text = QLatin1String(book::Names<book::HiveState>::all[static_cast<std::size_t>(hive->state)]);
        died.note = hive->note;
        events.push_back(std::move(died));
    }
    for (HiveEvent& event : events)
        event.hive = id;
    std::stable_sort(events.begin(), events.end(), [](const HiveEvent& a, const HiveEvent& b) { return a.on > b.on; });
    return events;
}

} // namespace soakbook::work
