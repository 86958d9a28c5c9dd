// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"

#include <algorithm>
#include <vector>

namespace soakbook::exchange {
namespace {

constexpr QChar arabic_decimal_mark(0x066B);
constexpr QChar arabic_grouping_mark(0x066C);

bool is_digit(QChar c) {
    return c >= u'0' && c <= u'9';
}

bool is_separator(QChar c) {
    return c == u'.' || c == u',' || c == u' ' || c == u'\'' || c == arabic_decimal_mark || c == arabic_grouping_mark;
}

bool can_be_decimal_mark(QChar c) {
    return c == u'.' || c == u',' || c == arabic_decimal_mark;
}

/// The runs of digits and what stands between them; nothing when anything else is in the text.
struct Runs {
    std::vector<QStringView> digits;
    std::vector<QChar> marks;
};

std::optional<Runs> runs_of(QStringView text) {
    Runs runs;
    qsizetype begin = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (is_digit(text[i])) {
            continue;
        }
        if (!is_separator(text[i])) {
            return std::nullopt;
        }
        runs.digits.push_back(text.mid(begin, i - begin));
        runs.marks.push_back(text[i]);
        begin = i + 1;
    }
    runs.digits.push_back(text.mid(begin));
    return runs;
}

/// Do the digits stand in groups of three, with at most one decimal mark of another kind at the end?
bool is_grouped(const Runs& runs) {
    if (runs.marks.empty() || runs.digits.front().isEmpty() || runs.digits.front().size() > 3) {
        return false;
    }
    const QChar group_mark = runs.marks.front();
    for (std::size_t i = 0; i < runs.marks.size(); ++i) {
        const bool last = i + 1 == runs.marks.size();
        const bool is_tail = last && i > 0 && runs.marks[i] != group_mark && can_be_decimal_mark(runs.marks[i]);
        if (is_tail) {
            return !runs.digits[i + 1].isEmpty();
        }
        if (runs.marks[i] != group_mark || runs.digits[i + 1].size() != 3) {
            return false;
        }
    }
    return true;
}

bool is_zero(QStringView digits) {
    return std::all_of(digits.begin(), digits.end(), [](QChar c) { return c == u'0'; });
}

/// "1.234": a thousand in one country, a small number in another.
bool may_be_a_thousand(QStringView whole, QStringView decimals) {
    return decimals.size() == 3 && whole.size() <= 3 && !is_zero(whole);
}

TypedNumber without_idle_zeros(bool minus, QStringView whole, QStringView decimals) {
    while (whole.startsWith(u'0')) {
        whole = whole.mid(1);
    }
    while (decimals.endsWith(u'0')) {
        decimals.chop(1);
    }
    return {minus, whole.toString(), decimals.toString()};
}

} // namespace

Read<TypedNumber> read_number(QStringView plain, ThreeDigits three_digits) {
    QStringView text = plain.trimmed();
    const bool minus = text.startsWith(u'-');
    if (minus || text.startsWith(u'+')) {
        text = text.mid(1).trimmed();
    }
    const auto runs = runs_of(text);
    if (!runs) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const std::vector<QStringView>& digits = runs->digits;
    if (digits.size() == 1) {
        if (digits.front().isEmpty()) {
            return tl::unexpected(Unreadable::not_a_number);
        }
        return without_idle_zeros(minus, digits.front(), {});
    }
    const bool one_decimal_mark = digits.size() == 2 && can_be_decimal_mark(runs->marks.front());
    if (!one_decimal_mark) {
        return tl::unexpected(is_grouped(*runs) ? Unreadable::grouping : Unreadable::not_a_number);
    }
    if (digits.back().isEmpty()) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const bool sure = three_digits == ThreeDigits::decimal || runs->marks.front() == arabic_decimal_mark;
    if (!sure && may_be_a_thousand(digits.front(), digits.back())) {
        return tl::unexpected(Unreadable::grouping);
    }
    return without_idle_zeros(minus, digits.front(), digits.back());
}

Read<Wide> scaled(const TypedNumber& number, int decimals) {
    if (number.decimals.size() > decimals) {
        return tl::unexpected(Unreadable::too_fine);
    }
    if (number.whole.size() + decimals > 30) {
        return tl::unexpected(Unreadable::too_large);
    }
    Wide value = 0;
    const QString digits = number.whole + number.decimals;
    for (const QChar c : digits) {
        value = value * 10 + (c.unicode() - u'0');
    }
    value *= power_of_ten(decimals - static_cast<int>(number.decimals.size()));
    return number.minus ? -value : value;
}

QString write_scaled(Wide value, int decimals, const QLocale& locale) {
    const bool minus = value < 0;
    Wide rest = minus ? -value : value;
    QString digits;
    while (rest > 0) {
        digits.prepend(QChar(static_cast<char16_t>(u'0' + static_cast<int>(rest % 10))));
        rest /= 10;
    }
    digits = digits.rightJustified(decimals + 1, u'0');
    QString whole = digits.chopped(decimals);
    QString fraction = digits.right(decimals);
    while (fraction.endsWith(u'0')) {
        fraction.chop(1);
    }
    if (minus) {
        whole.prepend(u'-');
    }
    if (fraction.isEmpty()) {
        return whole;
    }
    const QChar mark = locale.decimalPoint() == QLatin1String(",") ? u',' : u'.';
    return whole + mark + fraction;
}

QString unmistakable(const QString& number) {
    const auto read = read_number(number, ThreeDigits::ask);
    if (!read && read.error() == Unreadable::grouping) {
        return number + u'0';
    }
    return number;
}

} // namespace soakbook::exchange
