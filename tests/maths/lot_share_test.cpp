// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/lot_share.h"
#include "tests/maths/answers.h"

#include <map>
#include <numeric>
#include <random>

namespace soakbook::maths {
namespace {

double part_of_lot(const std::vector<LotPart>& parts, std::int64_t lot) {
    double sum = 0.0;
    for (const LotPart& part : parts)
        sum += part.lot == lot ? part.part : 0.0;
    return sum;
}

TEST(Trail, a_pail_carries_the_lots_of_its_batch_on) {
    const std::vector<BatchMaterial> batches{
        {{{7, kilograms(9)}, {8, kilograms(3)}}, {}},
        {{{9, kilograms(6)}}, {{0, kilograms(2)}}},
    };
    const auto parts = lot_parts(batches);
    ASSERT_TRUE(parts);
    EXPECT_NEAR(part_of_lot((*parts)[0], 7), 0.75, 1e-15);
    EXPECT_NEAR(part_of_lot((*parts)[1], 7), 0.1875, 1e-15);
    EXPECT_NEAR(part_of_lot((*parts)[1], 8), 0.0625, 1e-15);
    EXPECT_NEAR(part_of_lot((*parts)[1], 9), 0.75, 1e-15);
}

TEST(Trail, the_order_of_the_list_does_not_matter) {
    const std::vector<BatchMaterial> batches{
        {{}, {{1, kilograms(2)}, {2, kilograms(2)}}},
        {{{1, kilograms(5)}}, {{2, kilograms(5)}}},
        {{{2, kilograms(4)}}, {}},
    };
    const auto parts = lot_parts(batches);
    ASSERT_TRUE(parts);
    EXPECT_NEAR(part_of_lot((*parts)[0], 1), 0.25, 1e-15);
    EXPECT_NEAR(part_of_lot((*parts)[0], 2), 0.75, 1e-15);
}

TEST(Trail, refuses_circles_and_what_comes_from_nothing) {
    const std::vector<BatchMaterial> circle{{{}, {{1, kilograms(1)}}}, {{}, {{0, kilograms(1)}}}};
    EXPECT_FALSE(lot_parts(circle).has_value());
    EXPECT_EQ(lot_parts(circle).error(), Unanswerable::circular);
    const std::vector<BatchMaterial> itself{{{{1, kilograms(1)}}, {{0, kilograms(1)}}}};
    EXPECT_EQ(lot_parts(itself).error(), Unanswerable::circular);
    const std::vector<BatchMaterial> nowhere{{{}, {{5, kilograms(1)}}}};
    EXPECT_EQ(lot_parts(nowhere).error(), Unanswerable::out_of_range);
    const std::vector<BatchMaterial> negative{{{{1, kilograms(-1)}}, {}}};
    EXPECT_EQ(lot_parts(negative).error(), Unanswerable::not_a_quantity);
    const std::vector<BatchMaterial> from_empty{{{}, {}}, {{}, {{0, kilograms(1)}}}};
    EXPECT_EQ(lot_parts(from_empty).error(), Unanswerable::zero_below_the_line);
    const std::vector<BatchMaterial> empty{{{}, {}}};
    EXPECT_TRUE(lot_parts(empty).value()[0].empty());
    EXPECT_TRUE(lot_parts({}).value().empty());
}

TEST(Trail, an_amount_is_split_by_lot_to_the_milligram) {
    const std::vector<LotPart> parts{{4, 1.0 / 3}, {5, 1.0 / 3}, {6, 1.0 / 3}};
    const auto amounts = amounts_by_lot(milligrams(100), parts);
    ASSERT_TRUE(amounts);
    EXPECT_EQ((*amounts)[0].amount + (*amounts)[1].amount + (*amounts)[2].amount, milligrams(100));
    EXPECT_FALSE(amounts_by_lot(milligrams(100), {}).has_value());
    EXPECT_FALSE(amounts_by_lot(milligrams(-1), parts).has_value());
    const std::vector<LotPart> bad{{4, -0.5}};
    EXPECT_FALSE(amounts_by_lot(milligrams(100), bad).has_value());
}

/// Batches that each take some of what earlier ones left.
std::vector<BatchMaterial> random_trail(std::mt19937_64& random, std::size_t n, std::vector<double>& left) {
    std::uniform_int_distribution<std::int64_t> amount(1'000'000, 30'000'000);
    std::uniform_real_distribution<double> part(0.0, 0.5);
    std::vector<BatchMaterial> batches(n);
    left.assign(n, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        double whole = 0.0;
        for (std::int64_t lot = 0; lot < 2; ++lot) {
            batches[i].lots.push_back({static_cast<std::int64_t>(i) / 3 + lot, Mass{amount(random)}});
            whole += static_cast<double>(batches[i].lots.back().amount.count);
        }
        for (std::size_t back = 1; back <= std::min<std::size_t>(i, 3); ++back) {
            const auto taken = static_cast<std::int64_t>(left[i - back] * part(random));
            batches[i].pails.push_back({i - back, Mass{taken}});
            left[i - back] -= static_cast<double>(taken);
            whole += static_cast<double>(taken);
        }
        left[i] = whole;
    }
    return batches;
}

TEST(TrailProperty, parts_sum_to_one_and_every_lot_is_accounted_for) {
    std::mt19937_64 random(14);
    for (int i = 0; i < 200; ++i) {
        std::vector<double> left;
        const auto batches = random_trail(random, 30, left);
        const auto parts = lot_parts(batches);
        ASSERT_TRUE(parts);
        std::map<std::int64_t, double> used;
        std::map<std::int64_t, double> found;
        for (std::size_t b = 0; b < batches.size(); ++b) {
            double sum = 0.0;
            for (const LotPart& part : (*parts)[b]) {
                sum += part.part;
                found[part.lot] += part.part * left[b]; // what went to strips, stock and losses, not on into pails
            }
            ASSERT_NEAR(sum, 1.0, 1e-12);
            for (const FromLot& input : batches[b].lots)
                used[input.lot] += static_cast<double>(input.amount.count);
        }
        for (const auto& [lot, amount] : used)
            ASSERT_NEAR(found[lot], amount, 1e-9 * amount) << lot;
    }
}

TEST(TrailProperty, forty_generations_and_ten_thousand_bags_share_out_exactly) {
    std::mt19937_64 random(15);
    std::vector<double> left;
    const auto batches = random_trail(random, 40, left);
    const auto parts = lot_parts(batches);
    ASSERT_TRUE(parts);
    Mass total;
    for (std::size_t bag = 0; bag < 10'000; ++bag) {
        const auto amounts = amounts_by_lot(grams(736), (*parts)[bag % 40]);
        ASSERT_TRUE(amounts);
        for (const FromLot& amount : *amounts)
            total += amount.amount;
    }
    EXPECT_EQ(total, kilograms(7360));
}

} // namespace
} // namespace soakbook::maths
