// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of bags on the shelf and of the accounts come about.
#pragma once

#include "core/work/bag.h"
#include "core/work/batch_cost.h"
#include "core/work/batch_limits.h"
#include "core/work/how.h"
#include "core/work/leftovers.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// By the months that were copied into the bag. Nothing for a label without a bag.
std::optional<How> how_use_by(const book::Workbook& workbook, BagId bag);
/// Nothing when no rest was said.
std::optional<How> how_rest(const book::Workbook& workbook, BagId bag);
/// By the weights that were copied into the bag. Nothing where its strips were not weighed or the strength is not known.
std::optional<How> how_acid_in_strip(const book::Workbook& workbook, BagId bag);
/// For bags that are not filled yet, by the very weights that their figures stand on. Nothing while no strip was weighed.
std::optional<How> how_acid_in_strip(const BagFigures& figures);
/// For bags that are not filled yet: rest, where one was said, and use by.
std::vector<How> how_bag_days(const book::Workbook& workbook, maths::Day sealed, const BagFigures& figures);
How how_balance(const Balance& balance);
How how_strip_cost(const BatchCost& cost);
/// Nothing while there are no limits.
std::optional<How> how_batch_limits(const BatchChart& chart);
How how_hazard_class(maths::Fraction strength);

} // namespace soakbook::work
