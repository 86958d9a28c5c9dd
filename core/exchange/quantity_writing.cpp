// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"
#include "core/exchange/quantity_text.h"
#include "core/exchange/units.h"

#include <algorithm>

namespace soakbook::exchange {
namespace {

/// Never broken over two lines, thin, and read back as any other space.
constexpr QChar thin_space(0x202F);

/// `count` smallest units as a number of units, scaled to `decimals`.
Wide in_units(std::int64_t count, const Ratio& per_unit, int decimals) {
    return divided(Wide{count} * per_unit.denominator * power_of_ten(decimals), per_unit.numerator);
}

/// The smallest units that are read from such a number.
Wide read_back(Wide value, const Ratio& per_unit, int decimals) {
    return divided(value * per_unit.numerator, per_unit.denominator * power_of_ten(decimals));
}

QString number(std::int64_t count, const Ratio& per_unit, const QLocale& locale, int decimals) {
    int kept = std::min(decimals, per_unit.decimals);
    if (decimals < 0) {
        kept = 0;
        while (kept < per_unit.decimals && read_back(in_units(count, per_unit, kept), per_unit, kept) != count) {
            ++kept;
        }
    }
    return write_scaled(in_units(count, per_unit, kept), kept, locale);
}

QString temperature_number(maths::Temperature value, TemperatureUnit unit, const QLocale& locale, int decimals) {
    const bool celsius = unit == TemperatureUnit::celsius;
    const auto in_scale = [&](int kept) {
        const Wide below = power_of_ten(temperature_decimals - kept);
        return celsius ? divided(value.count, below) : divided(Wide{value.count} * 9 + 3200 * 5, 5 * below);
    };
    const auto celsius_of = [&](int kept) {
        const Wide hundredths = in_scale(kept) * power_of_ten(temperature_decimals - kept);
        return celsius ? hundredths : divided((hundredths - 3200) * 5, 9);
    };
    int kept = std::min(decimals, temperature_decimals);
    if (decimals < 0) {
        kept = 0;
        while (kept < temperature_decimals && celsius_of(kept) != value.count) {
            ++kept;
        }
    }
    return write_scaled(in_scale(kept), kept, locale);
}

QString with_unit(const QString& number, const QString& unit) {
    return number + thin_space + unit;
}

} // namespace

QString write_mass(maths::Mass value, MassUnit unit, const QLocale& locale, int decimals) {
    return with_unit(number(value.count, ratio(unit), locale, decimals), sign(unit));
}

QString write_volume(maths::Volume value, VolumeUnit unit, const QLocale& locale, int decimals) {
    return with_unit(number(value.count, ratio(unit), locale, decimals), sign(unit));
}

QString write_temperature(maths::Temperature value, TemperatureUnit unit, const QLocale& locale, int decimals) {
    return with_unit(temperature_number(value, unit, locale, decimals), sign(unit));
}

QString write_percent(maths::Fraction value, const QLocale& locale, int decimals) {
    return with_unit(number(value.count, percent_ratio, locale, decimals), QStringLiteral("%"));
}

QString write_money(maths::Money value, const QLocale& locale) {
    return unmistakable(number(value.count, money_ratio, locale, -1));
}

QString write_count(qint64 value, const QLocale& locale) {
    return write_scaled(value, 0, locale);
}

QString write_mass_number(maths::Mass value, MassUnit unit, const QLocale& locale, int decimals) {
    return unmistakable(number(value.count, ratio(unit), locale, decimals));
}

QString write_temperature_number(maths::Temperature value, TemperatureUnit unit, const QLocale& locale, int decimals) {
    return temperature_number(value, unit, locale, decimals);
}

} // namespace soakbook::exchange
