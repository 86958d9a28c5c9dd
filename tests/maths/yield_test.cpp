// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/yield.h"
#include "tests/maths/answers.h"

#include <random>

namespace soakbook::maths {
namespace {

const Soaking two_bins{kilograms(62.5), grams(23), 480, kilograms(31.25), Mass{}, std::nullopt};

// Common practice, no source.
TEST(Yield, nine_hundred_and_sixty_strips_leave_forty_kilograms_at_most) {
    EXPECT_THAT(liquid_for_strips(960, grams(23)), Is(kilograms(22.08)));
    EXPECT_THAT(most_left(kilograms(62.5), 960, grams(23)), Is(kilograms(40.42)));
    EXPECT_TRUE(side_by_side(two_bins) == (Yield{2, 960, kilograms(40.42), 0}));
}

// A case invented for the arithmetic.
TEST(Yield, one_bin_after_another_gives_a_third_bin_and_costs_two_days) {
    EXPECT_TRUE(one_after_another(two_bins) == (Yield{3, 1440, kilograms(29.38), 2}));
}

TEST(Yield, by_mass_alone_the_last_strip_must_be_full) {
    EXPECT_THAT(strips_by_mass(grams(230), grams(23)), Is(10));
    EXPECT_THAT(strips_by_mass(grams(229.999), grams(23)), Is(9));
    EXPECT_THAT(strips_by_mass(Mass{}, grams(23)), Is(0));
}

TEST(Yield, only_the_bins_that_are_there_are_filled) {
    Soaking soaking = two_bins;
    soaking.bins = 1;
    EXPECT_EQ(side_by_side(soaking)->strips, 480);
    EXPECT_EQ(one_after_another(soaking)->strips, 1440);
    soaking.bins = 0;
    EXPECT_EQ(side_by_side(soaking)->strips, 0);
    EXPECT_EQ(one_after_another(soaking)->strips, 0);
    soaking = two_bins;
    soaking.batch = kilograms(31);
    EXPECT_EQ(one_after_another(soaking)->bins, 0);
    EXPECT_EQ(one_after_another(soaking)->left, kilograms(31));
}

TEST(Yield, drips_are_gone_for_the_next_bin) {
    Soaking soaking = two_bins;
    soaking.drip_per_bin = grams(460);
    const auto yield = side_by_side(soaking);
    ASSERT_TRUE(yield);
    EXPECT_EQ(yield->left, kilograms(39.5));
}

TEST(Yield, refuses_what_cannot_be_soaked) {
    EXPECT_THAT(strips_by_mass(kilograms(1), Mass{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_by_mass(kilograms(-1), grams(23)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(liquid_for_strips(0, grams(23)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(liquid_for_strips(INT64_MAX, grams(23)), Refuses(Unanswerable::too_large));
    EXPECT_THAT(most_left(kilograms(1), 960, grams(23)), Refuses(Unanswerable::not_reached));
    Soaking soaking = two_bins;
    soaking.flood = kilograms(10); // less than its 480 strips take up
    EXPECT_THAT(side_by_side(soaking), Refuses(Unanswerable::out_of_range));
    soaking = two_bins;
    soaking.flood = Mass{}; // never measured
    EXPECT_THAT(one_after_another(soaking), Refuses(Unanswerable::not_a_quantity));
    soaking = two_bins;
    soaking.strips_per_bin = INT64_MAX;
    EXPECT_THAT(side_by_side(soaking), Refuses(Unanswerable::too_large));
}

TEST(YieldProperty, mass_is_kept_and_one_after_another_is_never_less) {
    std::mt19937_64 random(4'004);
    std::uniform_int_distribution<std::int64_t> batch(1, 500'000'000);
    std::uniform_int_distribution<std::int64_t> uptake(5'000, 40'000);
    std::uniform_int_distribution<std::int64_t> strips(1, 600);
    std::uniform_int_distribution<std::int64_t> more(0, 30'000'000);
    for (int i = 0; i < 20'000; ++i) {
        Soaking soaking;
        soaking.batch = Mass{batch(random)};
        soaking.uptake = Mass{uptake(random)};
        soaking.strips_per_bin = strips(random);
        soaking.drip_per_bin = Mass{more(random) / 100};
        soaking.flood = soaking.uptake * soaking.strips_per_bin + soaking.drip_per_bin + Mass{more(random)};
        const auto side = side_by_side(soaking);
        const auto after = one_after_another(soaking);
        ASSERT_TRUE(side && after);
        for (const Yield& yield : {*side, *after}) {
            ASSERT_GE(yield.left, Mass{});
            ASSERT_EQ(yield.left + yield.strips * soaking.uptake + yield.bins * soaking.drip_per_bin, soaking.batch);
            ASSERT_LE(yield.strips, strips_by_mass(soaking.batch, soaking.uptake).value());
        }
        ASSERT_GE(after->strips, side->strips);
        // Not one bin more: what is left would not flood it.
        ASSERT_TRUE(after->bins == 0 || after->left < soaking.flood);
    }
}

} // namespace
} // namespace soakbook::maths
