// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/sharing.h"
#include "tests/maths/answers.h"

#include <numeric>
#include <random>

namespace soakbook::maths {
namespace {

std::vector<std::int64_t> shared(std::int64_t total, std::vector<std::int64_t> weights) {
    return share_out_count(total, weights).value();
}

TEST(Sharing, what_is_left_over_goes_to_the_largest_remainders) {
    EXPECT_THAT(shared(10, {1, 1, 1}), testing::ElementsAre(4, 3, 3));
    EXPECT_THAT(shared(10, {50, 30, 21}), testing::ElementsAre(5, 3, 2));
    EXPECT_THAT(shared(7, {0, 3, 4}), testing::ElementsAre(0, 3, 4));
    EXPECT_THAT(shared(-10, {1, 1, 1}), testing::ElementsAre(-4, -3, -3));
    EXPECT_THAT(shared(0, {3, 2}), testing::ElementsAre(0, 0));
    EXPECT_THAT(shared(2, {1, 1, 1, 1}), testing::ElementsAre(1, 1, 0, 0));
}

TEST(Sharing, acid_over_strips_is_exact_to_the_milligram) {
    const auto parts = share_out(grams(733.001), 80);
    ASSERT_TRUE(parts);
    EXPECT_EQ(std::accumulate(parts->begin(), parts->end(), Mass{}), grams(733.001));
    EXPECT_EQ(parts->front() - parts->back(), milligrams(1));
}

TEST(Sharing, refuses_shares_that_cannot_be) {
    EXPECT_THAT(share_out_count(5, {}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(share_out(grams(5), 0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(share_out(grams(5), -3), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(share_out(grams(5), 100'000'000), Refuses(Unanswerable::too_large));
    const std::vector<std::int64_t> none{0, 0};
    EXPECT_THAT(share_out_count(5, none), Refuses(Unanswerable::zero_below_the_line));
    const std::vector<std::int64_t> negative{2, -1};
    EXPECT_THAT(share_out_count(5, negative), Refuses(Unanswerable::not_a_quantity));
    const std::vector<std::int64_t> fine{2, 1};
    EXPECT_THAT(share_out_count(INT64_MIN, fine), Refuses(Unanswerable::too_large));
}

TEST(SharingProperty, parts_add_up_and_none_is_a_unit_off_its_due) {
    std::mt19937_64 random(501);
    std::uniform_int_distribution<std::size_t> how_many(1, 90);
    std::uniform_int_distribution<std::int64_t> weight(0, 1'000'000'000'000);
    std::uniform_int_distribution<std::int64_t> any(-1'000'000'000'000, 1'000'000'000'000);
    for (int i = 0; i < 5'000; ++i) {
        std::vector<std::int64_t> weights(how_many(random));
        for (auto& w : weights)
            w = weight(random);
        weights[0] += 1;
        const std::int64_t total = any(random);
        const auto parts = share_out_count(total, weights);
        ASSERT_TRUE(parts);
        ASSERT_EQ(std::accumulate(parts->begin(), parts->end(), std::int64_t{0}), total);
        const long double sum = std::accumulate(weights.begin(), weights.end(), 0.0L);
        for (std::size_t n = 0; n < weights.size(); ++n) {
            const long double due = static_cast<long double>(total) * static_cast<long double>(weights[n]) / sum;
            ASSERT_LT(std::abs(static_cast<long double>((*parts)[n]) - due), 1.001L);
        }
    }
}

TEST(SharingProperty, the_largest_numbers_do_not_overflow) {
    const std::vector<std::int64_t> weights{INT64_MAX, INT64_MAX, 1};
    const auto parts = share_out_count(INT64_MAX, weights);
    ASSERT_TRUE(parts);
    EXPECT_EQ((*parts)[0] + (*parts)[1] + (*parts)[2], INT64_MAX);
}

} // namespace
} // namespace soakbook::maths
