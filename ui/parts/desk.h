// SPDX-License-Identifier: GPL-3.0-or-later
// What every room is handed: the open workbook, the clock and the name of whoever makes entries, and how this user likes
// quantities written. The only place where the clock is read.
#pragma once

#include "core/book/doing.h"
#include "core/exchange/quantity_text.h"

#include <QDate>
#include <QLocale>
#include <QObject>

#include <functional>

namespace soakbook::book {
class Workbook;
}

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
};

class Desk : public QObject {
    Q_OBJECT

public:
    using Clock = std::function<maths::Instant()>;
    Desk(book::Workbook& workbook, Clock clock, QObject* parent = nullptr);
    ~Desk() override;

    book::Workbook& workbook() const { return m_workbook; }
    maths::Instant now() const { return m_clock(); }
    maths::Day today() const { return m_clock().local_day(); }
    /// The circumstances for a piece of work done now; `why` is the reason of a correction.
    book::Doing doing(const QString& why = {}) const;

    const QString& who() const { return m_who; }
    void set_who(const QString& who);
    const Preferences& preferences() const { return m_preferences; }
    /// Stores them for this user and tells every room.
    void set_preferences(const Preferences& preferences);
    QLocale locale() const;

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
    /// After each piece of work, undo included, once, in the window's thread.
    void work_done();
    void preferences_changed();
    void who_changed();
    void day_turned();

private:
    book::Workbook& m_workbook;
    Clock m_clock;
    QString m_who;
    Preferences m_preferences;
    std::function<void()> m_unsubscribe;
};

QDate to_qdate(maths::Day day);
maths::Day from_qdate(QDate date);

} // namespace soakbook::ui
