// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/balance.h"
#include "core/maths/exact.h"
#include "tests/maths/answers.h"

namespace soakbook::maths {
namespace {

// Common practice, no source: a bag of 80 strips of 34 g holds 2.72 kg.
TEST(Balance, liquid_in_a_bag_is_its_net_mass_less_its_dry_strips) {
    EXPECT_THAT(liquid_in_bag(kilograms(2.72), 80, grams(11)), Is(kilograms(1.84)));
    EXPECT_THAT(liquid_in_bag(kilograms(0.88), 80, grams(11)), Refuses(Unanswerable::nothing_taken_up));
    EXPECT_THAT(liquid_in_bag(kilograms(2.72), 0, grams(11)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(liquid_in_bag(kilograms(2.72), INT64_MAX, grams(11)), Refuses(Unanswerable::nothing_taken_up));
}

TEST(Balance, what_is_missing_has_a_sign) {
    const BatchFlow flow{kilograms(62.5), kilograms(22.08), kilograms(39), kilograms(0.3), kilograms(0.5)};
    const auto balance = balance_of(flow);
    ASSERT_TRUE(balance);
    EXPECT_EQ(balance->accounted, kilograms(61.88));
    EXPECT_EQ(balance->unexplained, kilograms(0.62));
    EXPECT_EQ(balance->of_input, percent(0.992));
    EXPECT_FALSE(balance->beyond_limit);
    EXPECT_TRUE(balance_of(flow, percent(0.99))->beyond_limit);

    BatchFlow more_out = flow;
    more_out.in_pails = kilograms(42);
    const auto surplus = balance_of(more_out);
    ASSERT_TRUE(surplus);
    EXPECT_EQ(surplus->unexplained, kilograms(-2.38));
    EXPECT_TRUE(surplus->beyond_limit);
}

TEST(Balance, the_limit_itself_is_not_beyond_it) {
    BatchFlow flow{kilograms(100), kilograms(98), Mass{}, Mass{}, Mass{}};
    EXPECT_FALSE(balance_of(flow)->beyond_limit);
    flow.in_bags -= milligrams(1);
    EXPECT_TRUE(balance_of(flow)->beyond_limit);
    flow.in_bags = kilograms(102) + milligrams(1);
    EXPECT_TRUE(balance_of(flow)->beyond_limit);
}

TEST(Balance, refuses_no_input_and_negative_parts) {
    EXPECT_THAT(balance_of({}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(balance_of({kilograms(1), kilograms(-1), {}, {}, {}}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(balance_of({kilograms(1), Mass{INT64_MAX}, {}, {}, {}}), Refuses(Unanswerable::too_large));
    EXPECT_THAT(balance_of({milligrams(1), heaviest, {}, {}, {}}), Refuses(Unanswerable::too_large));
    EXPECT_THAT(balance_of({kilograms(1), {}, {}, {}, {}}, Fraction{-1}), Refuses(Unanswerable::out_of_range));
}

} // namespace
} // namespace soakbook::maths
