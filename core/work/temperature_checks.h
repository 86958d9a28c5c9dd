// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a temperature can be read off a thermometer of the trade. For core/work's own use.
#pragma once

#include "core/work/checks.h"

namespace soakbook::work {

/// Asks outside -20 to 120 C, and refuses outside -100 to 500 C.
Not odd_temperature(std::optional<maths::Temperature> temperature, const QString& field, const Confirmed& confirmed);

} // namespace soakbook::work
