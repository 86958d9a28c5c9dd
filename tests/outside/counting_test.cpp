// SPDX-License-Identifier: GPL-3.0-or-later
// Yield, balance and shares from the trade.
#include "core/maths/balance.h"
#include "core/maths/yield.h"
#include "tests/maths/answers.h"

namespace soakbook::maths {
namespace {

// Source: common practice, no source.
TEST(OutsideYield, sixty_two_and_a_half_kilograms) {
    EXPECT_THAT(liquid_for_strips(960, grams(23)), Is(kilograms(22.08)));
    EXPECT_THAT(most_left(kilograms(62.5), 960, grams(23)), Is(kilograms(40.42)));
    EXPECT_THAT(strips_by_mass(kilograms(62.5), grams(23)), Is(2717));
    EXPECT_THAT(liquid_in_bag(kilograms(2.72), 80, grams(11)), Is(80 * grams(23)));
}

// Source: a case invented for the arithmetic: flood mass 31.25 kg a bin, one bin after another.
TEST(OutsideYield, one_bin_after_another) {
    const auto yield = one_after_another({kilograms(62.5), grams(23), 480, kilograms(31.25), Mass{}, std::nullopt});
    ASSERT_TRUE(yield);
    EXPECT_EQ(yield->bins, 3);
    EXPECT_EQ(yield->strips, 1440);
    EXPECT_EQ(yield->left, kilograms(29.38));
    EXPECT_EQ(yield->more_days, 2);
}

} // namespace
} // namespace soakbook::maths
