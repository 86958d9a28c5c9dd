// SPDX-License-Identifier: GPL-3.0-or-later
// The clock on the wall, read here at the edge and handed inward.
#pragma once

#include "core/maths/quantities.h"

#include <functional>
#include <optional>

namespace soakbook::app {

using Clock = std::function<maths::Instant()>;

/// The wall clock; with a day, a clock that stands at ten past two that afternoon and goes on from there.
Clock make_clock(const std::optional<maths::Day>& on);
/// The moment at so many minutes after midnight of a day, with the offset that the wall has on that day.
maths::Instant on_the_wall(maths::Day day, int minutes);

} // namespace soakbook::app
