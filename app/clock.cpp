// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/clock.h"

#include <QDateTime>
#include <QElapsedTimer>

#include <memory>

namespace soakbook::app {

namespace {
maths::Instant instant_of(const QDateTime& moment) { return {moment.toMSecsSinceEpoch(), moment.offsetFromUtc() / 60}; }
} // namespace

maths::Instant on_the_wall(maths::Day day, int minutes) {
    const std::chrono::year_month_day ymd{day};
    const QDate date(static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
                     static_cast<int>(static_cast<unsigned>(ymd.day())));
    // An hour that a clock change leaves out is taken as the one after it.
    QDateTime moment(date, QTime(minutes / 60, minutes % 60));
    if (!moment.isValid())
        moment = QDateTime(date, QTime(minutes / 60, minutes % 60)).addSecs(3600);
    return instant_of(moment);
}

Clock make_clock(const std::optional<maths::Day>& on) {
    if (!on)
        return [] { return instant_of(QDateTime::currentDateTime()); };
    const auto since = std::make_shared<QElapsedTimer>();
    since->start();
    return [start = on_the_wall(*on, 14 * 60 + 10), since] {
        maths::Instant now = start;
        now.utc_ms += since->elapsed();
        return now;
    };
}

} // namespace soakbook::app
