// SPDX-License-Identifier: GPL-3.0-or-later
// Which day a thing may be used from, until, or must be taken out. Calendar days only.
// Source of the months: W3C XML Schema Part 2, appendix E (adding durations to dates): the day of the month is kept, or
// the month's last day where it has no such day. Always reckoned from the original date, never from an earlier result.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>

namespace soakbook::maths {

/// `from` plus n calendar months. Refuses fewer than 0 or more than 1200 months, and days outside the years 1 to 9999.
Answer<Day> months_after(Day from, std::int64_t months);
/// The last day of use: day made plus the months it keeps. That day itself is still good. Refuses as above.
Answer<Day> use_by(Day made, std::int64_t months);
/// The first day a bag is ready: day bagged plus the days of rest. Refuses negative days and more than 36 500.
Answer<Day> rest_until(Day bagged, std::int64_t days);

/// From the first day strips may come out to the last.
struct Window {
    Day first;
    Day last;

    constexpr bool operator==(const Window&) const = default;
    constexpr bool contains(Day day) const { return first <= day && day <= last; }
};
/// Placed plus the least and the most days. Refuses negative days, more than 36 500, and a least above the most.
Answer<Window> pull_window(Day placed, std::int64_t least_days, std::int64_t most_days);

/// Days from today to a limit: 0 on the day itself, below zero once it is past.
constexpr std::int64_t days_left(Day today, Day limit) {
    return days_between(today, limit);
}

/// The day until which a record of treatment is kept: at least five years, Regulation (EU) 2019/6, article 108.
Answer<Day> keep_record_until(Day of_treatment, std::int64_t years = 5);

} // namespace soakbook::maths
