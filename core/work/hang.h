// SPDX-License-Identifier: GPL-3.0-or-later
// Hanging strips, as a visit and a single placement share it: checks first, then every record at once. For core/work's
// own use.
#pragma once

#include "core/book/records/hive.h"
#include "core/book/records/placement.h"
#include "core/maths/keeping.h"
#include "core/work/bag_choice.h"
#include "core/work/perform.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// One hive and what it is to get.
struct HangRow {
    book::Hive hive; ///< with the yard it stood in on that day
    Wish wish;
    QString note;
};
struct Hanging {
    std::optional<RoundId> round;
    StripKindId kind;
    YardId yard;
    QString yard_name;
    maths::Day on{};
    int pull_from_days = 0;
    int pull_by_days = 0;
    std::optional<int> withdrawal_days;
    std::optional<int> least; ///< strips a hive, by the rule
    std::optional<int> most;
    std::optional<bool> supers_on; ///< of all; empty: as each hive says
    QString past_limit_reason;
    std::vector<HangRow> rows; ///< those with strips
};
/// What will be written.
struct Hung {
    std::vector<book::Placement> placements;
    std::vector<book::Bag> opened; ///< bags as they stand afterwards, where that changes
    VisitDone done;
};
/// Law 4 and every question of a visit. Placements carry what was asked and answered with yes.
Outcome<Hung> plan_hanging(const book::Workbook& workbook, const Hanging& hanging, const book::Doing& doing,
                           const Confirmed& confirmed);
void write_hung(book::Writing& writing, const Hung& hung);

/// How the bags of a plan are shown, nearest limit first.
std::vector<BagUse> uses_of(const Shares& shares);

} // namespace soakbook::work
