// SPDX-License-Identifier: GPL-3.0-or-later
// Batch beside batch.
#include "bench.h"
#include "core/work/batch_limits.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;

namespace {

/// Batches of 2 kg, a week apart, of ten strips each that took up so many grams.
void batches_that_took_up(Bench& bench, const std::vector<double>& uptakes) {
    int n = 0;
    for (const double taken : uptakes) {
        SoakEntry soak;
        soak.batch = bench.clear_batch(n, kilograms(2));
        soak.lot = bench.strips;
        soak.bins.push_back({bench.bin, 10, std::nullopt});
        const SoakId id = must(start_soak(bench.book(), soak, on_day(n + 1, 10))).at(0);
        WeighEntry weighing;
        weighing.soak = id;
        weighing.strips = 10;
        weighing.total = grams(10 * (11 + taken));
        must(log_weighing(bench.book(), weighing, on_day(n + 2, 10), {Why::heavier_than_possible}));
        must(end_soak(bench.book(), id, std::nullopt, on_day(n + 2, 10)));
        n += 7;
    }
}

} // namespace

TEST(BatchLimits, agree_with_the_flow_rates_of_the_handbook) {
    // NIST/SEMATECH e-Handbook 6.3.2.2, flow rates (data from memory): mean 50.81, mean moving range 1.87778; its
    // limits 45.8159 and 55.8041 go by d2 rounded to 1.128, here d2 = 1.128379.
    Bench bench;
    batches_that_took_up(bench, {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
    const BatchChart chart = batch_chart(bench.book(), BatchMeasure::taken_up, bench.strip_kind);
    ASSERT_EQ(chart.points.size(), 10U);
    EXPECT_EQ(chart.points.front().value, grams(49.6).count);
    ASSERT_TRUE(chart.limits);
    EXPECT_EQ(chart.limits->mean, 50'810);
    EXPECT_EQ(chart.limits->mean_range, 1'878);
    EXPECT_NEAR(static_cast<double>(chart.limits->lower), 50'810 - 3 * 1'877.78 / 1.128379, 1);
    EXPECT_NEAR(static_cast<double>(chart.limits->upper), 50'810 + 3 * 1'877.78 / 1.128379, 1);
    EXPECT_NEAR(static_cast<double>(chart.limits->upper), 55'804.1, 3); // the rounded d2 moves it by 1.7
    for (const BatchPoint& point : chart.points)
        EXPECT_TRUE(point.stands_out.empty());
}

TEST(BatchLimits, the_eighth_in_a_row_on_one_side_stands_out) {
    Bench bench;
    batches_that_took_up(bench, {22, 24, 22, 21, 23, 23.2, 23, 23.1, 23, 23.2, 23, 23.1});
    const BatchChart chart = batch_chart(bench.book(), BatchMeasure::taken_up, bench.strip_kind);
    ASSERT_EQ(chart.points.size(), 12U);
    EXPECT_EQ(chart.points.back().stands_out, std::vector{BatchSignal::run_of_eight});
    EXPECT_TRUE(chart.points[10].stands_out.empty());
}

TEST(BatchLimits, a_batch_beyond_them_stands_out) {
    Bench bench;
    batches_that_took_up(bench, {23, 23.1, 23, 23.1, 23, 23.1, 23, 26});
    const BatchChart chart = batch_chart(bench.book(), BatchMeasure::taken_up, bench.strip_kind);
    EXPECT_EQ(chart.points.back().stands_out, std::vector{BatchSignal::outside});
}

TEST(BatchLimits, two_batches_have_none_yet) {
    Bench bench;
    batches_that_took_up(bench, {23, 22.9});
    const BatchChart chart = batch_chart(bench.book(), BatchMeasure::acid_per_strip, bench.strip_kind);
    ASSERT_EQ(chart.points.size(), 2U);
    EXPECT_EQ(chart.points[0].value, grams(9.2).count); // 23 g at 40 %
    EXPECT_FALSE(chart.limits);
    EXPECT_TRUE(batch_chart(bench.book(), BatchMeasure::taken_up, StripKindId{999}).points.empty());
}

TEST(BatchLimits, figures_come_in_order_of_the_day_and_unexplained_only_once_closed) {
    Bench bench;
    const BatchId later = bench.clear_batch(20);
    const BatchId batch = bench.bagged_batch(0);
    auto figures = batch_figures(bench.book());
    ASSERT_EQ(figures.size(), 2U);
    EXPECT_EQ(figures[0].batch, batch);
    EXPECT_EQ(figures[0].taken_up, grams(22.9));
    EXPECT_EQ(figures[0].acid_per_strip, grams(9.16));
    EXPECT_FALSE(figures[0].unexplained);
    EXPECT_EQ(figures[1].batch, later);
    EXPECT_FALSE(figures[1].taken_up || figures[1].acid_per_strip);
    must(close_batch(bench.book(), batch, on_day(21), {Why::loss_unexplained}));
    figures = batch_figures(bench.book());
    // 62.5 kg less 960 x 22.9 g, of 62.5 kg
    EXPECT_EQ(figures[0].unexplained, maths::ppm(648'256));
}

} // namespace soakbook::tests
