// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/cost.h"
#include "core/maths/exact.h"
#include "tests/maths/answers.h"

#include <array>
#include <numeric>
#include <random>

namespace soakbook::maths {
namespace {

constexpr Money money(std::int64_t units) {
    return {units * 10'000};
}

TEST(Cost, part_of_a_can_costs_its_part) {
    EXPECT_THAT(cost_of(kilograms(37.5), money(50), kilograms(25)), Is(money(75)));
    EXPECT_THAT(cost_of(Mass{}, money(50), kilograms(25)), Is(Money{}));
    EXPECT_THAT(cost_of(kilograms(1), money(50), Mass{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(cost_of(kilograms(-1), money(50), kilograms(25)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(cost_of(kilograms(1), money(-50), kilograms(25)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(cost_of(heaviest, money(50'000'000), milligrams(1)), Refuses(Unanswerable::too_large));
}

TEST(Cost, leftovers_carry_their_part_and_losses_are_borne_by_what_is_left) {
    const LiquidCost liquid{money(100), money(60), money(40)};
    const std::array pails{kilograms(20), kilograms(10)};
    const auto shares = share_liquid(liquid, kilograms(10), pails);
    ASSERT_TRUE(shares);
    EXPECT_EQ(shares->in_bags, (LiquidCost{money(25), money(15), money(10)}));
    EXPECT_THAT(shares->in_pails, testing::ElementsAre(money(100), money(50)));
    EXPECT_FALSE(share_liquid(liquid, Mass{}, {}).has_value());
    EXPECT_FALSE(share_liquid(liquid, kilograms(-1), {}).has_value());
    EXPECT_FALSE(share_liquid({money(-1), {}, {}}, kilograms(1), {}).has_value());
}

TEST(Cost, a_strip_bears_liquid_card_bag_and_label) {
    const auto cost = strip_cost({money(25), money(15), money(10)}, {400, Money{1'000}, 5, Money{8'000}, Money{2'000}});
    ASSERT_TRUE(cost);
    EXPECT_EQ(cost->dry_strips, money(40));
    EXPECT_EQ(cost->bags, money(4));
    EXPECT_EQ(cost->labels, money(1));
    EXPECT_EQ(cost->total(), money(95));
    EXPECT_EQ(cost->each(), Money{2'375});
    EXPECT_FALSE(strip_cost({}, {0, {}, 0, {}, {}}).has_value());
    EXPECT_FALSE(strip_cost({}, {10, Money{-1}, 0, {}, {}}).has_value());
    EXPECT_FALSE(strip_cost({}, {INT64_MAX, money(1), 0, {}, {}}).has_value());
}

TEST(CostProperty, nothing_is_lost_on_the_way_through_ten_batches) {
    std::mt19937_64 random(13);
    std::uniform_int_distribution<std::int64_t> some(1, 1'000'000);
    for (int i = 0; i < 500; ++i) {
        Money paid;
        Money in_strips;
        Money carried;
        for (int batch = 0; batch < 10; ++batch) {
            const LiquidCost liquid{Money{some(random)}, Money{some(random)}, carried};
            paid += liquid.acid + liquid.glycerine;
            const std::array pails{Mass{some(random)}, Mass{some(random)}, Mass{some(random)}};
            const auto shares = share_liquid(liquid, Mass{some(random)}, pails);
            ASSERT_TRUE(shares);
            in_strips += shares->in_bags.total();
            carried = std::accumulate(shares->in_pails.begin(), shares->in_pails.end(), Money{});
        }
        ASSERT_EQ(in_strips + carried, paid);
    }
}

} // namespace
} // namespace soakbook::maths
