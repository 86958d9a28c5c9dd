// SPDX-License-Identifier: GPL-3.0-or-later
// Intervals of a rate, and efficacy.
#include "core/maths/mites.h"
#include "tests/maths/answers.h"

#include <boost/math/distributions/binomial.hpp>

namespace soakbook::maths {
namespace {

// Source: Newcombe 1998, Stat. Med. 17:857, table I, method 3 (Wilson's score without continuity correction).
TEST(OutsideMites, wilson_by_newcombe) {
    const auto some = mite_rate_wilson(15, 148);
    ASSERT_TRUE(some);
    EXPECT_NEAR(some->low, 0.062386, 5e-7);
    EXPECT_NEAR(some->high, 0.160487, 5e-7);
    const auto none = mite_rate_wilson(0, 20);
    ASSERT_TRUE(none);
    EXPECT_EQ(none->low, 0.0);
    EXPECT_NEAR(none->high, 0.161125, 5e-7);
    // The same table: 81 of 263 and 1 of 29, to its four decimals (from memory).
    EXPECT_NEAR(mite_rate_wilson(81, 263)->low, 0.2553, 5e-5);
    EXPECT_NEAR(mite_rate_wilson(81, 263)->high, 0.3662, 5e-5);
    EXPECT_NEAR(mite_rate_wilson(1, 29)->low, 0.0061, 5e-5);
    EXPECT_NEAR(mite_rate_wilson(1, 29)->high, 0.1718, 5e-5);
}

// Source: Newcombe 1998, table I, method 5 (Clopper-Pearson).
TEST(OutsideMites, clopper_and_pearson_by_newcombe) {
    const auto some = mite_rate_exact(15, 148);
    ASSERT_TRUE(some);
    EXPECT_NEAR(some->low, 0.057844, 5e-7);
    EXPECT_NEAR(some->high, 0.161650, 5e-7);
    // The same table, to its four decimals (from memory).
    EXPECT_NEAR(mite_rate_exact(0, 20)->high, 0.1684, 5e-5);
    EXPECT_NEAR(mite_rate_exact(81, 263)->low, 0.2527, 5e-5);
    EXPECT_NEAR(mite_rate_exact(81, 263)->high, 0.3676, 5e-5);
}

// Source: computed with Wilson's formula; a wash of 300 bees, Dietemann et al. 2013, J. Apic. Res. 52(1).
TEST(OutsideMites, nine_mites_on_three_hundred_bees) {
    const auto interval = mite_rate_wilson(9, 300);
    ASSERT_TRUE(interval);
    EXPECT_NEAR(interval->low, 0.015862, 5e-7);
    EXPECT_NEAR(interval->high, 0.056023, 5e-7);
}

// Source: Boost.Math 1.74, binomial_distribution::find_lower/upper_bound_on_p, as a second opinion.
TEST(OutsideMites, clopper_and_pearson_as_boost_has_it) {
    using Binomial = boost::math::binomial_distribution<>;
    for (const int bees : {20, 148, 300, 1000, 13'929})
        for (const int mites : {1, 2, 6, 15, 19}) {
            const auto interval = mite_rate_exact(mites, bees);
            ASSERT_TRUE(interval);
            EXPECT_NEAR(interval->low, Binomial::find_lower_bound_on_p(bees, mites, 0.025), 1e-9)
                << mites << '/' << bees;
            EXPECT_NEAR(interval->high, Binomial::find_upper_bound_on_p(bees, mites, 0.025), 1e-9)
                << mites << '/' << bees;
        }
}

// Source: Henderson & Tilton 1955, J. Econ. Entomol. 48:157, the formula; figures worked by hand.
TEST(OutsideMites, henderson_and_tilton) {
    EXPECT_THAT(henderson_tilton({300, 30}, {500, 550}), IsNear(0.909091, 5e-7));
}

// Source: Abbott 1925, J. Econ. Entomol. 18:265, the formula; figures worked by hand.
TEST(OutsideMites, abbott_1925) {
    EXPECT_THAT(abbott(250, 45), IsNear(0.82, 1e-12));
}

} // namespace
} // namespace soakbook::maths
