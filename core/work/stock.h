// SPDX-License-Identifier: GPL-3.0-or-later
// Bags on the shelf: opened, resealed, moved, strips thrown away, counted anew.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

Outcome<int> move_bags(book::Workbook& workbook, const std::vector<BagId>& bags, const QString& stands,
                       const book::Doing& doing);
/// `on` empty: today.
Outcome<int> open_bag(book::Workbook& workbook, BagId bag, std::optional<maths::Day> on, const book::Doing& doing);
Outcome<int> reseal_bag(book::Workbook& workbook, BagId bag, std::optional<maths::Day> on, const book::Doing& doing);
/// Fields: strips, on, reason. Refuses more than are left (law 3).
Outcome<int> discard_strips(book::Workbook& workbook, BagId bag, std::optional<int> strips,
                            std::optional<maths::Day> on, const QString& reason, const book::Doing& doing);
/// All that is left in several bags, as when their limit has passed. Fields: on, reason.
Outcome<int> discard_bags(book::Workbook& workbook, const std::vector<BagId>& bags, std::optional<maths::Day> on,
                          const QString& reason, const book::Doing& doing);
/// Sets what is left after counting. Fields: left, reason.
Outcome<int> recount_bag(book::Workbook& workbook, BagId bag, std::optional<int> left, const QString& reason,
                         const book::Doing& doing);

} // namespace soakbook::work
