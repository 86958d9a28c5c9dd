// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/register_view.h"

#include "core/book/queries/placements.h"
#include "core/book/queries/register.h"
#include "core/maths/dose.h"
#include "core/work/corrections.h"
#include "core/work/yards_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

RegisterLine line_of(const book::PlacementRow& row) {
    const book::Placement& p = row.placement;
    RegisterLine line;
    line.placement = p.id;
    line.placed_on = p.placed_on;
    line.hive = row.hive;
    line.hives = row.hives;
    line.yard = row.yard_name;
    line.bag_code = row.bag_code;
    line.batch_code = row.batch_code;
    line.strips = p.strips;
    line.acid_per_strip = p.acid_per_strip;
    if (p.acid_per_strip) {
        const maths::Hung hung{p.strips, *p.acid_per_strip};
        if (const auto acid = maths::acid_in_hive({&hung, 1}))
            line.acid = *acid;
    }
    line.strength = row.strength;
    line.use_by = row.use_by;
    line.placed_by = p.placed_by;
    line.written_late = p.written.local_day() > p.placed_on;
    line.written = p.written;
    line.pull_by = p.pull_by;
    line.pulled_on = p.pulled_on;
    line.pulled_late = p.pulled_on && p.pull_by && *p.pulled_on > *p.pull_by;
    line.pulled = p.pulled;
    line.missing = p.missing;
    line.pulled_by = p.pulled_by;
    if (p.pulled_on && p.withdrawal_days)
        line.no_harvest_before = maths::days_after(*p.pulled_on, *p.withdrawal_days);
    line.supers_on = p.supers_on;
    line.past_limit_reason = p.past_limit_reason.value_or(QString());
    line.asked = p.asked.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    line.round = row.round_name;
    line.note = p.note;
    line.void_reason = p.void_reason.value_or(QString());
    return line;
}

} // namespace

std::vector<RegisterLine> treatments(const book::Workbook& workbook, const RegisterFilter& filter) {
    book::PlacementFilter placed{false, filter.also_void, {}, filter.yard, {}, {}, filter.batch, {}, filter.from, filter.to, true};
    const std::vector<book::PlacementRow> rows = book::placements(workbook, placed);
    std::set<qint64> shown;
    for (const book::PlacementRow& row : rows)
        shown.insert(row.placement.id.value);
    std::map<PlacementId, std::vector<CorrectionLine>> corrected;
    const auto is_shown = [&](const book::ChangeHead& change) { return shown.count(change.row) != 0; };
    for (const book::Change& change : book::corrections_in(workbook, {QStringLiteral("placement")}, is_shown)) {
        auto& lines = corrected[{change.row}];
        for (CorrectionLine& line : lines_of(workbook, change))
            lines.push_back(std::move(line));
    }
    std::vector<RegisterLine> lines;
    lines.reserve(rows.size());
    for (const book::PlacementRow& row : rows) {
        RegisterLine line = line_of(row);
        if (const auto found = corrected.find(line.placement); found != corrected.end())
            line.corrections = found->second;
        line.pull_written_late = line.pulled_on && row.pull_written && row.pull_written->local_day() > *line.pulled_on;
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const RegisterLine& a, const RegisterLine& b) {
        if (a.placed_on != b.placed_on)
            return a.placed_on < b.placed_on;
        return a.yard != b.yard ? comes_before(a.yard, b.yard) : comes_before(a.hive, b.hive);
    });
    return lines;
}

std::vector<HiveStateLine> hive_states(const book::Workbook& workbook, const RegisterFilter& filter) {
    std::vector<HiveStateLine> lines;
    for (const book::HiveStateRow& row : book::hives_found(workbook, filter.yard, filter.batch, filter.from, filter.to))
        lines.push_back({row.on, row.name, row.yard, row.state, row.note});
    return lines;
}

} // namespace soakbook::work
