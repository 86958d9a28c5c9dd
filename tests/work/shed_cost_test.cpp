// SPDX-License-Identifier: GPL-3.0-or-later
// What a strip costs. Prices are invented; sharing by mass is common practice, no source. Every cost closes to zero.
#include "bench.h"
#include "core/work/batch_cost.h"
#include "priced.h"

#include <algorithm>

namespace soakbook::tests {

using namespace work;
using maths::kilograms;
using maths::Money;

namespace {

std::vector<PailId> pour(Bench& bench, BatchId batch, const std::vector<maths::Mass>& masses, int n, int hour = 15) {
    PourEntry entry;
    entry.batch = batch;
    entry.pails = masses;
    entry.warm_and_clear = true;
    entry.scraped = true;
    return must(pour_leftovers(bench.book(), entry, on_day(n, hour))).pails;
}

Money sum_of(const std::vector<PailCost>& pails) {
    Money sum;
    for (const PailCost& pail : pails)
        sum += pail.cost.value_or(Money{});
    return sum;
}

} // namespace

TEST(StripCosts, a_closed_batch_shares_its_liquid_over_bags_and_pails) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    pour(bench, batch, {kilograms(20), kilograms(20)}, 2);
    must(close_batch(bench.book(), batch, on_day(2, 16), {Why::loss_unexplained}));
    give_costs(bench);
    const BatchCost cost = must(batch_cost(bench.book(), batch));
    EXPECT_TRUE(cost.closed);
    EXPECT_EQ(cost.strips, 960);
    EXPECT_EQ(cost.bags, 12);
    ASSERT_TRUE(cost.acid && cost.glycerine && cost.carried && cost.dry_strips && cost.bag_cost && cost.total &&
                cost.each);
    // 25 kg at 3 and 37.5 kg at 2 are 75 each; strips took up 960 x 22.9 g = 21.984 kg beside 40 kg in pails.
    EXPECT_NEAR(static_cast<double>(cost.acid->count), 750'000 * 21.984 / 61.984, 1);
    EXPECT_NEAR(static_cast<double>(cost.glycerine->count), 750'000 * 21.984 / 61.984, 1);
    EXPECT_EQ(*cost.carried, Money{});
    EXPECT_EQ(*cost.dry_strips, Money{960 * 500});
    EXPECT_EQ(*cost.bag_cost, Money{12 * 2'000});
    EXPECT_EQ(*cost.acid + *cost.glycerine + sum_of(cost.pails), Money{1'500'000});
    EXPECT_EQ(*cost.total, *cost.acid + *cost.glycerine + Money{480'000 + 24'000});
    EXPECT_EQ(cost.each->count, (cost.total->count + 480) / 960);
    EXPECT_FALSE(cost.still_in_work);
    EXPECT_TRUE(cost.missing.empty());
}

TEST(StripCosts, an_open_batch_says_what_is_still_in_work) {
    Bench bench;
    give_costs(bench);
    const BatchId batch = bench.clear_batch(10);
    BatchCost cost = must(batch_cost(bench.book(), batch));
    EXPECT_FALSE(cost.closed);
    EXPECT_EQ(cost.still_in_work, Money{1'500'000});
    EXPECT_FALSE(cost.total || cost.each);
    pour(bench, batch, {kilograms(12.5)}, 11);
    cost = must(batch_cost(bench.book(), batch));
    EXPECT_EQ(cost.pails.at(0).cost, Money{300'000});
    EXPECT_EQ(cost.still_in_work, Money{1'200'000});
}

TEST(StripCosts, leftovers_carry_their_cost_through_any_depth_of_pails) {
    Bench bench;
    give_costs(bench);
    const BatchId first = bench.clear_batch(10);
    const auto once = pour(bench, first, {kilograms(31.25)}, 11); // half of 150: 75
    const BatchId second = bench.clear_batch(12, kilograms(62.5), once);
    // 75 carried, 12.5 kg of acid and 18.75 kg of glycerine fresh: 37.50 each
    EXPECT_EQ(must(batch_cost(bench.book(), second)).still_in_work, Money{750'000 + 375'000 + 375'000});
    const auto twice = pour(bench, second, {kilograms(31.25)}, 13);
    const BatchId third = bench.clear_batch(14, kilograms(50), twice);
    const BatchCost cost = must(batch_cost(bench.book(), third));
    // half of 150 again, then 7.5 kg of acid and 11.25 kg of glycerine
    EXPECT_EQ(cost.still_in_work, Money{750'000 + 225'000 + 225'000});
    EXPECT_TRUE(cost.missing.empty());
}

TEST(StripCosts, a_lot_without_a_cost_is_named_and_there_is_no_total) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    give_costs(bench, bench.glycerine);
    const BatchCost cost = must(batch_cost(bench.book(), batch));
    ASSERT_EQ(cost.missing.size(), 1U);
    EXPECT_EQ(cost.missing[0].name, QStringLiteral("glycerine G1"));
    EXPECT_EQ(cost.missing[0].material, MaterialKind::glycerine);
    EXPECT_EQ(cost.missing[0].lot, bench.glycerine);
    EXPECT_TRUE(cost.acid && cost.dry_strips && cost.bag_cost);
    EXPECT_FALSE(cost.glycerine || cost.total || cost.each || cost.still_in_work);
}

TEST(StripCosts, what_is_missing_in_the_batch_of_a_pail_is_missing_here_too) {
    Bench bench;
    give_costs(bench, bench.acid);
    const BatchId first = bench.clear_batch(10);
    const BatchId second = bench.clear_batch(12, kilograms(31.25), pour(bench, first, {kilograms(31.25)}, 11));
    const BatchCost cost = must(batch_cost(bench.book(), second));
    EXPECT_FALSE(cost.carried);
    ASSERT_EQ(cost.missing.size(), 1U);
    EXPECT_EQ(cost.missing[0].batch_code, bench.view(first).line.code);
}

TEST(StripCosts, bags_of_no_known_lot_are_missing_too) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    BagEntry entry;
    entry.batch = batch;
    entry.bags = 12;
    must(fill_bags(bench.book(), entry, on_day(2, 14)));
    give_costs(bench);
    const BatchCost cost = must(batch_cost(bench.book(), batch));
    ASSERT_EQ(cost.missing.size(), 1U);
    EXPECT_FALSE(cost.missing[0].lot);
    EXPECT_EQ(cost.missing[0].material, MaterialKind::bags);
    EXPECT_FALSE(cost.total);
}

TEST(StripCosts, of_a_batch_that_is_only_planned_nothing_is_known) {
    Bench bench;
    const BatchId planned = must(plan_mix(bench.book(), bench.plan(), on_day(0))).batch;
    EXPECT_TRUE(refused(batch_cost(bench.book(), planned), Why::batch_not_mixed));
    EXPECT_TRUE(refused(batch_cost(bench.book(), BatchId{999}), Why::not_found));
}

} // namespace soakbook::tests
