// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/mites.h"
#include "tests/maths/answers.h"

#include <limits>
#include <random>

namespace soakbook::maths {
namespace {

const double nan = std::numeric_limits<double>::quiet_NaN();
const double endless = std::numeric_limits<double>::infinity();

TEST(Mites, nine_on_three_hundred_are_three_per_cent) {
    EXPECT_THAT(mite_rate(9, 300), IsNear(0.03, 1e-15));
    EXPECT_THAT(mite_rate(0, 300), IsNear(0.0, 0.0));
    EXPECT_THAT(natural_drop(21, 3), IsNear(7.0, 1e-12));
}

TEST(Mites, a_heavily_loaded_sample_has_a_rate_but_no_interval) {
    EXPECT_THAT(mite_rate(40, 30), IsNear(4.0 / 3.0, 1e-12));
    EXPECT_THAT(mite_rate_wilson(40, 30), Refuses(Unanswerable::out_of_range));
}

TEST(Mites, a_threshold_within_the_interval_cannot_be_judged) {
    const Interval rate{0.016, 0.056};
    EXPECT_THAT(against_threshold(rate, 0.06), Is(AgainstThreshold::below));
    EXPECT_THAT(against_threshold(rate, 0.03), Is(AgainstThreshold::cannot_tell));
    EXPECT_THAT(against_threshold(rate, 0.01), Is(AgainstThreshold::above));
    EXPECT_THAT(against_threshold(rate, nan), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(against_threshold({0.2, 0.1}, 0.1), Refuses(Unanswerable::not_a_quantity));
}

TEST(Mites, refuses_samples_that_are_none) {
    EXPECT_THAT(mite_rate(1, 0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(mite_rate(-1, 300), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(mite_rate_wilson(1, 300, percent(100)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(mite_rate_exact(1, -300), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(natural_drop(5, 0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(natural_drop(5, nan), Refuses(Unanswerable::not_a_quantity));
}

TEST(Mites, a_zero_below_the_line_is_no_efficacy) {
    EXPECT_THAT(henderson_tilton({0, 30}, {500, 550}), Refuses(Unanswerable::zero_below_the_line));
    EXPECT_THAT(henderson_tilton({300, 30}, {500, 0}), Refuses(Unanswerable::zero_below_the_line));
    EXPECT_THAT(henderson_tilton({300, 30}, {0, 550}), Refuses(Unanswerable::zero_below_the_line));
    EXPECT_THAT(abbott(0, 45), Refuses(Unanswerable::zero_below_the_line));
    EXPECT_THAT(fall_without_control({0, 3}), Refuses(Unanswerable::zero_below_the_line));
    for (const double bad : {nan, endless, -1.0}) {
        EXPECT_THAT(henderson_tilton({bad, 30}, {500, 550}), Refuses(Unanswerable::not_a_quantity));
        EXPECT_THAT(abbott(250, bad), Refuses(Unanswerable::not_a_quantity));
    }
    EXPECT_THAT(henderson_tilton({1e-300, 1e300}, {1, 1e-300}), Refuses(Unanswerable::out_of_range));
}

TEST(Mites, negative_stays_negative) {
    EXPECT_THAT(henderson_tilton({100, 300}, {100, 100}), IsNear(-2.0, 1e-12));
    EXPECT_THAT(fall_without_control({100, 150}), IsNear(-0.5, 1e-12));
    EXPECT_THAT(fall_without_control({100, 0}), IsNear(1.0, 0.0));
}

TEST(MitesProperty, every_interval_holds_its_rate_and_stays_between_none_and_all) {
    std::mt19937_64 random(300);
    std::uniform_int_distribution<std::int64_t> bees(1, 20'000);
    for (int i = 0; i < 5'000; ++i) {
        const std::int64_t n = bees(random);
        std::uniform_int_distribution<std::int64_t> some(0, n);
        const std::int64_t mites = i % 3 == 0 ? std::min<std::int64_t>(n, i % 7) : some(random);
        const double rate = mite_rate(mites, n).value();
        for (const auto& interval : {mite_rate_wilson(mites, n), mite_rate_exact(mites, n)}) {
            ASSERT_TRUE(interval) << mites << '/' << n;
            ASSERT_TRUE(interval->contains(rate)) << mites << '/' << n;
            ASSERT_GE(interval->low, 0.0);
            ASSERT_LE(interval->high, 1.0);
        }
    }
}

} // namespace
} // namespace soakbook::maths
