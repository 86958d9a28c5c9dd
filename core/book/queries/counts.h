// SPDX-License-Identifier: GPL-3.0-or-later
// Mite counts with the names of their hive and round.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/mite_count.h"

namespace soakbook::book {

struct CountRow {
    MiteCount count;
    QString hive;
    QString round_name;
};
/// Counts of a hive or of the hives that stand in a yard now (0: of all), newest first; void ones when asked for.
std::vector<CountRow> mite_counts(const Workbook& workbook, Id<Hive> hive, Id<Yard> yard, bool also_void = false);
/// How many bees the count of that kind had that was written last, if one had any.
std::optional<int> bees_counted_last(const Workbook& workbook, CountKind kind);
/// Counts that were made for a round, newest first, void ones not.
std::vector<CountRow> counts_of_round(const Workbook& workbook, Id<Round> round);
/// The newest count of each hive that has one; of the hives that stand in a yard (0: of all).
std::vector<CountRow> newest_counts(const Workbook& workbook, Id<Yard> yard = {});

} // namespace soakbook::book
