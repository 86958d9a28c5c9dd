// SPDX-License-Identifier: GPL-3.0-or-later
// How far single strips of a kind and lot lie apart in weight, learned from every weighing one by one in the workbook.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <optional>

namespace soakbook::work {

/// The pooled spread of single strips, and how much it stands on.
struct StripSpread {
    double deviation = 0; ///< standard deviation of single strips, g
    int degrees = 0;      ///< degrees of freedom: strips less weighings
    int strips = 0;
    int weighings = 0;

    maths::Mass deviation_mass() const { return maths::grams(deviation); }
};
/// From wet strips of that kind, soaking or out of a bag, weighed one by one; pulled ones tell nothing, for bees gnaw
/// at them. `lot` empty: all lots of the kind. Nothing when there is no such weighing, or no two strips of one differ.
std::optional<StripSpread> known_spread(const book::Workbook& workbook, StripKindId kind, std::optional<LotId> lot);

} // namespace soakbook::work
