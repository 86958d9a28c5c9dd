// SPDX-License-Identifier: GPL-3.0-or-later
// Which bags give how many strips: nearest limit first, an opened bag before others of the same limit, and no more bags
// opened than need be. Resting and past bags are taken only when they are named. For core/work's own use.
#pragma once

#include "core/book/queries/bags.h"
#include "core/work/outcome.h"
#include "core/work/visit.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// What one hive gets.
struct Wish {
    int strips = 0;
    std::optional<BagId> bag; ///< empty: as the rule above takes it
    QString strips_field;
    QString bag_field;
};
struct Shares {
    std::vector<std::vector<FromBag>> of;   ///< for each wish
    std::map<BagId, book::BagStock> bags;   ///< those that give something
    int ready = 0;                          ///< strips ready on that day
    int short_of = 0;                       ///< wanted and not ready
    std::optional<std::size_t> first_short; ///< the wish that falls short first
};

/// True when the bag's strips may be hung on that day without a word.
bool is_ready(const book::BagStock& stock, maths::Day on);
/// Strips ready on that day among these.
int strips_ready(const std::vector<book::BagStock>& stock, maths::Day on);

/// Refuses named bags that are not there, void, empty, of another kind, not filled, sealed later, or short. Named bags
/// past their limit or resting are given: whoever asks looks at them. Too few strips are told in short_of.
Outcome<Shares> share_from_bags(const book::Workbook& workbook, StripKindId kind, const std::vector<Wish>& wishes,
                                maths::Day on);

} // namespace soakbook::work
