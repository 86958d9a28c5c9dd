// SPDX-License-Identifier: GPL-3.0-or-later
// A visit's entry read against the workbook: its round, its yard, and what each hive is to get. For core/work's own
// use.
#pragma once

#include "core/book/records/round_yard.h"
#include "core/work/hang.h"
#include "core/work/visit.h"

namespace soakbook::work {

/// A round and one of its yards.
struct RoundInYard {
    book::Round round;
    book::RoundYard in_yard;
    book::Yard yard;
};
/// Refuses a round that is not there, void or closed, and a yard that does not belong to it.
Outcome<RoundInYard> round_in_yard(const book::Workbook& workbook, RoundId round, YardId yard);

struct VisitRows {
    RoundInYard where;
    maths::Day on{};
    std::vector<HangRow> hanging;    ///< rows with strips
    std::vector<std::size_t> row_of; ///< for each of them the entry's row
    std::vector<book::Hive> changed; ///< hives found dead or gone, or with a note and no strips
    std::set<HiveId> seen;
};
/// Refuses what a visit's rows alone can be refused for.
Outcome<VisitRows> read_visit(const book::Workbook& workbook, const VisitEntry& entry, maths::Day today);

} // namespace soakbook::work
