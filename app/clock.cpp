// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/clock.h"

#include "ui/parts/habits.h"

#include <QElapsedTimer>

#include <memory>

namespace soakbook::app {

Clock make_clock(const std::optional<maths::Day>& on) {
    if (!on)
        return ui::clock_now;
    const auto since = std::make_shared<QElapsedTimer>();
    since->start();
    return [start = ui::wall_instant(*on, 14 * 60 + 10), since] {
        maths::Instant now = start;
        now.utc_ms += since->elapsed();
        return now;
    };
}

} // namespace soakbook::app
