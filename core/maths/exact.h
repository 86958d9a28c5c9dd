// SPDX-License-Identifier: GPL-3.0-or-later
// Whole-number sums without overflow, and the guards that every function of this room uses on what it is given.
#pragma once

#include "core/maths/quantities.h"

#include <cmath>
#include <cstdint>

namespace soakbook::maths {

__extension__ using Wide = __int128;

/// The most that is reckoned with: a million tonnes in milligrams. Beyond it a double would lose milligrams.
constexpr Mass heaviest{1'000'000'000'000'000};

/// More than nothing and within reason.
constexpr bool is_amount(Mass m) {
    return m.count > 0 && m <= heaviest;
}
/// Nothing or more, within reason.
constexpr bool is_amount_or_none(Mass m) {
    return m.count >= 0 && m <= heaviest;
}
/// From 0 to 1.
constexpr bool is_part(Fraction f) {
    return f.count >= 0 && f.count <= 1'000'000;
}
/// A confidence: above 50 % and below 100 %.
constexpr bool is_confidence(Fraction f) {
    return f.count > 500'000 && f.count < 1'000'000;
}

/// Numerator over denominator to the nearest whole number, halves away from zero. `below` must be above zero.
constexpr Wide rounded_ratio(Wide above, Wide below) {
    return above >= 0 ? (above + below / 2) / below : -((-above + below / 2) / below);
}
/// a * b / c to the nearest whole number without overflow on the way. `c` must be above zero.
constexpr std::int64_t times_over(std::int64_t a, std::int64_t b, std::int64_t c) {
    return static_cast<std::int64_t>(rounded_ratio(static_cast<Wide>(a) * b, c));
}
/// The quotient rounded up, for numbers that are not negative. `below` must be above zero.
constexpr std::int64_t rounded_up(std::int64_t above, std::int64_t below) {
    return above / below + (above % below > 0 ? 1 : 0);
}

} // namespace soakbook::maths
