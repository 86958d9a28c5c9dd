// SPDX-License-Identifier: GPL-3.0-or-later
// The search behind pails.h: which units (a pail, or a set that stays together) to take so that their mass is greatest
// while their acid and their glycerine stay within bounds. All figures are whole numbers, so the answer is exact.
// Source: branch and bound, Land & Doig 1960, Econometrica 28:497.
#pragma once

#include "core/maths/quantities.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace soakbook::maths {

/// One pail or set. Acid and glycerine are in milligrams times the assay's ppm, so that
/// `acid + glycerine == mass * scale`.
struct PailUnit {
    std::int64_t mass = 0;
    std::int64_t acid = 0;
    std::int64_t glycerine = 0;
    Day day{};
    std::int64_t pails = 1;
    std::size_t label = 0; ///< the caller's
};
/// Bounds that the sum of the units taken must keep, both ends included.
struct PailBounds {
    std::int64_t least_acid = 0;
    std::int64_t most_acid = 0;
    std::int64_t least_glycerine = 0;
    std::int64_t most_glycerine = 0;
    std::int64_t scale = 1; ///< see PailUnit
};
struct PailSearchResult {
    std::vector<PailUnit> taken;
    bool proved = true;
    std::int64_t could_be_more = 0; ///< when not proved: no set is heavier by more than this, in milligrams
};

/// The best set within the bounds, or nothing when not even one set (none taken included) keeps them.
/// `trials` bounds the work when there are more than 21 units.
std::optional<PailSearchResult> search_pails(std::vector<PailUnit> units, const PailBounds& bounds,
                                             std::int64_t trials = 1'200'000);

} // namespace soakbook::maths
