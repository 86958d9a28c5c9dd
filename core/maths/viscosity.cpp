// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/viscosity.h"

#include "core/maths/exact.h"

#include <cmath>

namespace soakbook::maths {

Answer<double> glycerol_viscosity(Fraction glycerol, Temperature temperature) {
    if (!is_part(glycerol) || temperature.count < 0 || temperature.count > 10'000)
        return unexpected(Unanswerable::out_of_range);
    const double t = in_celsius(temperature);
    const double part = as_number(glycerol);
    const double water = 1.790 * std::exp((-1230.0 - t) * t / (36100.0 + 360.0 * t));
    const double pure = 12100.0 * std::exp((-1233.0 + t) * t / (9900.0 + 70.0 * t));
    const double a = 0.705 - 0.0017 * t;
    const double b = (4.9 + 0.036 * t) * std::pow(a, 2.5);
    const double weight = 1.0 - part + a * b * part * (1.0 - part) / (a * part + b * (1.0 - part));
    return std::pow(water, weight) * std::pow(pure, 1.0 - weight);
}

Answer<double> soak_time_ratio(Temperature warmer, Temperature colder) {
    const auto thin = glycerol_viscosity(percent(100), warmer);
    const auto thick = glycerol_viscosity(percent(100), colder);
    if (!thin || !thick)
        return unexpected(Unanswerable::out_of_range);
    return *thick / *thin;
}

} // namespace soakbook::maths
