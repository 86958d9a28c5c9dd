// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/keeping.h"
#include "tests/maths/answers.h"

#include <limits>

namespace soakbook::maths {
namespace {

// Common practice, no source: twelve months from 29 February end on 28 February.
TEST(Keeping, a_leap_day_keeps_until_the_last_of_february) {
    EXPECT_THAT(use_by(day(2024, 2, 29), 12), Is(day(2025, 2, 28)));
    EXPECT_THAT(use_by(day(2024, 2, 29), 48), Is(day(2028, 2, 29)));
}

TEST(Keeping, always_from_the_original_date) {
    const Day made = day(2026, 1, 31);
    EXPECT_THAT(months_after(made, 1), Is(day(2026, 2, 28)));
    EXPECT_THAT(months_after(made, 2), Is(day(2026, 3, 31)));
    EXPECT_THAT(months_after(made, 0), Is(made));
    EXPECT_THAT(months_after(day(2026, 11, 30), 3), Is(day(2027, 2, 28)));
}

TEST(Keeping, rest_counts_days_over_month_and_year) {
    EXPECT_THAT(rest_until(day(2026, 12, 28), 7), Is(day(2027, 1, 4)));
    EXPECT_THAT(rest_until(day(2026, 12, 28), 0), Is(day(2026, 12, 28)));
    EXPECT_THAT(rest_until(day(2026, 12, 28), -1), Refuses(Unanswerable::out_of_range));
}

TEST(Keeping, the_window_holds_both_its_ends) {
    const auto window = pull_window(day(2026, 8, 31), 42, 56);
    ASSERT_TRUE(window);
    EXPECT_TRUE(window->contains(day(2026, 10, 12)));
    EXPECT_TRUE(window->contains(day(2026, 10, 26)));
    EXPECT_FALSE(window->contains(day(2026, 10, 11)));
    EXPECT_FALSE(window->contains(day(2026, 10, 27)));
    EXPECT_THAT(pull_window(day(2026, 8, 31), 57, 56), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(pull_window(day(2026, 8, 31), -1, 56), Refuses(Unanswerable::out_of_range));
}

TEST(Keeping, days_left_are_none_on_the_day_and_negative_after) {
    EXPECT_EQ(days_left(day(2026, 3, 1), day(2026, 3, 1)), 0);
    EXPECT_EQ(days_left(day(2026, 3, 2), day(2026, 3, 1)), -1);
    EXPECT_EQ(days_left(day(2028, 2, 28), day(2028, 3, 1)), 2);
}

TEST(Keeping, records_are_kept_five_years) {
    EXPECT_THAT(keep_record_until(day(2024, 2, 29)), Is(day(2029, 2, 28)));
    EXPECT_THAT(keep_record_until(day(2024, 2, 29), -1), Refuses(Unanswerable::out_of_range));
}

TEST(Keeping, refuses_dates_off_the_calendar) {
    EXPECT_THAT(months_after(day(2026, 1, 1), -1), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(months_after(day(2026, 1, 1), INT64_MAX), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(months_after(day(9999, 12, 31), 1), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(months_after(Day::max(), 1), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(months_after(Day::min(), 1), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(rest_until(day(9999, 12, 31), 1), Refuses(Unanswerable::out_of_range));
}

TEST(KeepingProperty, months_never_go_backwards_and_land_in_the_month_asked) {
    for (Day from = day(2023, 1, 1); from <= day(2028, 12, 31); from = days_after(from, 1)) {
        const std::chrono::year_month_day start{from};
        Day before = from;
        for (std::int64_t months = 1; months <= 36; ++months) {
            const auto to = months_after(from, months);
            ASSERT_TRUE(to);
            ASSERT_GT(*to, before);
            before = *to;
            // One day later made is never an earlier limit.
            ASSERT_LE(*to, months_after(days_after(from, 1), months).value());
            const std::chrono::year_month_day end{*to};
            ASSERT_EQ(end.year() / end.month(), start.year() / start.month() + std::chrono::months{months});
            ASSERT_LE(end.day(), start.day());
        }
    }
}

} // namespace
} // namespace soakbook::maths
