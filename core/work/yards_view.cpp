// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/yards_view.h"

#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/work/count_lines.h"
#include "core/work/figures.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// What hangs in one hive.
struct InHive {
    int strips = 0;
    QStringList bags;
    maths::Day since = maths::Day::max();
    std::optional<maths::Day> first_from;
    std::optional<maths::Day> last_from;
    std::optional<maths::Day> first_by;
    std::optional<PullState> state;
};

void widen(std::optional<maths::Day>& low, std::optional<maths::Day> day) {
    if (day && (!low || *day < *low))
        low = day;
}

void worsen(std::optional<PullState>& state, PullState other) {
    state = state ? std::max(*state, other) : other;
}

std::map<HiveId, InHive> in_hives(const std::vector<PullLine>& lines) {
    std::map<HiveId, InHive> hives;
    for (const PullLine& line : lines) {
        InHive& in = hives[line.hive];
        in.strips += line.strips;
        if (!in.bags.contains(line.bag_code))
            in.bags << line.bag_code;
        in.since = std::min(in.since, line.placed_on);
        widen(in.first_from, line.pull_from);
        if (line.pull_from && (!in.last_from || *line.pull_from > *in.last_from))
            in.last_from = line.pull_from;
        widen(in.first_by, line.pull_by);
        worsen(in.state, line.state);
    }
    return hives;
}

/// The first day for honey after the strips that came out last; nothing where a placement had no withdrawal days
/// copied.
std::map<HiveId, std::optional<maths::Day>> harvest_days(const book::Workbook& workbook, YardId yard) {
    std::map<HiveId, std::optional<maths::Day>> days;
    std::set<HiveId> unknown;
    for (const book::LastPulled& last : book::last_pulled(workbook, yard)) {
        if (!last.withdrawal_days) {
            unknown.insert(last.hive);
            continue;
        }
        const maths::Day free = maths::days_after(last.pulled_on, *last.withdrawal_days);
        auto& day = days[last.hive];
        day = day ? std::max(*day, free) : free;
    }
    for (const HiveId hive : unknown)
        days.erase(hive);
    return days;
}

} // namespace

std::vector<YardLine> yard_lines(const book::Workbook& workbook, maths::Day today) {
    std::map<YardId, YardLine> by_yard;
    for (const book::Hive& hive : book::hives_of_yard(workbook, {}))
        if (hive.state == book::HiveState::alive)
            by_yard[hive.yard].hives += hive.hives;
    std::set<HiveId> carrying;
    for (const PullLine& line : hanging(workbook, {}, today)) {
        YardLine& yard = by_yard[line.yard];
        if (carrying.insert(line.hive).second)
            yard.carrying += line.hives;
        yard.strips_hanging += line.strips;
        widen(yard.pull_from, line.pull_from);
        widen(yard.pull_by, line.pull_by);
        worsen(yard.state, line.state);
    }
    std::vector<YardLine> lines;
    for (const YardEntry& entry : yards(workbook, true)) {
        YardLine line = by_yard[entry.id];
        line.id = entry.id;
        line.name = entry.name;
        line.where_it_is = entry.where_it_is;
        line.active = entry.active;
        // A yard given up is shown as long as something of it is to be done.
        if (line.active || line.strips_hanging > 0)
            lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<HiveLine> hive_lines(const book::Workbook& workbook, YardId yard, maths::Day today) {
    const std::map<HiveId, InHive> in = in_hives(hanging(workbook, yard, today));
    const auto harvest = harvest_days(workbook, yard);
    std::map<YardId, QString> yard_names;
    for (const book::Yard& y : book::yards_by_name(workbook))
        yard_names[y.id] = y.name;
    const auto threshold = figure(workbook, Figure::mite_threshold);
    std::map<HiveId, CountLine> counts;
    for (const book::CountRow& row : book::newest_counts(workbook, yard))
        counts.emplace(row.count.hive, line_of(row, threshold));
    std::vector<HiveLine> lines;
    for (HiveEntry& entry : hives(workbook, yard, true)) {
        HiveLine line;
        line.entry = std::move(entry);
        line.yard_name = yard_names[line.entry.yard];
        if (const auto found = in.find(line.entry.id); found != in.end()) {
            const InHive& h = found->second;
            line.strips = h.strips;
            line.bags = h.bags;
            line.since = h.since;
            line.day_number = static_cast<int>(maths::days_between(h.since, today)) + 1;
            line.pull_from = h.first_from;
            line.pull_by = h.first_by;
            line.windows_clash = h.last_from && h.first_by && *h.last_from > *h.first_by;
            line.state = h.state;
        } else if (const auto free = harvest.find(line.entry.id); free != harvest.end()) {
            line.no_harvest_before = free->second;
        }
        if (const auto count = counts.find(line.entry.id); count != counts.end())
            line.last_count = count->second;
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const HiveLine& a, const HiveLine& b) {
        const bool gone_a = a.entry.state != StateOfHive::alive;
        const bool gone_b = b.entry.state != StateOfHive::alive;
        if (gone_a != gone_b)
            return gone_b;
        return a.yard_name != b.yard_name ? comes_before(a.yard_name, b.yard_name)
                                          : comes_before(a.entry.name, b.entry.name);
    });
    return lines;
}

} // namespace soakbook::work
