// SPDX-License-Identifier: GPL-3.0-or-later
// Placements with the names of what they link.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/placement.h"

#include <set>

namespace soakbook::book {

struct PlacementRow {
    Placement placement;
    QString hive;
    int hives = 1;
    HiveState hive_state{};
    Id<Yard> yard_now; ///< where the hive stands
    QString yard_now_name;
    QString yard_name; ///< where it stood that day
    QString bag_code;
    Id<Batch> batch;
    QString batch_code;
    maths::Day use_by{};
    std::optional<maths::Fraction> strength;
    QString round_name;
};
/// What is looked for; what is left empty does not narrow.
struct PlacementFilter {
    bool hanging = false; ///< not pulled and not void
    bool also_void = false;
    Id<Yard> yard_now;
    Id<Yard> yard_then;
    Id<Hive> hive;
    Id<Bag> bag;
    Id<Batch> batch;
    Id<Round> round;
    std::optional<maths::Day> from; ///< placed from
    std::optional<maths::Day> to;
};
/// In order of the day placed.
std::vector<PlacementRow> placements(const Workbook& workbook, const PlacementFilter& filter);

/// For each hive: when strips last came out, by withdrawal days.
struct LastPulled {
    Id<Hive> hive;
    std::optional<int> withdrawal_days;
    maths::Day pulled_on{};
};
std::vector<LastPulled> last_pulled(const Workbook& workbook);

/// Strips in and hanging of each round, and the window of what hangs.
struct RoundStrips {
    Id<Round> round;
    Id<Yard> yard; ///< where they were hung
    int in = 0;
    int hanging = 0;
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by;
};
std::vector<RoundStrips> strips_by_round(const Workbook& workbook);

/// Which hives got strips in which round.
std::set<std::pair<Id<Round>, Id<Hive>>> hung_in_rounds(const Workbook& workbook);

/// The day and wall on which each placement's pull was last written.
struct PullWritten {
    Id<Placement> placement;
    maths::Instant at;
};
std::vector<PullWritten> pulls_written(const Workbook& workbook);

} // namespace soakbook::book
