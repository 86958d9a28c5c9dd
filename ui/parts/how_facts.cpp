// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of an explanation in the user's own units.
#include "ui/parts/how_table.h"

#include "core/exchange/quantity_text.h"
#include "ui/parts/habits.h"
#include "ui/parts/refusal_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

using exchange::MassUnit;
using exchange::TemperatureUnit;

QChar decimal_mark(const Habits& habits) {
    return habits.locale().decimalPoint() == QLatin1String(",") ? QLatin1Char(',') : QLatin1Char('.');
}

QString how_mass(maths::Mass mass, const Habits& habits) {
    constexpr std::int64_t large_from = 1'000'000;
    if (mass.count >= large_from || mass.count <= -large_from) {
        return habits.large(mass, 3);
    }
    // A hundredth of an ounce is a quarter of a gram: too coarse for the spread of single strips.
    return habits.small(mass, habits.preferences().small_mass == MassUnit::ounce ? 4 : 3);
}

/// One decimal, that also stands where it is a rounded nought ("16.0 %"); two near the ends, where one would say too much.
QString how_percent(maths::Fraction part, const Habits& habits) {
    constexpr std::int64_t one = 10'000;
    constexpr std::int64_t whole = 1'000'000;
    const std::int64_t size = part.count < 0 ? -part.count : part.count;
    const bool near_an_end = size < one || (size > whole - one && size < whole);
    constexpr std::int64_t almost_whole = 999'950;
    if (size >= almost_whole && size < whole) {
        //: A share that is all but 100 %; %1 is a share
        return QCoreApplication::translate("How", "over %1").arg(habits.percent(maths::Fraction{999'900}, 2));
    }
    QString text = habits.percent(part, near_an_end ? 2 : 1);
    if (part.count % one != 0 && !text.contains(decimal_mark(habits))) {
        qsizetype end = 0;
        while (end < text.size() && (text[end].isDigit() || text[end] == QLatin1Char('-'))) {
            ++end;
        }
        text.insert(end, decimal_mark(habits) + QLatin1Char('0'));
    }
    return text;
}

QString how_volume(maths::Volume volume, const Habits& habits) {
    const bool in_gallons = habits.preferences().large_mass == MassUnit::pound;
    return exchange::write_volume(volume, in_gallons ? exchange::VolumeUnit::us_gallon : exchange::VolumeUnit::litre,
                                  habits.locale(), 2);
}

QString how_time(qint64 minutes, const Habits& habits) {
    const QString hours = habits.count(minutes / 60);
    if (minutes % 60 == 0) {
        //: A time span; %1 hours
        return QCoreApplication::translate("How", "%1 h").arg(hours);
    }
    //: A time span; %1 hours, %2 minutes
    return QCoreApplication::translate("How", "%1 h %2 min").arg(hours, habits.count(minutes % 60));
}

QString how_number(QString text, const Habits& habits) {
    while (text.contains(QLatin1Char('.')) && (text.endsWith(QLatin1Char('0')) || text.endsWith(QLatin1Char('.')))) {
        const bool was_mark = text.endsWith(QLatin1Char('.'));
        text.chop(1);
        if (was_mark) {
            break;
        }
    }
    return text.replace(QLatin1Char('.'), decimal_mark(habits));
}

/// A number below zero gets the sign that is as wide as a plus.
QString with_minus(QString text) {
    if (text.startsWith(QLatin1Char('-'))) {
        text[0] = QChar(u'\u2212');
    }
    return text;
}

} // namespace

QString how_fact_words(const QString& fact, const Habits& habits) {
    if (fact.size() < 3 || fact[1] != QLatin1Char(':')) {
        return fact;
    }
    const QString rest = fact.mid(2);
    bool is_whole = false;
    const qint64 count = rest.toLongLong(&is_whole);
    switch (is_whole ? fact[0].toLatin1() : '\0') {
    case 'm':
        return with_minus(how_mass(maths::Mass{count}, habits));
    case 'f':
        return with_minus(how_percent(maths::Fraction{count}, habits));
    case 'v':
        return how_volume(maths::Volume{count}, habits);
    case 'c':
        return with_minus(exchange::write_money(maths::Money{count}, habits.locale()));
    case 'h':
        return how_time(count, habits);
    default:
        break;
    }
    bool is_number = false;
    rest.toDouble(&is_number);
    return fact[0] == QLatin1Char('x') && is_number ? with_minus(how_number(rest, habits))
                                                    : with_minus(fact_words(fact, habits));
}

QString how_difference_words(const QString& fact, const Habits& habits) {
    bool is_number = false;
    const qint64 hundredths = fact.mid(2).toLongLong(&is_number);
    if (!fact.startsWith(QLatin1String("t:")) || !is_number) {
        return how_fact_words(fact, habits);
    }
    const TemperatureUnit unit = habits.preferences().temperature;
    // Degrees of Celsius and Fahrenheit differ in size (9 to 5) and in their zero; a difference knows no zero.
    const qint64 in_unit = unit == TemperatureUnit::fahrenheit ? hundredths * 9 / 5 : hundredths;
    return with_minus(exchange::write_temperature(maths::Temperature{in_unit}, TemperatureUnit::celsius, habits.locale(), 1)
                          .replace(exchange::sign(TemperatureUnit::celsius), exchange::sign(unit)));
}

} // namespace soakbook::ui
