// SPDX-License-Identifier: GPL-3.0-or-later
// Placements with the names of what they link.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/placement.h"

#include <map>
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
    std::optional<maths::Instant> pull_written; ///< when its pull was last written, and on which wall; only where asked for
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
    bool pulls_written = false; ///< also reads when the pulls were written
};
/// In order of the day placed.
std::vector<PlacementRow> placements(const Workbook& workbook, const PlacementFilter& filter);
/// Their keys alone, each with the batch its strips came from, in no order.
std::vector<std::pair<Id<Placement>, Id<Batch>>> placements_and_batches(const Workbook& workbook, const PlacementFilter& filter);

/// For each hive: when strips last came out, by withdrawal days.
struct LastPulled {
    Id<Hive> hive;
    std::optional<int> withdrawal_days;
    maths::Day pulled_on{};
};
/// Of the hives that stand in a yard (0: of all).
std::vector<LastPulled> last_pulled(const Workbook& workbook, Id<Yard> yard = {});

/// Strips in and hanging of each round, and the window of what hangs.
struct RoundStrips {
    Id<Round> round;
    int hives = 0; ///< that got strips, groups counted whole
    int in = 0;
    int hanging = 0;
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by;
};
std::vector<RoundStrips> strips_by_round(const Workbook& workbook);

/// Which hives got strips in that round.
std::set<Id<Hive>> hung_in_round(const Workbook& workbook, Id<Round> round);

/// What hangs in a hive.
struct HangingInHive {
    int strips = 0;
    maths::Day since{}; ///< the earliest
};
std::map<Id<Hive>, HangingInHive> hanging_by_hive(const Workbook& workbook);

} // namespace soakbook::book
