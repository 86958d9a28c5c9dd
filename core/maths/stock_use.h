// SPDX-License-Identifier: GPL-3.0-or-later
// Which bag serves which need: on each day the bags in date on that day, those with the nearest limit first.
// Source: earliest due date first (Jackson 1955), which leaves as little as possible to expire.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <span>
#include <vector>

namespace soakbook::maths {

/// Strips wanted on a day, for a round, a yard or a hive.
struct StripNeed {
    Day day{};
    std::int64_t strips = 0;
};
/// A bag in the store.
struct StockBag {
    std::int64_t strips = 0;
    Day ready{};  ///< first day of use
    Day use_by{}; ///< last day of use
};
/// So many strips of a bag for a need; both by their place in the lists given.
struct BagUse {
    std::size_t bag = 0;
    std::size_t need = 0;
    std::int64_t strips = 0;

    constexpr bool operator==(const BagUse&) const = default;
};
struct Missing {
    std::size_t need = 0;
    std::int64_t strips = 0;

    constexpr bool operator==(const Missing&) const = default;
};
struct StockUse {
    std::vector<BagUse> uses;         ///< by day of need
    std::vector<Missing> missing;     ///< by day of need
    std::vector<std::int64_t> unused; ///< for each bag: strips that no need takes
};
/// Refuses negative strips.
Answer<StockUse> use_stock(std::span<const StripNeed> needs, std::span<const StockBag> bags);

} // namespace soakbook::maths
