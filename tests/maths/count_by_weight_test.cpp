// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/count_by_weight.h"
#include "core/maths/exact.h"
#include "tests/maths/answers.h"

#include <array>
#include <limits>
#include <random>

namespace soakbook::maths {
namespace {

const KnownMean mean{grams(33.9), 10};

// Common practice, no source: 2.686 kg at 33.9 g lies between 79 (2.678) and 80 (2.712).
TEST(Counting, a_bundle_between_two_counts_is_told_by_the_spread_of_single_strips) {
    const Mass net = kilograms(2.686);
    EXPECT_THAT(count_by_weight(net, mean, std::nullopt), Refuses(Unanswerable::no_spread_known));
    EXPECT_THAT(count_verdict(net, 80, mean, std::nullopt), Is(CountVerdict::cannot_tell));
    // Strips much alike, and a mean from many of them: one is missing, and that is sure.
    const KnownMean well_known{grams(33.9), 2000};
    const auto sure = count_by_weight(net, well_known, KnownSpread{0.3, 40});
    ASSERT_TRUE(sure);
    EXPECT_EQ(sure->likeliest, 79);
    EXPECT_GT(sure->sureness, 0.99);
    EXPECT_THAT(count_verdict(net, 80, well_known, KnownSpread{0.3, 40}), Is(CountVerdict::fewer));
    EXPECT_THAT(count_verdict(net, 79, well_known, KnownSpread{0.3, 40}), Is(CountVerdict::as_packed));
    EXPECT_THAT(count_verdict(net, 78, well_known, KnownSpread{0.3, 40}), Is(CountVerdict::more));
    // Strips that differ by grams: it may be either.
    const auto unsure = count_by_weight(net, mean, KnownSpread{2.0, 40});
    ASSERT_TRUE(unsure);
    EXPECT_LT(unsure->sureness, 0.3);
    EXPECT_LE(unsure->least, 79);
    EXPECT_GE(unsure->most, 80);
    EXPECT_THAT(count_verdict(net, 80, mean, KnownSpread{2.0, 40}), Is(CountVerdict::cannot_tell));
}

TEST(Counting, a_mean_from_few_strips_is_itself_unsure) {
    const auto from_ten = count_by_weight(kilograms(2.712), {grams(33.9), 10}, KnownSpread{0.5, 40});
    const auto from_many = count_by_weight(kilograms(2.712), {grams(33.9), 1000}, KnownSpread{0.5, 40});
    ASSERT_TRUE(from_ten && from_many);
    EXPECT_EQ(from_ten->likeliest, 80);
    EXPECT_EQ(from_many->likeliest, 80);
    EXPECT_LT(from_ten->sureness, from_many->sureness);
}

TEST(Counting, spreads_of_several_weighings_are_pooled) {
    Spread first;
    first.strips = 5;
    first.deviation = 0.3;
    Spread second;
    second.strips = 11;
    second.deviation = 0.4;
    const std::array both{first, second};
    const auto pooled = pooled_spread(both);
    ASSERT_TRUE(pooled);
    EXPECT_EQ(pooled->degrees, 14);
    EXPECT_NEAR(pooled->deviation, std::sqrt((4 * 0.09 + 10 * 0.16) / 14), 1e-12);
    EXPECT_FALSE(pooled_spread({}).has_value());
    first.deviation = 0.0;
    const std::array alike{first};
    EXPECT_FALSE(pooled_spread(alike).has_value());
}

TEST(Counting, strips_weighed_together_are_judged_with_a_known_spread) {
    const Target target{grams(34), grams(0.5)};
    const KnownSpread spread{0.4, 30};
    EXPECT_EQ(judge_together({grams(34), 20}, target, spread)->verdict, Verdict::on_target);
    EXPECT_EQ(judge_together({grams(33), 20}, target, spread)->verdict, Verdict::light);
    EXPECT_EQ(judge_together({grams(35), 20}, target, spread)->verdict, Verdict::heavy);
    const auto unsure = judge_together({grams(33.6), 10}, target, spread);
    ASSERT_TRUE(unsure);
    EXPECT_EQ(unsure->verdict, Verdict::weigh_more);
    EXPECT_EQ(unsure->more, 57); // t(0.975, 30) 2.0423: (2.0423 * 0.4 / 0.1)^2 = 66.7
    EXPECT_FALSE(judge_together({grams(33.5), 10}, target, spread)->more);
    EXPECT_THAT(judge_together({grams(33.5), 10}, target, std::nullopt), Refuses(Unanswerable::no_spread_known));
}

TEST(Counting, refuses_what_was_not_weighed) {
    const KnownSpread spread{0.4, 30};
    EXPECT_THAT(count_by_weight(Mass{}, mean, spread), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(count_by_weight(kilograms(2), {Mass{}, 10}, spread), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(count_by_weight(kilograms(2), {grams(34), 0}, spread), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(count_by_weight(heaviest, {milligrams(1), 10}, spread), Refuses(Unanswerable::too_large));
    EXPECT_THAT(count_verdict(kilograms(2), 0, mean, spread), Refuses(Unanswerable::not_a_quantity));
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_THAT(count_by_weight(kilograms(2), mean, KnownSpread{bad, 30}), Refuses(Unanswerable::no_spread_known));
    EXPECT_THAT(count_by_weight(kilograms(2), mean, KnownSpread{0.4, 0}), Refuses(Unanswerable::no_spread_known));
    EXPECT_TRUE(count_by_weight(milligrams(1), mean, spread).has_value());
}

TEST(CountingProperty, what_is_called_sure_is_right_about_that_often) {
    std::mt19937_64 random(80);
    std::normal_distribution<double> strip(33.9, 0.5);
    std::uniform_int_distribution<int> packed(70, 90);
    double claimed = 0.0;
    int right = 0;
    int within = 0;
    const int rounds = 3'000;
    for (int i = 0; i < rounds; ++i) {
        std::array<Mass, 40> sample;
        for (Mass& m : sample)
            m = grams(strip(random));
        const Spread spread = spread_of(sample).value();
        const int count = packed(random);
        Mass net;
        for (int n = 0; n < count; ++n)
            net += grams(strip(random));
        const auto estimate = count_by_weight(net, {spread.mean_mass(), 40}, KnownSpread{spread.deviation, 39});
        ASSERT_TRUE(estimate);
        ASSERT_LE(estimate->least, estimate->likeliest);
        ASSERT_GE(estimate->most, estimate->likeliest);
        ASSERT_TRUE(estimate->sureness > 0.0 && estimate->sureness <= 1.0);
        claimed += estimate->sureness;
        right += estimate->likeliest == count ? 1 : 0;
        within += estimate->least <= count && count <= estimate->most ? 1 : 0;
    }
    EXPECT_NEAR(right / static_cast<double>(rounds), claimed / rounds, 0.03);
    EXPECT_GT(within / static_cast<double>(rounds), 0.94);
}

} // namespace
} // namespace soakbook::maths
