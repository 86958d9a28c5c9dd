// SPDX-License-Identifier: GPL-3.0-or-later
// Bags with what became of their strips, each list in one query.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/bag_change.h"
#include "core/book/records/placement.h"

namespace soakbook::book {

/// A bag and its strips: packed = placed + discarded - recounted + left.
struct BagStock {
    Bag bag;
    QString batch_code;
    QString strip_kind_name;
    int placed = 0;
    int discarded = 0;
    int recounted = 0; ///< with a sign
    int left = 0;      ///< 0 for a void bag
};
/// Every bag, also void and empty ones and reserved labels, in order of use-by day.
std::vector<BagStock> all_bag_stock(const Workbook& workbook);
/// Sealed bags that are not void and have strips left, in order of use-by day.
std::vector<BagStock> bag_stock_on_shelf(const Workbook& workbook);
/// Labels that are reserved for bags not filled yet.
std::vector<BagStock> reserved_bag_labels(const Workbook& workbook);
/// Bags on the shelf of one kind.
std::vector<BagStock> bag_stock_of_kind(const Workbook& workbook, Id<StripKind> kind);
std::optional<BagStock> bag_stock(const Workbook& workbook, Id<Bag> id);
/// How many bags there ever were, reserved and void ones too.
int count_bags(const Workbook& workbook);

/// What was thrown away or counted anew, oldest first.
std::vector<BagChange> changes_of_bag(const Workbook& workbook, Id<Bag> id);

} // namespace soakbook::book
