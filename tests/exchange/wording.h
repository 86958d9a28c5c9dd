// SPDX-License-Identifier: GPL-3.0-or-later
// How a test prints what it read, and the locales it walks through.
#pragma once

#include "core/exchange/quantity_text.h"

#include <gtest/gtest.h>
#include <ostream>
#include <vector>

inline void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}

namespace soakbook::exchange {

inline void PrintTo(Unreadable why, std::ostream* out) {
    static constexpr const char* names[] = {"empty",     "not_a_number", "unknown_unit",    "grouping",    "negative",
                                            "too_large", "too_fine",     "impossible_date", "two_meanings"};
    *out << names[static_cast<std::size_t>(why)];
}

/// Point and comma, day and month and year first, right to left, digits of their own, apostrophe and space for
/// thousands.
inline std::vector<QLocale> eight_locales() {
    std::vector<QLocale> locales;
    for (const char* name : {"en_GB", "en_US", "de_DE", "fr_FR", "de_CH", "sv_SE", "ar_EG", "ja_JP"}) {
        locales.emplace_back(QLatin1String(name));
    }
    return locales;
}

inline QString text(const char16_t* utf16) {
    return QStringView(utf16).toString();
}

/// Succeeds if the text was read as this very value; says what else happened.
template <class T> testing::AssertionResult reads_as(const Read<T>& read, T wanted) {
    if (!read) {
        testing::AssertionResult result = testing::AssertionFailure() << "refused: ";
        return result << testing::PrintToString(read.error());
    }
    if (*read == wanted) {
        return testing::AssertionSuccess();
    }
    return testing::AssertionFailure() << "read as something else";
}

template <class T> testing::AssertionResult is_refused(const Read<T>& read, Unreadable why) {
    if (read) {
        return testing::AssertionFailure() << "was read";
    }
    if (read.error() == why) {
        return testing::AssertionSuccess();
    }
    return testing::AssertionFailure() << "refused otherwise: " << testing::PrintToString(read.error());
}

} // namespace soakbook::exchange
