// SPDX-License-Identifier: GPL-3.0-or-later
// Which hives stood where on a day, and which of them lived.
#pragma once

#include "core/book/records/hive.h"
#include "core/work/ids.h"

#include <vector>

namespace soakbook::work {

/// Hives that stood in the yard (0: in any) on that day, each with the yard it stood in then, in the order people
/// count.
std::vector<book::Hive> hives_standing(const book::Workbook& workbook, YardId yard, maths::Day on);
/// Where one hive stood on that day.
YardId yard_of_hive(const book::Workbook& workbook, const book::Hive& hive, maths::Day on);
/// True when the hive lived on that day: found dead or gone later does not count.
bool lives_on(const book::Hive& hive, maths::Day on);
void sort_as_counted(std::vector<book::Hive>& hives);

} // namespace soakbook::work
