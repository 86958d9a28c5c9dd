// SPDX-License-Identifier: GPL-3.0-or-later
// Where every kilogram of a batch went, and what is unexplained. Source: conservation of mass; the usual limit of 2 %
// is common practice, no source, and the user's to change.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>

namespace soakbook::maths {

constexpr Fraction usual_balance_limit{20'000}; ///< 2 % of what went in

/// What strips and the free liquid beside them hold: net mass of a bag at sealing less its dry strips. Taken once, at
/// sealing: strips weighed again later have taken up what lay in the bag, and are not counted twice. Refuses a bag
/// lighter than its dry strips (nothing_taken_up) and amounts of zero or less.
Answer<Mass> liquid_in_bag(Mass net_at_sealing, std::int64_t strips, Mass dry);

/// One batch, all masses of liquid.
struct BatchFlow {
    Mass went_in;
    Mass in_bags; ///< strips and free liquid, sum of liquid_in_bag
    Mass in_pails;
    Mass drips; ///< wiped up, dripped, thrown away and weighed
    Mass heel;  ///< still in the tank
};
/// The account of it.
struct Balance {
    Mass accounted;
    Mass unexplained;  ///< went in less accounted: above zero is missing, below zero is more out than in
    Fraction of_input; ///< unexplained over went in, with its sign
    bool beyond_limit = false;

    constexpr bool operator==(const Balance&) const = default;
};
/// Refuses nothing going in, any negative part, a limit outside 0 to 1.
Answer<Balance> balance_of(const BatchFlow& flow, Fraction limit = usual_balance_limit);

} // namespace soakbook::maths
