// SPDX-License-Identifier: GPL-3.0-or-later
// Months after a date, windows and how long records are kept.
#include "core/maths/keeping.h"
#include "tests/maths/answers.h"

namespace soakbook::maths {
namespace {

// Source: W3C XML Schema Part 2, appendix E: days beyond the month's end become its last day. Dates worked by that
// rule.
TEST(OutsideKeeping, months_clamp_to_the_last_day) {
    EXPECT_THAT(months_after(day(2024, 2, 29), 12), Is(day(2025, 2, 28)));
    EXPECT_THAT(months_after(day(2024, 8, 31), 6), Is(day(2025, 2, 28)));
    EXPECT_THAT(months_after(day(2023, 12, 31), 2), Is(day(2024, 2, 29)));
}

// Source: W3C XML Schema Part 2, appendix E.2, that addition of durations does not commute (from memory):
// (2000-03-30 + 1 day) + 1 month = 2000-04-30, but (2000-03-30 + 1 month) + 1 day = 2000-05-01.
TEST(OutsideKeeping, a_day_and_a_month_do_not_commute) {
    EXPECT_THAT(months_after(days_after(day(2000, 3, 30), 1), 1), Is(day(2000, 4, 30)));
    EXPECT_EQ(days_after(months_after(day(2000, 3, 30), 1).value(), 1), day(2000, 5, 1));
}

// Source: W3C XML Schema Part 2, appendix E.1, first example (from memory), its date part in steps:
// 2000-01-12 + 1 year 3 months 5 days = 2001-04-17.
TEST(OutsideKeeping, a_year_three_months_and_five_days) {
    EXPECT_EQ(days_after(months_after(day(2000, 1, 12), 15).value(), 5), day(2001, 4, 17));
}

// Source: the Gregorian leap year rule (papal bull Inter gravissimas, 1582; ISO 8601): 1900 and 2100 none, 2000 one.
TEST(OutsideKeeping, leap_years) {
    EXPECT_THAT(months_after(day(1999, 12, 31), 2), Is(day(2000, 2, 29)));
    EXPECT_THAT(months_after(day(2099, 12, 31), 2), Is(day(2100, 2, 28)));
    EXPECT_THAT(months_after(day(1899, 12, 31), 2), Is(day(1900, 2, 28)));
}

// Source: calendar; 42 and 56 days are common practice, no source.
TEST(OutsideKeeping, six_to_eight_weeks_from_the_end_of_august) {
    const auto window = pull_window(day(2026, 8, 31), 42, 56);
    ASSERT_TRUE(window);
    EXPECT_EQ(window->first, day(2026, 10, 12));
    EXPECT_EQ(window->last, day(2026, 10, 26));
}

// Source: Regulation (EU) 2019/6, article 108: records are kept at least five years.
TEST(OutsideKeeping, records_are_kept_at_least_five_years) {
    EXPECT_THAT(keep_record_until(day(2026, 8, 31)), Is(day(2031, 8, 31)));
}

} // namespace
} // namespace soakbook::maths
