// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/maths/quantities.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// The moment every test of these parts happens at.
inline maths::Instant fixed_clock() {
    return wall_instant(maths::day(2026, 11, 24), 10 * 60 + 5);
}

} // namespace soakbook::ui
