// SPDX-License-Identifier: GPL-3.0-or-later
// Which whole pails of old liquid go into a mix, so that most of it is used: a pail goes in whole or not at all, and
// pails of one set only together. Exact up to 21 of them; beyond that the search ends after a fixed number of trials
// and says whether it could prove that nothing is better. Source: conservation of mass; the search is branch and bound
// (Land & Doig 1960, Econometrica 28:497).
#pragma once

#include "core/maths/mixing.h"
#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace soakbook::maths {

/// One pail as it stands in the store.
struct PailAtHand {
    Mass mass;
    std::optional<Fraction> strength; ///< none: unknown, and never chosen
    Day day{};                        ///< of its oldest liquid
    std::optional<std::int64_t> set;  ///< pails with the same number go in together only
};

/// What is wanted, and what there is to make it of.
struct PailWish {
    Mass total;
    Fraction strength;
    Fraction assay;                ///< of the fresh acid
    Mass capacity;                 ///< of the vessel
    std::optional<Mass> acid;      ///< fresh acid there is; none: as much as needed
    std::optional<Mass> glycerine; ///< fresh glycerine there is; none: as much as needed
};

/// Why a pail is in or not.
enum class PailPlace {
    used,
    strength_unknown,
    too_heavy,  ///< it, or its set, is heavier than the whole mix
    too_strong, ///< it, or its set, alone holds more acid than the mix may
    too_weak,   ///< it, or its set, alone leaves no room for the acid it would need
    left_over,  ///< with the others that go in it does not fit
};
struct PailChoice {
    std::vector<PailPlace> places; ///< one for each pail given, in the same order
    Mass old_liquid;               ///< in the pails used
    Mixture mix;                   ///< of pails and fresh material together
    Amounts fresh;                 ///< to add; both zero for a mix of pails only
    bool proved = true;            ///< nothing better exists; false: more pails than could be tried out
    Mass could_be_more;            ///< when not proved: no choice uses more old liquid than this much more
};

/// The choice that uses most old liquid; of equal ones the one with more of the oldest day's liquid, then of the next
/// day's and so on; then the one with the fewest pails. Refuses: amounts of zero or less, a total above the capacity
/// (overfills_vessel), an assay below the strength, acid_short, glycerine_short, or no_choice_fits when both are short;
/// more than 1000 t.
Answer<PailChoice> choose_pails(std::span<const PailAtHand> pails, const PailWish& wish);

/// Pails only and nothing fresh: as near to `working_mass` as whole pails come without exceeding it, in the same order
/// of preference; the strength is what it comes to. Refuses no_choice_fits when no pail of known strength fits.
Answer<PailChoice> choose_pails_only(std::span<const PailAtHand> pails, Mass working_mass);

} // namespace soakbook::maths
