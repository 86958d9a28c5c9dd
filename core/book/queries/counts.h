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
/// The newest count of each hive that has one.
std::vector<CountRow> newest_counts(const Workbook& workbook);

} // namespace soakbook::book
