// SPDX-License-Identifier: GPL-3.0-or-later
// Decimal numbers as text, exactly: no floating point between what is typed and what is recorded.
#pragma once

#include "core/exchange/quantity_text.h"

#include <QStringView>

#include <cstdint>

namespace soakbook::exchange {

/// Wide enough for any recorded count times any unit's ratio.
__extension__ using Wide = __int128;

/// The largest count that is recorded in any quantity; every whole number up to it is exact in a double too.
inline constexpr std::int64_t largest_count = 9'000'000'000'000'000;

/// A number as it was typed, in digits, without zeros that say nothing.
struct TypedNumber {
    bool minus = false;
    QString whole;    ///< no leading zeros; empty for 0
    QString decimals; ///< no trailing zeros
};

/// May a mark before exactly three digits be taken for a decimal mark?
enum class ThreeDigits {
    ask,    ///< no: it may be a thousand, so it is refused as grouping
    decimal ///< yes: a named unit or the range of the quantity leaves one reading
};

/// Reads what plain_text gave back. Point, comma and the Arabic decimal mark are decimal marks. Digits in groups of
/// three
/// ("1 234", "1'234", "1.234,5", "1,234,567") are always refused as grouping.
Read<TypedNumber> read_number(QStringView plain, ThreeDigits three_digits);

/// The number times ten to the power of `decimals`; too_fine if that is no whole number, too_large beyond 30 digits.
Read<Wide> scaled(const TypedNumber& number, int decimals);

constexpr Wide power_of_ten(int exponent) {
    Wide power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

/// a / b to the nearest whole number, halves away from zero. `b` must be positive.
constexpr Wide divided(Wide a, Wide b) {
    return a < 0 ? -((-a + b / 2) / b) : (a + b / 2) / b;
}

/// `value` divided by ten to the power of `decimals`, without trailing zeros and without grouping, in the digits 0 to 9
/// with '-' for minus and the locale's mark where that is a comma, otherwise a point.
QString write_scaled(Wide value, int decimals, const QLocale& locale);

/// Appends a zero to what would be refused as grouping when it is read without a unit: "1.234" becomes "1.2340".
QString unmistakable(const QString& number);

} // namespace soakbook::exchange
