// SPDX-License-Identifier: GPL-3.0-or-later
// How many more strips to weigh. The spread is that of the worked sample 6.42 6.55 6.38 6.61 6.49 (s 0.0935414,
// computed by the formula of NIST/SEMATECH e-Handbook 1.3.5.2), moved to the weights of soaked strips.
#include "bench.h"
#include "core/work/more_to_weigh.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;

namespace {

constexpr double sample_deviation = 0.0935414;

struct OneBin {
    Bench bench;
    BatchId batch = bench.soaked_batch(0, 1);
    SoakId soak = bench.soaks_of(batch).at(0);

    /// The worked sample with its mean at `mean` grams.
    WeighEntry one_by_one(double mean) const {
        WeighEntry entry;
        entry.soak = soak;
        for (const double off : {-0.07, 0.06, -0.11, 0.12, 0.0})
            entry.singles.push_back(grams(mean + off));
        return entry;
    }
    WeighEntry together(int strips, double mean) const {
        WeighEntry entry;
        entry.soak = soak;
        entry.strips = strips;
        entry.total = grams(strips * mean);
        return entry;
    }
};

} // namespace

TEST(Sample, one_by_one_is_settled_when_the_whole_interval_lies_on_one_side) {
    OneBin s;
    const MoreToWeigh on_target = must(more_to_weigh(s.bench.book(), s.one_by_one(34.35)));
    EXPECT_EQ(on_target.says, SampleSays::settled);
    EXPECT_EQ(on_target.verdict, WeighVerdict::on_target);
    EXPECT_FALSE(on_target.learned);
    ASSERT_TRUE(on_target.spread && on_target.low);
    EXPECT_NEAR(on_target.spread->deviation, sample_deviation, 1e-6);
    // t(0.975) of 4 degrees 2.776445, NIST/SEMATECH e-Handbook 1.3.6.7.2: half-width 0.11615 g.
    EXPECT_NEAR(maths::in_grams(*on_target.low), 34.35 - 0.11615, 0.0006);
    EXPECT_NEAR(maths::in_grams(*on_target.high), 34.35 + 0.11615, 0.0006);
    EXPECT_EQ(must(more_to_weigh(s.bench.book(), s.one_by_one(33.3))).verdict, WeighVerdict::light);
    EXPECT_EQ(must(more_to_weigh(s.bench.book(), s.one_by_one(34.7))).verdict, WeighVerdict::heavy);
}

TEST(Sample, across_a_limit_it_says_how_many_more) {
    OneBin s;
    // 0.1 g below the limit of 34.5 g: 5 strips reach 0.116 g, 6 strips 2.570582 s / sqrt(6) = 0.0982 g (t of 5
    // degrees, same table).
    const MoreToWeigh sample = must(more_to_weigh(s.bench.book(), s.one_by_one(34.40)));
    EXPECT_EQ(sample.says, SampleSays::weigh_more);
    EXPECT_EQ(sample.verdict, WeighVerdict::weigh_more);
    EXPECT_EQ(sample.more, 1);
    const MoreToWeigh near = must(more_to_weigh(s.bench.book(), s.one_by_one(34.5)));
    EXPECT_EQ(near.says, SampleSays::too_near_a_limit);
    EXPECT_FALSE(near.more);
}

TEST(Sample, together_it_needs_the_spread_of_that_kind_and_lot) {
    OneBin s;
    const MoreToWeigh blind = must(more_to_weigh(s.bench.book(), s.together(10, 34.45)));
    EXPECT_EQ(blind.says, SampleSays::no_spread_known);
    EXPECT_FALSE(blind.more || blind.spread || blind.low);
    must(log_weighing(s.bench.book(), s.one_by_one(33), on_day(2, 8)));
    const MoreToWeigh sample = must(more_to_weigh(s.bench.book(), s.together(10, 34.45)));
    EXPECT_EQ(sample.says, SampleSays::weigh_more);
    EXPECT_TRUE(sample.learned);
    // (2.776445 x 0.0935414 / 0.05)^2 = 26.98: 27 strips, 17 more than the ten.
    EXPECT_EQ(sample.more, 17);
    EXPECT_EQ(must(more_to_weigh(s.bench.book(), s.together(10, 34.0))).says, SampleSays::settled);
}

TEST(Sample, a_weighing_in_the_workbook_is_judged_like_the_form) {
    OneBin s;
    must(log_weighing(s.bench.book(), s.one_by_one(33), on_day(2, 8)));
    must(log_weighing(s.bench.book(), s.together(10, 34.45), on_day(2, 10)));
    const auto weighings = s.bench.view(s.batch).soaks.at(0).weighings;
    EXPECT_EQ(must(more_to_weigh(s.bench.book(), weighings.at(0).id)).says, SampleSays::settled);
    EXPECT_EQ(must(more_to_weigh(s.bench.book(), weighings.at(1).id)).more, 17);
    must(void_weighing(s.bench.book(), weighings.at(1).id, because(QStringLiteral("other bin"), 2, 11)));
    EXPECT_TRUE(refused(more_to_weigh(s.bench.book(), weighings.at(1).id), Why::not_found));
    EXPECT_TRUE(refused(more_to_weigh(s.bench.book(), WeighEntry{}), Why::missing));
}

TEST(Sample, spreads_are_pooled_over_weighings_and_kept_apart_by_lot) {
    OneBin s;
    EXPECT_FALSE(known_spread(s.bench.book(), s.bench.strip_kind, s.bench.strips));
    must(log_weighing(s.bench.book(), s.one_by_one(30), on_day(2, 8)));
    must(log_weighing(s.bench.book(), s.one_by_one(33), on_day(2, 9)));
    const auto known = known_spread(s.bench.book(), s.bench.strip_kind, s.bench.strips);
    ASSERT_TRUE(known);
    // Twice the same spread about two means is that spread, of twice the degrees of freedom.
    EXPECT_NEAR(known->deviation, sample_deviation, 1e-6);
    EXPECT_EQ(known->strips, 10);
    EXPECT_EQ(known->degrees, 8);
    EXPECT_EQ(known->weighings, 2);
    EXPECT_FALSE(known_spread(s.bench.book(), s.bench.strip_kind, LotId{999}));
    EXPECT_TRUE(known_spread(s.bench.book(), s.bench.strip_kind, std::nullopt));
    EXPECT_FALSE(known_spread(s.bench.book(), StripKindId{999}, std::nullopt));
    const WeighInId first = s.bench.view(s.batch).soaks.at(0).weighings.at(0).id;
    must(void_weighing(s.bench.book(), first, because(QStringLiteral("dropped one"), 2, 10)));
    EXPECT_EQ(known_spread(s.bench.book(), s.bench.strip_kind, s.bench.strips)->strips, 5);
}

TEST(Sample, strips_out_of_a_bag_count_to_the_lot_of_their_bin) {
    Bench bench;
    const BatchId batch = bench.bagged_batch(0, 1);
    WeighEntry entry;
    entry.bag = bench.bags_of(batch).at(0);
    entry.singles = {grams(33.8), grams(34.0), grams(34.2)};
    must(log_weighing(bench.book(), entry, on_day(9)));
    const auto known = known_spread(bench.book(), bench.strip_kind, bench.strips);
    ASSERT_TRUE(known);
    EXPECT_NEAR(known->deviation, 0.2, 1e-9);
    entry.singles.clear();
    entry.strips = 10;
    entry.total = grams(344.5);
    EXPECT_TRUE(must(more_to_weigh(bench.book(), entry)).learned);
}

} // namespace soakbook::tests
