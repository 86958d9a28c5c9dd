// SPDX-License-Identifier: GPL-3.0-or-later
// Yards, their times, their hives, and where a hive stood on a day.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/hive.h"
#include "core/book/records/hive_move.h"
#include "core/book/records/yard.h"
#include "core/book/records/yard_time.h"

namespace soakbook::book {

std::vector<Yard> yards_by_name(const Workbook& workbook);
/// The yard of that name in any case.
std::optional<Yard> yard_named(const Workbook& workbook, const QString& name);
/// Times of a yard (0: of all) that were not taken out, by their first day.
std::vector<YardTime> times_of_yard(const Workbook& workbook, Id<Yard> yard);
/// Hives that stand in a yard (0: in any), dead and gone ones too, void ones not.
std::vector<Hive> hives_of_yard(const Workbook& workbook, Id<Yard> yard);
/// Moves in order of their day; of one hive, or of all (0).
std::vector<HiveMove> moves_of_hive(const Workbook& workbook, Id<Hive> hive);
/// Moves made after a day, in order of their day: they tell where hives stood on it.
std::vector<HiveMove> moves_after(const Workbook& workbook, maths::Day day);
/// The day strips were last hung in that hive; nothing if never.
std::optional<maths::Day> last_placed(const Workbook& workbook, Id<Hive> hive);

} // namespace soakbook::book
