// SPDX-License-Identifier: GPL-3.0-or-later
// The units that a quantity is written in: how large, how finely, and by which words they are known.
#pragma once

#include "core/exchange/number_text.h"
#include "core/exchange/quantity_text.h"

#include <optional>

namespace soakbook::exchange {

/// One unit in smallest units of its quantity: numerator / denominator. `decimals` is how many a text may have, chosen
/// so that a step of the last one is never more than one smallest unit: whatever is recorded can be written exactly.
struct Ratio {
    std::int64_t numerator;
    std::int64_t denominator;
    int decimals;

    /// What a number scaled to `decimals` is divided by after it was multiplied with the numerator.
    constexpr Wide divisor() const { return power_of_ten(decimals) * denominator; }
};

// Exact by definition: pound 0.45359237 kg, ounce 1/16 pound, US gallon 231 cubic inches of 2.54 cm.
// Source: NIST Special Publication 811 (2008), appendix B, from memory.
constexpr Ratio ratio(MassUnit unit) {
    switch (unit) {
    case MassUnit::gram:
        return {1000, 1, 3};
    case MassUnit::kilogram:
        return {1'000'000, 1, 6};
    case MassUnit::pound:
        return {45'359'237, 100, 6};
    case MassUnit::ounce:
        return {45'359'237, 1600, 5};
    }
    return {1, 1, 0};
}

constexpr Ratio ratio(VolumeUnit unit) {
    switch (unit) {
    case VolumeUnit::millilitre:
        return {1000, 1, 3};
    case VolumeUnit::litre:
        return {1'000'000, 1, 6};
    case VolumeUnit::us_gallon:
        return {3'785'411'784, 1000, 7};
    }
    return {1, 1, 0};
}

inline constexpr Ratio percent_ratio{10'000, 1, 4};
inline constexpr Ratio money_ratio{10'000, 1, 4};
inline constexpr Ratio whole_ratio{1, 1, 0};
/// Temperatures keep hundredths of a degree Celsius and are written with as many decimals in either scale.
inline constexpr int temperature_decimals = 2;

/// The unit of this name or sign, in any case: "kg", "lbs", "litres". The offered unit only says which quantity it is.
std::optional<MassUnit> unit_named(QStringView word, MassUnit any);
std::optional<VolumeUnit> unit_named(QStringView word, VolumeUnit any);
/// A lone degree sign is the scale that a bare number would be in.
std::optional<TemperatureUnit> unit_named(QStringView word, TemperatureUnit bare);

} // namespace soakbook::exchange
