// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/exact.h"
#include "core/maths/quantities.h"
#include "tests/maths/answers.h"

#include <random>

namespace soakbook::maths {
namespace {

TEST(Quantities, sums_close_to_zero_exactly) {
    Mass sum;
    for (int i = 0; i < 1000; ++i)
        sum += grams(0.1);
    EXPECT_EQ(sum - grams(100), Mass{});
}

TEST(Quantities, a_part_of_a_mass_is_the_nearest_milligram) {
    EXPECT_EQ(part_of(grams(22.9), percent(40)), grams(9.16));
    EXPECT_EQ(share(kilograms(25), kilograms(62.5)), percent(40));
}

TEST(Quantities, the_day_on_the_wall_may_differ_from_the_day_at_greenwich) {
    const std::int64_t last_minute_of_june = 1'782'863'940'000; // 2026-06-30 23:59 UTC
    EXPECT_EQ((Instant{last_minute_of_june, 0}.local_day()), day(2026, 6, 30));
    EXPECT_EQ((Instant{last_minute_of_june, 120}.local_day()), day(2026, 7, 1));
    EXPECT_EQ((Instant{last_minute_of_june - 86'400'000, -60}.local_day()), day(2026, 6, 29));
    EXPECT_EQ((Instant{-1, 0}.local_day()), day(1969, 12, 31));
}

TEST(ExactSums, ratios_round_to_the_nearest_and_halves_away_from_zero) {
    EXPECT_EQ(times_over(7, 1, 2), 4);
    EXPECT_EQ(times_over(-7, 1, 2), -4);
    EXPECT_EQ(times_over(10, 1, 3), 3);
    EXPECT_EQ(times_over(INT64_MAX, 1'000'000, 1'000'000), INT64_MAX);
    EXPECT_EQ(rounded_up(80, 25), 4);
    EXPECT_EQ(rounded_up(50, 25), 2);
}

} // namespace
} // namespace soakbook::maths
