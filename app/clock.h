// SPDX-License-Identifier: GPL-3.0-or-later
// Which clock the program goes by.
#pragma once

#include "core/maths/quantities.h"

#include <functional>
#include <optional>

namespace soakbook::app {

using Clock = std::function<maths::Instant()>;

/// The wall clock; with a day, a clock that stands at ten past two that afternoon and goes on from there.
Clock make_clock(const std::optional<maths::Day>& on);

} // namespace soakbook::app
