// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/density.h"

#include "core/maths/exact.h"

#include <cmath>

namespace soakbook::maths {
namespace {

bool is_density(double density) {
    return density >= 500.0 && density <= 3000.0;
}

} // namespace

Answer<double> glycerol_density(Temperature temperature, DensitySource source) {
    if (temperature.count < 0 || temperature.count > 10'000)
        return unexpected(Unanswerable::out_of_range);
    const double celsius_degrees = in_celsius(temperature);
    if (source == DensitySource::volk_kaehler_2018)
        return 1273.3 - 0.6121 * celsius_degrees;
    return 1277.0 - 0.654 * celsius_degrees;
}

Answer<double> liquid_density_estimate(Fraction strength, Temperature temperature, DensitySource source) {
    if (!is_part(strength))
        return unexpected(Unanswerable::out_of_range);
    const auto glycerol = glycerol_density(temperature, source);
    if (!glycerol)
        return glycerol;
    const double acid = as_number(strength);
    return 1.0 / (acid / acid_crystal_density + (1.0 - acid) / *glycerol);
}

Answer<double> density_from_weighing(Mass mass, Volume volume) {
    if (mass.count <= 0 || volume.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    const double density = in_kilograms(mass) / in_litres(volume) * 1000.0;
    if (!is_density(density))
        return unexpected(Unanswerable::out_of_range);
    return density;
}

// A kg/m3 is a milligram per microlitre times 1000.
Answer<Volume> volume_of(Mass mass, double density) {
    if (!is_amount_or_none(mass))
        return unexpected(mass.count < 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large);
    if (!is_density(density))
        return unexpected(Unanswerable::out_of_range);
    return Volume{std::llround(static_cast<double>(mass.count) / density * 1000.0)};
}

Answer<Mass> mass_of(Volume volume, double density) {
    if (volume.count < 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_density(density))
        return unexpected(Unanswerable::out_of_range);
    if (volume.count > heaviest.count / 3)
        return unexpected(Unanswerable::too_large);
    return Mass{std::llround(static_cast<double>(volume.count) * density / 1000.0)};
}

} // namespace soakbook::maths
