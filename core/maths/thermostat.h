// SPDX-License-Identifier: GPL-3.0-or-later
// What a tank's dial is worth: settled pairs of dial and probe tell how far they are apart and which dial keeps the
// liquid at the temperature wanted and under the ceiling. Take pairs of one tank with like fill, cover and room.
// Source: from four pairs on the straight line of line_fit.h with its 95 % prediction; below that common practice, no
// source: only the range of offsets seen, and the smallest of them against the ceiling.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace soakbook::maths {

/// One settled reading.
struct DialPair {
    Temperature dial;
    Temperature probe;
};
/// By how much the dial reads above the tank; negative when below.
struct OffsetRange {
    std::int64_t pairs = 0;
    Temperature smallest;
    Temperature largest;

    constexpr bool operator==(const OffsetRange&) const = default;
};
/// Refuses no pairs (too_few) and temperatures outside -50 to 200 C.
Answer<OffsetRange> offsets(std::span<const DialPair> pairs);

/// From one temperature to another.
struct TemperatureRange {
    Temperature low;
    Temperature high;

    constexpr bool operator==(const TemperatureRange&) const = default;
};

/// What is wanted of the tank.
struct DialWish {
    Temperature wanted;
    Temperature ceiling;
    Temperature step{100}; ///< the dial's small step; no advice goes more than one beyond the dials seen
};
/// Why the dial advised is not simply the one that gives the wanted temperature.
enum class DialLimit { none, ceiling, dials_seen };
struct DialAdvice {
    Temperature dial;         ///< to set
    Temperature highest_dial; ///< the highest that keeps under the ceiling, as far as is known
    DialLimit limit = DialLimit::none;
    bool by_line = false;      ///< from four or more pairs at differing dials
    TemperatureRange expected; ///< what the probe will show at `dial`: the 95 % prediction, or from the offsets seen
};
/// Refuses: no pairs (no advice), a step not above zero, temperatures outside -50 to 200 C, a wish above the ceiling
/// (out_of_range), and no_choice_fits when even one step below the dials seen would not keep under the ceiling.
Answer<DialAdvice> dial_for(std::span<const DialPair> pairs, const DialWish& wish);

/// True when a reading is over the ceiling, which is said at once.
constexpr bool is_over_ceiling(Temperature reading, Temperature ceiling) {
    return reading > ceiling;
}

} // namespace soakbook::maths
