// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/cost.h"

#include "core/maths/exact.h"
#include "core/maths/sharing.h"

#include <array>

namespace soakbook::maths {
namespace {

constexpr Money dearest{1'000'000'000'000'000};

bool is_cost(Money m) {
    return m.count >= 0 && m <= dearest;
}
bool is_cost(const LiquidCost& cost) {
    return is_cost(cost.acid) && is_cost(cost.glycerine) && is_cost(cost.carried);
}
Unanswerable unfit(std::int64_t count) {
    return count < 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large;
}

Answer<Money> times(Money each, std::int64_t n) {
    const Wide product = static_cast<Wide>(each.count) * n;
    if (product > dearest.count)
        return unexpected(Unanswerable::too_large);
    return Money{static_cast<std::int64_t>(product)};
}

} // namespace

Answer<Money> cost_of(Mass used, Money price, Mass priced) {
    if (priced.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_amount_or_none(used) || !is_amount(priced))
        return unexpected(unfit(used.count));
    if (!is_cost(price))
        return unexpected(unfit(price.count));
    const Wide cost = rounded_ratio(static_cast<Wide>(used.count) * price.count, priced.count);
    if (cost > dearest.count)
        return unexpected(Unanswerable::too_large);
    return Money{static_cast<std::int64_t>(cost)};
}

Answer<LiquidShares> share_liquid(const LiquidCost& liquid, Mass in_bags, std::span<const Mass> pails) {
    if (!is_cost(liquid))
        return unexpected(Unanswerable::not_a_quantity);
    std::vector<std::int64_t> weights{in_bags.count};
    for (const Mass pail : pails)
        weights.push_back(pail.count);
    for (const std::int64_t weight : weights)
        if (!is_amount_or_none(Mass{weight}))
            return unexpected(unfit(weight));
    const auto acid = share_out(liquid.acid, weights);
    const auto glycerine = share_out(liquid.glycerine, weights);
    const auto carried = share_out(liquid.carried, weights);
    if (!acid || !glycerine || !carried)
        return unexpected(acid ? glycerine ? carried.error() : glycerine.error() : acid.error());
    LiquidShares shares{{acid->front(), glycerine->front(), carried->front()}, {}};
    for (std::size_t i = 1; i < weights.size(); ++i)
        shares.in_pails.push_back((*acid)[i] + (*glycerine)[i] + (*carried)[i]);
    return shares;
}

Answer<StripCost> strip_cost(const LiquidCost& in_bags, const Packing& packing) {
    if (packing.strips < 1 || packing.bags < 0 || !is_cost(in_bags))
        return unexpected(Unanswerable::not_a_quantity);
    for (const Money each : {packing.each_dry_strip, packing.each_bag, packing.each_label})
        if (!is_cost(each))
            return unexpected(unfit(each.count));
    const auto strips = times(packing.each_dry_strip, packing.strips);
    const auto bags = times(packing.each_bag, packing.bags);
    const auto labels = times(packing.each_label, packing.bags);
    if (!strips || !bags || !labels)
        return unexpected(Unanswerable::too_large);
    return StripCost{in_bags, *strips, *bags, *labels, packing.strips};
}

Money StripCost::each() const {
    return strips > 0 ? Money{times_over(total().count, 1, strips)} : Money{};
}

} // namespace soakbook::maths
