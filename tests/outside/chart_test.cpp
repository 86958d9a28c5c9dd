// SPDX-License-Identifier: GPL-3.0-or-later
// Control chart limits and constants.
#include "core/maths/charts_limits.h"
#include "tests/maths/answers.h"

#include <array>

namespace soakbook::maths {
namespace {

// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rates (from memory), with its 3 / 1.128.
TEST(OutsideChart, nist_flow_rates) {
    const std::array rates{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
    const auto limits = individuals_limits(rates, 1.128);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->mean, 50.81, 1e-9);
    EXPECT_NEAR(limits->mean_range, 1.87778, 5e-6);
    EXPECT_NEAR(limits->lower, 45.8159, 5e-5);
    EXPECT_NEAR(limits->upper, 55.8041, 5e-5);
}

// Source: Montgomery, Introduction to Statistical Quality Control, appendix VI: d2(2) 1.128, D4(2) 3.267.
TEST(OutsideChart, constants_of_the_moving_range) {
    EXPECT_NEAR(range_of_two, 1.128379, 5e-7);
    const std::array one_apart{0.0, 1.0, 0.0, 1.0};
    EXPECT_NEAR(individuals_limits(one_apart)->range_upper, 3.266532, 5e-7);
}

// Source: Montgomery, appendix VI, and ASTM E2587, table of control limit factors; the last rows n = 15 and 25 from
// memory.
TEST(OutsideChart, constants_of_mean_and_deviation_charts) {
    const auto five = subgroup_constants(5);
    ASSERT_TRUE(five);
    EXPECT_NEAR(five->c4, 0.93999, 1e-5);
    EXPECT_NEAR(five->a3, 1.4273, 5e-5);
    EXPECT_EQ(five->b3, 0.0);
    EXPECT_NEAR(five->b4, 2.0890, 5e-5);
    const auto ten = subgroup_constants(10);
    ASSERT_TRUE(ten);
    EXPECT_NEAR(ten->c4, 0.97266, 1e-5);
    EXPECT_NEAR(ten->a3, 0.9754, 5e-5);
    EXPECT_NEAR(ten->b3, 0.2837, 5e-5);
    EXPECT_NEAR(ten->b4, 1.7163, 5e-5);
    EXPECT_NEAR(subgroup_constants(2)->c4, 0.7979, 5e-5);
    EXPECT_NEAR(subgroup_constants(15)->a3, 0.789, 5e-4);
    EXPECT_NEAR(subgroup_constants(25)->b4, 1.435, 5e-4);
}

// Source: c4 = sqrt(2 / (n - 1)) Gamma(n / 2) / Gamma((n - 1) / 2), the definition; the C library's gamma as a second
// opinion.
TEST(OutsideChart, c4_as_the_gamma_function_has_it) {
    for (int n = 2; n <= 150; ++n) {
        const double c4 = std::sqrt(2.0 / (n - 1.0)) * std::tgamma(n / 2.0) / std::tgamma((n - 1.0) / 2.0);
        ASSERT_NEAR(subgroup_constants(n)->c4, c4, 1e-12) << n;
    }
}

// Source: limits by those constants, worked by hand for two subgroups of ten.
TEST(OutsideChart, limits_of_two_subgroups) {
    const std::array subgroups{Subgroup{34.0, 0.4}, Subgroup{34.2, 0.6}};
    const auto limits = subgroup_limits(subgroups, 10);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->mean, 34.1, 1e-9);
    EXPECT_NEAR(limits->lower, 34.1 - 0.9754 * 0.5, 5e-5);
    EXPECT_NEAR(limits->upper, 34.1 + 0.9754 * 0.5, 5e-5);
    EXPECT_NEAR(limits->deviation_upper, 1.7163 * 0.5, 5e-5);
}

} // namespace
} // namespace soakbook::maths
