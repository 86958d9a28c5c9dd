// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"
#include "core/exchange/plain_text.h"
#include "core/exchange/quantity_text.h"
#include "core/exchange/units.h"

#include <algorithm>
#include <limits>

namespace soakbook::exchange {
namespace {

/// A text cut where its number ends; `unit` is empty when none is named.
struct NumberAndUnit {
    QStringView number;
    QStringView unit;
};

NumberAndUnit split(QStringView text) {
    qsizetype end = 0;
    while (end < text.size() && QStringView(u"0123456789.,' +-\u066B\u066C").contains(text[end])) {
        ++end;
    }
    return {text.left(end).trimmed(), text.mid(end).trimmed()};
}

/// A word with a digit in it ("1e3", "12 kg 5") is no unit but a number gone wrong.
Unreadable not_a_unit(QStringView word) {
    const bool has_digit = std::any_of(word.begin(), word.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    return has_digit ? Unreadable::not_a_number : Unreadable::unknown_unit;
}

Read<std::int64_t> within_the_record(Wide count) {
    if (count > largest_count || count < -largest_count) {
        return tl::unexpected(Unreadable::too_large);
    }
    return static_cast<std::int64_t>(count);
}

Read<std::int64_t> count_of(const TypedNumber& number, const Ratio& per_unit) {
    if (number.minus) {
        return tl::unexpected(Unreadable::negative);
    }
    return scaled(number, per_unit.decimals).and_then([&](Wide value) -> Read<std::int64_t> {
        // Thirty digits times a ratio would pass the widest type, so the value is judged before it is multiplied.
        if (value / per_unit.divisor() > largest_count) {
            return tl::unexpected(Unreadable::too_large);
        }
        return within_the_record(divided(value * per_unit.numerator, per_unit.divisor()));
    });
}

/// What can be read at all, in one form, or why not.
Read<QString> readable(const QString& text) {
    const auto plain = plain_text(text);
    if (!plain) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    if (plain->isEmpty()) {
        return tl::unexpected(Unreadable::empty);
    }
    return *plain;
}

/// The number of a text and the unit it is in.
template <class Unit> struct InUnit {
    TypedNumber number;
    Unit unit;
};

template <class Unit> Read<InUnit<Unit>> read_in_unit(QStringView text, Unit bare) {
    const NumberAndUnit parts = split(text);
    if (parts.number.isEmpty()) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const auto unit = parts.unit.isEmpty() ? std::optional(bare) : unit_named(parts.unit, bare);
    if (!unit) {
        return tl::unexpected(not_a_unit(parts.unit));
    }
    return read_number(parts.number, parts.unit.isEmpty() ? ThreeDigits::ask : ThreeDigits::decimal)
        .map([&](const TypedNumber& number) {
            return InUnit<Unit>{number, *unit};
        });
}

template <class Quantity, class Unit> Read<Quantity> read_quantity(QStringView text, Unit bare) {
    return read_in_unit(text, bare)
        .and_then([](const InUnit<Unit>& read) { return count_of(read.number, ratio(read.unit)); })
        .map([](std::int64_t count) { return Quantity{count}; });
}

/// "27 lb 8 oz": whole pounds and less than sixteen ounces. Nothing if the text is not of this form at all.
std::optional<Read<maths::Mass>> read_pounds_and_ounces(QStringView text) {
    const NumberAndUnit pounds = split(text);
    const auto is_of_word = [](QChar c) { return c.isLetter() || c == u'.'; };
    const auto word_end = std::find_if_not(pounds.unit.begin(), pounds.unit.end(), is_of_word) - pounds.unit.begin();
    const NumberAndUnit ounces = split(pounds.unit.mid(word_end).trimmed());
    if (pounds.number.isEmpty() || ounces.number.isEmpty() ||
        unit_named(pounds.unit.left(word_end), MassUnit::pound) != MassUnit::pound ||
        unit_named(ounces.unit, MassUnit::ounce) != MassUnit::ounce) {
        return std::nullopt;
    }
    constexpr Ratio per_ounce = ratio(MassUnit::ounce);
    constexpr Wide sixteen = 16 * per_ounce.divisor() / per_ounce.denominator;
    const auto whole = read_number(pounds.number, ThreeDigits::decimal);
    const auto part = read_number(ounces.number, ThreeDigits::decimal);
    if (!whole || !part) {
        return tl::unexpected(whole ? part.error() : whole.error());
    }
    if (whole->minus || part->minus) {
        return tl::unexpected(Unreadable::negative);
    }
    const auto part_scaled = scaled(*part, per_ounce.decimals);
    if (!whole->decimals.isEmpty() || (part_scaled && *part_scaled >= sixteen)) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const auto whole_scaled = scaled(*whole, 0);
    if (!part_scaled || !whole_scaled) {
        return tl::unexpected(part_scaled ? whole_scaled.error() : part_scaled.error());
    }
    if (*whole_scaled > largest_count) {
        return tl::unexpected(Unreadable::too_large);
    }
    const Wide all_ounces = *whole_scaled * sixteen + *part_scaled;
    return within_the_record(divided(all_ounces * per_ounce.numerator, per_ounce.divisor()))
        .map([](std::int64_t count) { return maths::Mass{count}; });
}

} // namespace

Read<maths::Mass> read_mass(const QString& text, MassUnit bare) {
    return readable(text).and_then([&](const QString& plain) -> Read<maths::Mass> {
        if (const auto mixed = read_pounds_and_ounces(plain)) {
            return *mixed;
        }
        return read_quantity<maths::Mass>(plain, bare);
    });
}

Read<maths::Volume> read_volume(const QString& text, VolumeUnit bare) {
    return readable(text).and_then([&](const QString& plain) { return read_quantity<maths::Volume>(plain, bare); });
}

Read<maths::Temperature> read_temperature(const QString& text, TemperatureUnit bare) {
    return readable(text).and_then([&](const QString& plain) -> Read<maths::Temperature> {
        const auto read = read_in_unit(plain, bare);
        if (!read) {
            return tl::unexpected(read.error());
        }
        const auto hundredths = scaled(read->number, temperature_decimals);
        if (!hundredths) {
            return tl::unexpected(hundredths.error());
        }
        const auto kept = within_the_record(*hundredths);
        const bool celsius = read->unit == TemperatureUnit::celsius;
        // (F - 32) * 5/9, the definition of the Fahrenheit scale; all in hundredths.
        return kept
            .map([&](std::int64_t n) {
                return celsius ? n : static_cast<std::int64_t>(divided((Wide{n} - 3200) * 5, 9));
            })
            .map([](std::int64_t n) { return maths::Temperature{n}; });
    });
}

Read<maths::Fraction> read_percent(const QString& text) {
    return readable(text).and_then([](const QString& plain) -> Read<maths::Fraction> {
        const NumberAndUnit parts = split(plain);
        if (parts.number.isEmpty()) {
            return tl::unexpected(Unreadable::not_a_number);
        }
        if (!parts.unit.isEmpty() && parts.unit != QLatin1String("%")) {
            return tl::unexpected(not_a_unit(parts.unit));
        }
        // A thousand per cent cannot be, so three digits after the mark leave one reading.
        const auto count = read_number(parts.number, ThreeDigits::decimal).and_then([](const TypedNumber& number) {
            return count_of(number, percent_ratio);
        });
        if (count && *count > 1'000'000) {
            return tl::unexpected(Unreadable::too_large);
        }
        return count.map([](std::int64_t n) { return maths::Fraction{n}; });
    });
}

namespace {

/// A number without any unit.
Read<std::int64_t> read_plain_count(const QString& text, const Ratio& per_unit) {
    return readable(text).and_then([&](const QString& plain) -> Read<std::int64_t> {
        const NumberAndUnit parts = split(plain);
        if (parts.number.isEmpty()) {
            return tl::unexpected(Unreadable::not_a_number);
        }
        if (!parts.unit.isEmpty()) {
            return tl::unexpected(not_a_unit(parts.unit));
        }
        return read_number(parts.number, ThreeDigits::ask).and_then([&](const TypedNumber& number) {
            return count_of(number, per_unit);
        });
    });
}

} // namespace

Read<maths::Money> read_money(const QString& text) {
    return read_plain_count(text, money_ratio).map([](std::int64_t count) { return maths::Money{count}; });
}

Read<qint64> read_count(const QString& text) {
    return read_plain_count(text, whole_ratio).and_then([](std::int64_t count) -> Read<qint64> {
        // Requests hold counts as int: a larger one would come round to a small number.
        if (count > std::numeric_limits<int>::max()) {
            return tl::unexpected(Unreadable::too_large);
        }
        return static_cast<qint64>(count);
    });
}

} // namespace soakbook::exchange
