// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/habits.h"

#include "core/exchange/date_text.h"

#include <QDateTime>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

Habits::Habits(Clock clock, QObject* parent)
    : QObject(parent), m_clock(std::move(clock)), m_preferences(stored_preferences()), m_day_shown(today()) {
    wait_for_midnight();
}

void Habits::set_preferences(const Preferences& preferences) {
    if (preferences == m_preferences) {
        return;
    }
    m_preferences = preferences;
    store_preferences(preferences);
    Q_EMIT preferences_changed();
}

QLocale Habits::locale() const {
    return m_preferences.language.isEmpty() ? QLocale::system() : QLocale(m_preferences.language);
}

QString Habits::large(maths::Mass mass, int decimals) const {
    return exchange::write_mass(mass, m_preferences.large_mass, locale(), decimals);
}

QString Habits::small(maths::Mass mass, int decimals) const {
    return exchange::write_mass(mass, m_preferences.small_mass, locale(), decimals);
}

QString Habits::temperature(maths::Temperature t, int decimals) const {
    return exchange::write_temperature(t, m_preferences.temperature, locale(), decimals);
}

QString Habits::percent(maths::Fraction f, int decimals) const {
    return exchange::write_percent(f, locale(), decimals);
}

QString Habits::day(maths::Day d) const {
    return exchange::write_day(d, locale());
}

QString Habits::day_short(maths::Day d) const {
    return exchange::write_day_short(d, locale());
}

QString Habits::moment(const maths::Instant& at) const {
    const QString text = day_short(at.local_day()) + QLatin1Char(' ') + exchange::write_time(at);
    return text;
}

QString Habits::count(qint64 n) const {
    return exchange::write_count(n, locale());
}

void Habits::wait_for_midnight() {
    // Short waits rather than one long one: a computer that slept through midnight is right within the quarter hour.
    constexpr qint64 longest_wait = 15 * 60 * 1000;
    const maths::Instant at = now();
    const qint64 of_day = (at.utc_ms + qint64{at.offset_minutes} * 60000) % 86400000;
    const qint64 left = std::clamp<qint64>(86400000 - of_day + 200, 200, longest_wait);
    QTimer::singleShot(static_cast<int>(left), this, [this] {
        if (today() != m_day_shown) {
            m_day_shown = today();
            Q_EMIT day_turned();
        }
        wait_for_midnight();
    });
}

QDate to_qdate(maths::Day day) {
    return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
}

maths::Day from_qdate(QDate date) {
    return maths::Day{std::chrono::days{QDate(1970, 1, 1).daysTo(date)}};
}

maths::Instant wall_instant(maths::Day day, int minutes) {
    const QDateTime said(to_qdate(day), QTime::fromMSecsSinceStartOfDay(minutes * 60000));
    // An hour that no clock shows, on the day it is put forward, has no offset: the moment it stands for has one.
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(said.toMSecsSinceEpoch());
    return {at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
}

int wall_minutes(const maths::Instant& at) {
    const qint64 of_day = (at.utc_ms + qint64{at.offset_minutes} * 60000) % 86400000;
    return static_cast<int>((of_day < 0 ? of_day + 86400000 : of_day) / 60000);
}

maths::Instant clock_now() {
    const QDateTime now = QDateTime::currentDateTime();
    return {now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60};
}

} // namespace soakbook::ui
