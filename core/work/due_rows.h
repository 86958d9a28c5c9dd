// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of Due, one for each place its rows come from. For core/work's own use.
#pragma once

#include "core/work/due.h"
#include "core/work/figures.h"

#include <map>
#include <set>

namespace soakbook::work {

/// What every row is measured against, and the rows so far.
struct DueList {
    const book::Workbook& workbook;
    maths::Instant now;
    maths::Day today;
    std::vector<DueRow> rows;
    std::set<Figure> missing; ///< figures that keep something real from being said

    /// What the user said; a figure that was not said is noted as missing.
    std::optional<qint64> wanted(Figure which) {
        const auto said = figure(workbook, which);
        if (!said)
            missing.insert(which);
        return said;
    }
    DueRow& add(DueKind kind, DueGroup group, maths::Day sort_day) {
        DueRow& row = rows.emplace_back();
        row.kind = kind;
        row.group = group;
        row.sort_day = sort_day;
        return row;
    }
    /// Past days are now's; then today, six more days, later.
    DueGroup group_of(maths::Day day) const {
        const auto left = maths::days_between(today, day);
        return left < 0    ? DueGroup::now
               : left == 0 ? DueGroup::today
               : left < 7  ? DueGroup::this_week
                           : DueGroup::later;
    }
};

void due_in_shed(DueList& list);
void due_in_store(DueList& list);
void due_in_yards(DueList& list);

/// Midnight at the start of that day, as a moment whose local day it is.
constexpr maths::Instant start_of(maths::Day day) {
    return {std::chrono::milliseconds{day.time_since_epoch()}.count(), 0};
}

} // namespace soakbook::work
