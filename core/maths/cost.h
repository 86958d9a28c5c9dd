// SPDX-License-Identifier: GPL-3.0-or-later
// What a strip costs: its share of acid and glycerine, the dry strip, the bag and the label. Leftovers carry their cost
// into the pail, and on into the batch that takes the pail. What is lost is borne by what is left. Source: common
// practice, no source; every amount is shared out to the last ten-thousandth, so that costs close to zero.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <span>
#include <vector>

namespace soakbook::maths {

/// What `used` out of something costs when `priced` of it costs `price` (a can, say). Refuses masses of zero or less
/// for `priced`, negative masses and prices.
Answer<Money> cost_of(Mass used, Money price, Mass priced);

/// The liquid of one batch, by what its cost comes from.
struct LiquidCost {
    Money acid;
    Money glycerine;
    Money carried; ///< by the whole pails that went in

    constexpr bool operator==(const LiquidCost&) const = default;
    constexpr Money total() const { return acid + glycerine + carried; }
};
/// How it leaves the batch.
struct LiquidShares {
    LiquidCost in_bags;
    std::vector<Money> in_pails; ///< each pail's, in the order given: this is what it carries on
};
/// Shares the cost over bags and pails by mass; drips, heel and losses are borne by them. Refuses negative masses and
/// costs, and zero_below_the_line when there is neither bag nor pail.
Answer<LiquidShares> share_liquid(const LiquidCost& liquid, Mass in_bags, std::span<const Mass> pails);

/// What packing takes.
struct Packing {
    std::int64_t strips = 0;
    Money each_dry_strip;
    std::int64_t bags = 0;
    Money each_bag;
    Money each_label;
};
/// All strips of a batch, by what their cost comes from.
struct StripCost {
    LiquidCost liquid;
    Money dry_strips;
    Money bags;
    Money labels;
    std::int64_t strips = 0;

    constexpr Money total() const { return liquid.total() + dry_strips + bags + labels; }
    /// One strip, to the nearest ten-thousandth.
    Money each() const;
};
/// Refuses fewer than one strip, and negative counts and costs.
Answer<StripCost> strip_cost(const LiquidCost& in_bags, const Packing& packing);

} // namespace soakbook::maths
