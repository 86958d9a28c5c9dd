// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips a batch is good for: by mass alone, and with bins that must be flooded as well, side by side or one
// after another; and the most that can be left over. Source: conservation of mass; common practice for the flooding.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <optional>

namespace soakbook::maths {

/// floor(batch / uptake). Refuses a batch of nothing or less and an uptake of zero or less.
Answer<std::int64_t> strips_by_mass(Mass batch, Mass uptake);
/// The liquid that `strips` take up. Refuses fewer than one strip and an uptake of zero or less.
Answer<Mass> liquid_for_strips(std::int64_t strips, Mass uptake);
/// The most that can be left of a batch once `strips` took up their part; drips, heel and free liquid are still in it.
/// Refuses more strips than the batch can fill.
Answer<Mass> most_left(Mass batch, std::int64_t strips, Mass uptake);

/// A batch and the bins it is to be soaked in.
struct Soaking {
    Mass batch;
    Mass uptake; ///< per strip
    std::int64_t strips_per_bin = 0;
    Mass flood;                       ///< liquid that floods one bin with its strips, as measured at its last soak
    Mass drip_per_bin;                ///< lost at each bin
    std::optional<std::int64_t> bins; ///< how many there are; none: as many as the liquid floods
};
/// What one way of soaking gives.
struct Yield {
    std::int64_t bins = 0; ///< fillings; one bin filled twice counts twice
    std::int64_t strips = 0;
    Mass left;                  ///< the most that is left after it
    std::int64_t more_days = 0; ///< days beyond the first

    constexpr bool operator==(const Yield&) const = default;
};
/// All bins at once: floor(batch / flood), no more than there are. A batch too small to flood one bin yields zero.
/// Refuses amounts of zero or less, a negative drip, and a flood smaller than what the strips of that bin take up.
Answer<Yield> side_by_side(const Soaking& soaking);
/// One bin after another: floor((batch - flood) / uptake of a bin) + 1, each on a day of its own. Holds only if after
/// each bin all the liquid goes back to the tank, is warmed and stirred clear. Refuses as side_by_side.
Answer<Yield> one_after_another(const Soaking& soaking);

} // namespace soakbook::maths
