// SPDX-License-Identifier: GPL-3.0-or-later
// The bags of a batch and what of them went out.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/placement.h"

namespace soakbook::book {

/// All bags of the batch, reserved and void ones too, in the order of their codes.
std::vector<Bag> bags_of(const Workbook& workbook, Id<Batch> batch);
/// Placements from that bag that are not void, by day.
std::vector<Placement> placements_of_bag(const Workbook& workbook, Id<Bag> bag);
/// Strips left in the bag.
int left_in_bag(const Workbook& workbook, Id<Bag> bag);
/// The name of the hive of a placement.
QString hive_name(const Workbook& workbook, const Placement& placement);

} // namespace soakbook::book
