// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/exact.h"
#include "core/maths/sampling.h"
#include "tests/maths/answers.h"

#include <random>
#include <vector>

namespace soakbook::maths {
namespace {

const Target target{grams(34), grams(0.5)};

std::vector<Mass> weights(std::initializer_list<double> in_grams_each) {
    std::vector<Mass> list;
    for (const double g : in_grams_each)
        list.push_back(grams(g));
    return list;
}

// Common practice, no source.
TEST(Sampling, ten_strips_of_thirty_three_point_nine_grams_are_on_target) {
    const auto mean = mean_together(grams(339), 10);
    EXPECT_THAT(mean, Is(grams(33.9)));
    EXPECT_THAT(verdict_together(*mean, target), Is(Verdict::on_target));
    EXPECT_THAT(uptake(*mean, grams(11)), Is(grams(22.9)));
    EXPECT_THAT(acid_per_strip(*mean, grams(11), percent(40)), Is(grams(9.16)));
    EXPECT_THAT(acid_per_strip(grams(34), grams(11), percent(40)), Is(grams(9.2)));
}

TEST(Sampling, together_is_judged_by_the_mean_alone_and_both_limits_are_good) {
    EXPECT_THAT(verdict_together(grams(33.5), target), Is(Verdict::on_target));
    EXPECT_THAT(verdict_together(grams(34.5), target), Is(Verdict::on_target));
    EXPECT_THAT(verdict_together(grams(33.499), target), Is(Verdict::light));
    EXPECT_THAT(verdict_together(grams(34.501), target), Is(Verdict::heavy));
}

TEST(Sampling, one_by_one_is_judged_by_the_whole_interval) {
    const auto judged = [](std::initializer_list<double> list) {
        return judge_one_by_one(weights(list), target).value();
    };
    EXPECT_EQ(judged({33.9, 34.0, 34.1, 34.0, 33.95}).verdict, Verdict::on_target);
    EXPECT_EQ(judged({31.9, 32.0, 32.1, 32.0, 31.95}).verdict, Verdict::light);
    EXPECT_EQ(judged({36.9, 37.0, 37.1, 37.0, 36.95}).verdict, Verdict::heavy);
    const Judged unsure = judged({33.4, 34.2, 33.1, 34.4, 33.9});
    EXPECT_EQ(unsure.verdict, Verdict::weigh_more);
    ASSERT_TRUE(unsure.more);
    EXPECT_GT(*unsure.more, 0);
}

TEST(Sampling, the_strips_more_to_weigh_are_just_enough) {
    const auto judged = judge_one_by_one(weights({33.4, 34.2, 33.1, 34.4, 33.9}), target);
    ASSERT_TRUE(judged);
    ASSERT_TRUE(judged->more);
    const std::int64_t all = judged->spread.strips + *judged->more;
    const double room = std::min(judged->spread.mean - 33.5, 34.5 - judged->spread.mean);
    EXPECT_THAT(strips_to_weigh(judged->spread.deviation, room), Is(all));
}

TEST(Sampling, a_mean_right_on_the_limit_is_settled_by_no_number_of_strips) {
    const auto judged = judge_one_by_one(weights({33.0, 34.0}), target);
    ASSERT_TRUE(judged);
    EXPECT_EQ(judged->verdict, Verdict::weigh_more);
    EXPECT_FALSE(judged->more);
}

TEST(Sampling, strips_all_alike_have_no_spread_and_a_verdict_all_the_same) {
    const auto judged = judge_one_by_one(weights({34, 34, 34}), target);
    ASSERT_TRUE(judged);
    EXPECT_EQ(judged->verdict, Verdict::on_target);
    EXPECT_EQ(judged->spread.deviation, 0.0);
}

TEST(Sampling, refuses_what_was_not_weighed) {
    EXPECT_THAT(mean_together(Mass{}, 10), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(mean_together(grams(300), 0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(mean_together(Mass{INT64_MAX}, 10), Refuses(Unanswerable::too_large));
    EXPECT_THAT(spread_of(weights({34})), Refuses(Unanswerable::too_few));
    EXPECT_THAT(spread_of({}), Refuses(Unanswerable::too_few));
    EXPECT_THAT(spread_of(weights({34, 0})), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(spread_of(weights({34, 33}), percent(100)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(uptake(grams(11), grams(11)), Refuses(Unanswerable::nothing_taken_up));
    EXPECT_THAT(uptake(grams(34), Mass{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(acid_per_strip(grams(34), grams(11), Fraction{1'000'001}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(verdict_together(grams(34), {grams(34), grams(-1)}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(verdict_together(grams(-34), target), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_to_weigh(std::nan(""), 0.1), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_to_weigh(0.5, 0.0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_to_weigh(0.5, 1e-9), Refuses(Unanswerable::not_reached));
}

TEST(SamplingProperty, an_interval_holds_its_mean_and_grows_with_confidence) {
    std::mt19937_64 random(77);
    std::uniform_int_distribution<std::int64_t> weight(1, 90'000);
    std::uniform_int_distribution<std::size_t> how_many(2, 40);
    for (int i = 0; i < 5'000; ++i) {
        std::vector<Mass> list(how_many(random));
        for (Mass& m : list)
            m = Mass{weight(random)};
        const auto usual = spread_of(list);
        const auto surer = spread_of(list, percent(99));
        ASSERT_TRUE(usual && surer);
        ASSERT_TRUE(usual->interval.contains(usual->mean));
        ASSERT_LE(surer->interval.low, usual->interval.low);
        ASSERT_GE(surer->interval.high, usual->interval.high);
    }
}

TEST(SamplingProperty, nineteen_of_twenty_intervals_hold_the_true_mean) {
    std::mt19937_64 random(78);
    std::normal_distribution<double> strip(34.0, 0.4);
    int held = 0;
    for (int i = 0; i < 4'000; ++i) {
        std::vector<Mass> list(6);
        for (Mass& m : list)
            m = grams(strip(random));
        held += spread_of(list)->interval.contains(34.0) ? 1 : 0;
    }
    EXPECT_NEAR(held / 4'000.0, 0.95, 0.012);
}

} // namespace
} // namespace soakbook::maths
