// SPDX-License-Identifier: GPL-3.0-or-later
// Strips out: counted and missing, a whole yard in one go with exceptions typed over.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

enum class PullState { waiting, open, closing_soon, past }; ///< window not open yet; open; near its last day; past it

struct PullLine {
    PlacementId placement;
    HiveId hive;
    QString hive_name;
    int hives = 1;
    YardId yard; ///< where the hive stands now
    QString yard_name;
    QString placed_in; ///< the yard it was hung in, if another
    QString bag_code;
    QString round_name;
    int strips = 0;
    maths::Day placed_on{};
    int day_number = 0; ///< 1 on the day it was hung
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by;
    PullState state{};
    bool hive_dead = false;
};
/// What hangs in the hives that stand in `yard` now (0: everywhere), earliest last day first.
std::vector<PullLine> hanging(const book::Workbook& workbook, YardId yard, maths::Day today);
PullState pull_state(std::optional<maths::Day> pull_from, std::optional<maths::Day> pull_by, maths::Day today,
                     int warn_days);

/// Fields: on, rows/<i>/pulled, rows/<i>/missing.
struct PullEntry {
    std::optional<maths::Day> on; ///< empty: today
    struct Row {
        PlacementId placement;
        std::optional<int> pulled;  ///< empty: all that hang
        std::optional<int> missing; ///< empty: what is not pulled
        QString note;
    };
    std::vector<Row> rows;
};
struct PullDone {
    int hives = 0;
    int pulled = 0;
    int missing = 0;
};
/// Refuses a day before the strips went in, counts that do not add up, strips already out; asks (window_not_open) when
/// early.
Outcome<PullDone> enter_pull(book::Workbook& workbook, const PullEntry& entry, const book::Doing& doing,
                             const Confirmed& confirmed = {});
/// Corrects a pull, reason in `doing`. Fields: on, pulled, missing.
Outcome<int> correct_pull(book::Workbook& workbook, PlacementId id, std::optional<int> pulled,
                          std::optional<int> missing, std::optional<maths::Day> on, const book::Doing& doing);

} // namespace soakbook::work
