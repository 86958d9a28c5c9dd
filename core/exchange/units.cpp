// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/units.h"

#include <initializer_list>

namespace soakbook::exchange {
namespace {

bool is_one_of(QStringView word, std::initializer_list<QStringView> names) {
    for (const QStringView name : names) {
        if (word.compare(name, Qt::CaseInsensitive) == 0) {
            return true;
        }
    }
    return false;
}

} // namespace

std::optional<MassUnit> unit_named(QStringView word, MassUnit /*any*/) {
    if (is_one_of(word, {u"g", u"gram", u"grams"})) {
        return MassUnit::gram;
    }
    if (is_one_of(word, {u"kg", u"kilo", u"kilos"})) {
        return MassUnit::kilogram;
    }
    if (is_one_of(word, {u"lb", u"lbs", u"lb."})) {
        return MassUnit::pound;
    }
    if (is_one_of(word, {u"oz", u"oz."})) {
        return MassUnit::ounce;
    }
    return std::nullopt;
}

std::optional<VolumeUnit> unit_named(QStringView word, VolumeUnit /*any*/) {
    if (is_one_of(word, {u"ml"})) {
        return VolumeUnit::millilitre;
    }
    if (is_one_of(word, {u"l", u"litre", u"litres", u"liter", u"liters"})) {
        return VolumeUnit::litre;
    }
    if (is_one_of(word, {u"gal", u"gal."})) {
        return VolumeUnit::us_gallon;
    }
    return std::nullopt;
}

std::optional<TemperatureUnit> unit_named(QStringView word, TemperatureUnit bare) {
    if (is_one_of(word, {u"c", u"\u00B0c", u"\u00B0 c", u"\u2103"})) {
        return TemperatureUnit::celsius;
    }
    if (is_one_of(word, {u"f", u"\u00B0f", u"\u00B0 f", u"\u2109"})) {
        return TemperatureUnit::fahrenheit;
    }
    if (is_one_of(word, {u"\u00B0"})) {
        return bare;
    }
    return std::nullopt;
}

QString sign(MassUnit unit) {
    switch (unit) {
    case MassUnit::gram:
        return QStringLiteral("g");
    case MassUnit::kilogram:
        return QStringLiteral("kg");
    case MassUnit::pound:
        return QStringLiteral("lb");
    case MassUnit::ounce:
        return QStringLiteral("oz");
    }
    return {};
}

QString sign(VolumeUnit unit) {
    switch (unit) {
    case VolumeUnit::millilitre:
        return QStringLiteral("ml");
    case VolumeUnit::litre:
        return QStringLiteral("l");
    case VolumeUnit::us_gallon:
        return QStringLiteral("gal");
    }
    return {};
}

QString sign(TemperatureUnit unit) {
    switch (unit) {
    case TemperatureUnit::celsius:
        return QStringLiteral("\u00B0C");
    case TemperatureUnit::fahrenheit:
        return QStringLiteral("\u00B0F");
    }
    return {};
}

} // namespace soakbook::exchange
