// SPDX-License-Identifier: GPL-3.0-or-later
// How this user reads and writes: units, language, text size, the wall clock. All that a field needs to know of the desk.
#pragma once

#include "core/exchange/quantity_text.h"
#include "core/maths/quantities.h"

#include <QDate>
#include <QLocale>
#include <QObject>

#include <functional>

namespace soakbook::ui {

/// How this user likes to read and write. Kept in the user's own settings, not in the workbook.
struct Preferences {
    exchange::MassUnit large_mass = exchange::MassUnit::kilogram; ///< cans, pails, batches
    exchange::MassUnit small_mass = exchange::MassUnit::gram;     ///< strips, acid per strip
    exchange::TemperatureUnit temperature = exchange::TemperatureUnit::celsius;
    QString language;  ///< "en", "de"; empty follows the system
    int text_percent = 100;
    QString look;      ///< "light", "dark"; empty follows the system
    QString paper;     ///< "a4", "letter"; empty follows the locale

    bool operator==(const Preferences&) const = default;
};

/// What this user's settings hold; what was never said is as above.
Preferences stored_preferences();
void store_preferences(const Preferences& preferences);

/// Preferences, locale and clock, and the user's way of writing each quantity.
class Habits : public QObject {
    Q_OBJECT

public:
    using Clock = std::function<maths::Instant()>;
    explicit Habits(Clock clock, QObject* parent = nullptr);

    maths::Instant now() const { return m_clock(); }
    maths::Day today() const { return m_clock().local_day(); }

    const Preferences& preferences() const { return m_preferences; }
    /// Stores them for this user and tells every room.
    void set_preferences(const Preferences& preferences);
    QLocale locale() const;
    /// Why no entry can be made in what is open, in a sentence; empty where entries can be made.
    virtual QString no_entries_why() const { return {}; }

    // The user's way of writing, one word a quantity.
    QString large(maths::Mass mass, int decimals = -1) const;       ///< "12.5 kg"
    QString small(maths::Mass mass, int decimals = -1) const;       ///< "34 g"
    QString temperature(maths::Temperature t, int decimals = 1) const;
    QString percent(maths::Fraction f, int decimals = 1) const;
    QString day(maths::Day d) const;                                ///< "3 Oct 2026"
    QString day_short(maths::Day d) const;                          ///< "3 Oct"
    QString moment(const maths::Instant& at) const;                 ///< "3 Oct 14:30"
    QString count(qint64 n) const;

Q_SIGNALS:
    void preferences_changed();
    void day_turned();

private:
    void wait_for_midnight();

    Clock m_clock;
    Preferences m_preferences;
    maths::Day m_day_shown{};
};

QDate to_qdate(maths::Day day);
maths::Day from_qdate(QDate date);
/// The moment at which the wall clock here shows that day and time. `minutes` are since midnight.
maths::Instant wall_instant(maths::Day day, int minutes);
/// Minutes since midnight that the wall clock showed at that moment.
int wall_minutes(const maths::Instant& at);
/// The clock on the wall.
maths::Instant clock_now();

} // namespace soakbook::ui
