// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as numbers on an axis, in the unit that the user reads.
#pragma once

#include "core/exchange/quantity_text.h"

namespace soakbook::ui {

inline double in_unit(maths::Mass mass, exchange::MassUnit unit) {
    return exchange::write_mass_number(mass, unit, QLocale::c()).toDouble();
}

inline double in_unit(maths::Temperature temperature, exchange::TemperatureUnit unit) {
    return exchange::write_temperature_number(temperature, unit, QLocale::c()).toDouble();
}

} // namespace soakbook::ui
