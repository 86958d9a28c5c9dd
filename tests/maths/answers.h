// SPDX-License-Identifier: GPL-3.0-or-later
// How the tests of this room read an answer: as a value, or as the reason there is none.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ostream>

namespace soakbook::maths {

template <class Tag> void PrintTo(const Quantity<Tag>& quantity, std::ostream* out) {
    *out << quantity.count;
}
inline void PrintTo(Unanswerable why, std::ostream* out) {
    *out << "refused, reason " << static_cast<int>(why);
}
inline void PrintTo(const Day& day, std::ostream* out) {
    const std::chrono::year_month_day date{day};
    *out << static_cast<int>(date.year()) << '-' << static_cast<unsigned>(date.month()) << '-'
         << static_cast<unsigned>(date.day());
}

/// The answer refuses, for that reason.
MATCHER_P(Refuses, reason, "refuses for the reason " + testing::PrintToString(reason)) {
    if (arg.has_value()) {
        *result_listener << "which answers";
        return false;
    }
    *result_listener << "which refuses for " << testing::PrintToString(arg.error());
    return arg.error() == reason;
}

/// The answer is that value.
MATCHER_P(Is, value, "answers " + testing::PrintToString(value)) {
    if (!arg.has_value()) {
        *result_listener << "which refuses for " << testing::PrintToString(arg.error());
        return false;
    }
    *result_listener << "which answers " << testing::PrintToString(*arg);
    return *arg == value;
}

/// The answer is a number within `off` of that one.
MATCHER_P2(IsNear, value, off, "answers about " + testing::PrintToString(value)) {
    if (!arg.has_value()) {
        *result_listener << "which refuses for " << testing::PrintToString(arg.error());
        return false;
    }
    *result_listener << "which answers " << testing::PrintToString(*arg);
    return std::isfinite(*arg) && std::abs(*arg - value) <= off;
}

} // namespace soakbook::maths
