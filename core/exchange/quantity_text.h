// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as people write them, both ways: what is written is read back as the same value. Used by fields and CSV.
#pragma once

#include "core/maths/quantities.h"

#include <QLocale>
#include <QString>

#include <tl/expected.hpp>

namespace soakbook::exchange {

enum class MassUnit { gram, kilogram, pound, ounce };
enum class VolumeUnit { millilitre, litre, us_gallon };
enum class TemperatureUnit { celsius, fahrenheit };

/// Why a text is no quantity.
enum class Unreadable {
    empty,
    not_a_number,    ///< letters, two signs, more than one decimal mark
    unknown_unit,    ///< a number with a unit that this quantity does not have
    grouping,        ///< `1.234` or `1,234`: a thousand in one country, a small number in another; asked, not guessed
    negative,        ///< below zero where that cannot be
    too_large,       ///< beyond what the record can hold, or over 100 %
    too_fine,        ///< more decimals than the record keeps
    impossible_date, ///< 31 February, 25:00
    two_meanings,    ///< 03/04/26, a beginning that fits two months, a lone hour
};
template <class T> using Read = tl::expected<T, Unreadable>;

/// Reads `12.5`, `12,5`, `12.5 kg`, `27 lb 8 oz`; a bare number is in `bare`. Point and comma both are decimal marks in
/// every locale; a mark followed by exactly three digits after one to three leading digits ("1.234") is refused as
/// grouping unless a unit is named or the whole part is 0. Digits in groups ("1 234", "1.234,5") are always refused.
/// Refuses negatives, exponents ("1e3"), and more decimals than the unit's share of a milligram: 3 for g, 6 for kg and
/// lb, 5 for oz. Digits may be Arabic, Persian or full-width; spaces of any kind. NUL, direction characters and the
/// like are refused.
Read<maths::Mass> read_mass(const QString& text, MassUnit bare);
/// As read_mass, for volumes: ml (3 decimals), l (6), gal (7; the US gallon).
Read<maths::Volume> read_volume(const QString& text, VolumeUnit bare);
/// Reads `55`, `55.5`, `-3`, `131 F`, `55 °C`, 2 decimals at the most; negatives are allowed.
Read<maths::Temperature> read_temperature(const QString& text, TemperatureUnit bare);
/// Reads `40`, `40 %`, `40,5 %` as per cent; 0 to 100, 4 decimals at the most. `12.345` is read, since no thousand
/// fits.
Read<maths::Fraction> read_percent(const QString& text);
/// Reads an amount of money without a currency sign, 4 decimals at the most.
Read<maths::Money> read_money(const QString& text);
/// Reads a whole number, 0 and up.
Read<qint64> read_count(const QString& text);

/// The value with its unit ("12.5 kg"), with the locale's decimal mark (a point where that is neither point nor comma),
/// the digits 0 to 9 and no grouping, as many decimals as the value needs up to `decimals`; a negative `decimals`
/// writes as many as bring the same value back. A thin space that breaks no line (U+202F) stands before the unit.
QString write_mass(maths::Mass value, MassUnit unit, const QLocale& locale, int decimals = -1);
QString write_volume(maths::Volume value, VolumeUnit unit, const QLocale& locale, int decimals = -1);
QString write_temperature(maths::Temperature value, TemperatureUnit unit, const QLocale& locale, int decimals = -1);
QString write_percent(maths::Fraction value, const QLocale& locale, int decimals = -1);
QString write_count(qint64 value, const QLocale& locale);
/// The same without the unit, for a column whose header names it, and for a field that is edited. What would be refused
/// as grouping when it is read back bare gets a zero more: 1.234 kg is written "1.2340".
QString write_mass_number(maths::Mass value, MassUnit unit, const QLocale& locale, int decimals = -1);
QString write_temperature_number(maths::Temperature value, TemperatureUnit unit, const QLocale& locale,
                                 int decimals = -1);
/// All decimals that the amount has, no currency sign; as for a bare mass a zero more where needed.
QString write_money(maths::Money value, const QLocale& locale);

/// The unit's short sign: g, kg, lb, oz; ml, l, gal; °C, °F.
QString sign(MassUnit unit);
QString sign(VolumeUnit unit);
QString sign(TemperatureUnit unit);

} // namespace soakbook::exchange
