// SPDX-License-Identifier: GPL-3.0-or-later
// The curve through the weighings of a bin. Checked against NIST StRD Misra1a and Bates & Watts 1988; the strips of 11
// g that take up 23 g are common practice, no source.
#include "bench.h"
#include "core/work/figures.h"
#include "core/work/soak_curve.h"

#include <cmath>

namespace soakbook::tests {

using namespace work;
using maths::grams;

namespace {

struct HourAndUptake {
    double hours = 0;
    double grams_taken = 0;
};
/// A bin of dry strips of 11 g, target 34 +- 0.5 g, with those weighings.
SoakLine bin_with(const std::vector<HourAndUptake>& weighings) {
    SoakLine soak;
    soak.dry = grams(11);
    soak.target = grams(34);
    soak.tolerance = grams(0.5);
    soak.started = moment(1, 10);
    for (const auto& [hours, taken] : weighings) {
        WeighLine line;
        line.hours = hours;
        line.strips = 1;
        line.total = grams(11 + taken);
        soak.weighings.push_back(line);
    }
    return soak;
}

/// 24 g in the end, a tenth of the way an hour, off by so much in turn.
std::vector<HourAndUptake> tenth_an_hour(double off = 0.05) {
    std::vector<HourAndUptake> weighings;
    for (const double hours : {6.0, 12.0, 20.0, 30.0, 40.0}) {
        weighings.push_back({hours, 24 * (1 - std::exp(-0.1 * hours)) + off});
        off = -off;
    }
    return weighings;
}

} // namespace

TEST(SoakCurve, agrees_with_the_certified_values_of_misra1a) {
    // NIST Statistical Reference Datasets, nonlinear regression, Misra1a: certified b1, b2, their standard deviations
    // and the residual standard deviation. Weights are kept to a milligram, hence the tolerance of b1.
    const SoakCurve curve = soak_curve(bin_with({{77.6, 10.07},
                                                 {114.9, 14.73},
                                                 {141.1, 17.94},
                                                 {190.8, 23.93},
                                                 {239.9, 29.61},
                                                 {289.0, 35.18},
                                                 {332.8, 40.02},
                                                 {378.4, 44.82},
                                                 {434.8, 50.76},
                                                 {477.3, 55.05},
                                                 {536.8, 61.01},
                                                 {593.1, 66.40},
                                                 {689.1, 75.47},
                                                 {760.0, 81.78}}));
    ASSERT_EQ(curve.says, SoakCurveSays::fitted);
    EXPECT_EQ(curve.weighings, 14);
    EXPECT_NEAR(maths::in_grams(curve.fit->plateau - curve.dry), 238.94212918, 0.0006);
    EXPECT_NEAR(maths::in_grams(curve.fit->plateau_error), 2.7070075241, 0.0006);
    EXPECT_NEAR(curve.fit->rate, 5.5015643181e-4, 5.5e-10);
    EXPECT_NEAR(curve.fit->rate_error, 7.2668688436e-6, 7.3e-12);
    EXPECT_NEAR(maths::in_grams(curve.fit->residual_deviation), 0.1018787633, 0.0006);
}

TEST(SoakCurve, agrees_with_bates_and_watts) {
    // Bates & Watts 1988, Nonlinear Regression Analysis, A1.4 (biochemical oxygen demand).
    const SoakCurve curve = soak_curve(bin_with({{1, 8.3}, {2, 10.3}, {3, 19.0}, {4, 16.0}, {5, 15.6}, {7, 19.8}}));
    EXPECT_EQ(curve.says, SoakCurveSays::target_above_plateau); // 19.14 g of the 23 g wanted
    ASSERT_TRUE(curve.fit);
    EXPECT_NEAR(maths::in_grams(curve.fit->plateau - curve.dry), 19.14257529, 0.0006);
    EXPECT_NEAR(curve.fit->rate, 0.53109138, 1e-6);
    EXPECT_NEAR(curve.fit->rate_error, 0.20308210, 1e-6);
    EXPECT_FALSE(curve.fit->target);
}

TEST(SoakCurve, tells_the_hour_of_the_target_and_of_the_least_good_weight) {
    const SoakLine soak = bin_with(tenth_an_hour(0.0));
    const SoakCurve curve = soak_curve(soak);
    ASSERT_EQ(curve.says, SoakCurveSays::fitted);
    ASSERT_TRUE(curve.fit->target && curve.fit->least);
    // 23 g of 24 g at a rate of 0.1: ln 24 / 0.1 hours; 22.5 g: ln 16 / 0.1 hours.
    EXPECT_NEAR(curve.fit->target->hours, std::log(24.0) / 0.1, 0.02);
    EXPECT_NEAR(curve.fit->least->hours, std::log(16.0) / 0.1, 0.02);
    EXPECT_NEAR(maths::hours_between(soak.started, curve.fit->target->at), curve.fit->target->hours, 1e-6);
    EXPECT_EQ(curve.fit->target->at.offset_minutes, soak.started.offset_minutes);
    EXPECT_GT(curve.fit->r_squared, 0.9999);
}

TEST(SoakCurve, an_interval_and_the_band_hold_what_they_are_of) {
    const SoakCurve curve = soak_curve(bin_with(tenth_an_hour()));
    ASSERT_TRUE(curve.fit && curve.fit->target);
    const WeightReached& target = *curve.fit->target;
    EXPECT_LT(target.low_hours, target.hours);
    EXPECT_GT(target.high_hours, target.hours);
    EXPECT_TRUE(target.low_at < target.at && target.at < target.high_at);
    ASSERT_GT(curve.fit->points.size(), 10U);
    EXPECT_EQ(curve.fit->points.front().hours, 0.0);
    EXPECT_EQ(curve.fit->points.front().weight, grams(11));
    EXPECT_NEAR(curve.fit->points.back().hours, std::max(40.0, target.hours), 1e-9);
    for (const CurvePoint& point : curve.fit->points) {
        EXPECT_LE(point.low, point.weight);
        EXPECT_GE(point.high, point.weight);
        EXPECT_GE(point.low, grams(11));
    }
}

TEST(SoakCurve, goes_on_to_the_target_hour_but_never_beyond_three_times_the_last_weighing) {
    std::vector<HourAndUptake> early = tenth_an_hour(0.0);
    early.resize(3); // to 20 hours; the target is reached at 31.8
    const SoakCurve curve = soak_curve(bin_with(early));
    ASSERT_EQ(curve.says, SoakCurveSays::fitted);
    EXPECT_NEAR(curve.fit->points.back().hours, curve.fit->target->hours, 1e-9);
    early = {{1, 24 * (1 - std::exp(-0.1))}, {2, 24 * (1 - std::exp(-0.2))}, {3, 24 * (1 - std::exp(-0.3))}};
    const SoakCurve cut = soak_curve(bin_with(early));
    ASSERT_TRUE(cut.fit);
    ASSERT_FALSE(cut.fit->points.empty());
    EXPECT_NEAR(cut.fit->points.back().hours, 9.0, 1e-9);
}

TEST(SoakCurve, says_in_so_many_words_why_there_is_none) {
    const auto says = [](const std::vector<HourAndUptake>& weighings) {
        const SoakCurve curve = soak_curve(bin_with(weighings));
        EXPECT_FALSE(curve.fit);
        return curve.says;
    };
    EXPECT_EQ(says({}), SoakCurveSays::too_few);
    EXPECT_EQ(says({{6, 10}, {12, 15}}), SoakCurveSays::too_few);
    EXPECT_EQ(says({{6, 22}, {12, 20}, {18, 18}}), SoakCurveSays::no_rise);
    EXPECT_EQ(says({{5, 5}, {10, 10}, {15, 15}}), SoakCurveSays::plateau_not_in_sight);
    EXPECT_EQ(says({{20, 23.01}, {30, 22.99}, {40, 23.02}}), SoakCurveSays::all_on_plateau);
}

TEST(SoakCurve, comes_from_what_was_weighed_and_leaves_out_what_was_made_void) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    const SoakId soak = bench.soaks_of(batch).at(0);
    int at = 0;
    const std::pair<int, int> times[] = {{1, 16}, {1, 22}, {2, 6}, {2, 16}, {3, 2}}; // 6, 12, 20, 30, 40 hours
    for (const auto& [hours, taken] : tenth_an_hour()) {
        WeighEntry entry;
        entry.soak = soak;
        entry.strips = 10;
        entry.total = grams(10 * (11 + taken));
        must(log_weighing(bench.book(), entry, on_day(times[at].first, times[at].second)));
        ++at;
    }
    const SoakCurve curve = soak_curve(bench.view(batch).soaks.at(0));
    ASSERT_EQ(curve.says, SoakCurveSays::fitted);
    EXPECT_EQ(curve.weighings, 5);
    EXPECT_NEAR(maths::in_grams(curve.fit->plateau), 35.0, 0.3);
    EXPECT_TRUE(moment(2, 15) < curve.fit->target->at && curve.fit->target->at < moment(2, 21));
    for (std::size_t i = 0; i < 3; ++i)
        must(void_weighing(bench.book(), bench.view(batch).soaks.at(0).weighings.at(0).id,
                           because(QStringLiteral("other bin"), 3, 3)));
    EXPECT_EQ(soak_curve(bench.view(batch).soaks.at(0)).says, SoakCurveSays::too_few);
}

TEST(SoakCurve, a_cold_room_is_hinted_at_with_how_many_times_as_long) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    SoakLine soak = bench.view(batch).soaks.at(0);
    soak.room = maths::celsius(15);
    EXPECT_FALSE(cold_hint(bench.book(), soak)); // no figure said
    must(set_figures(bench.book(), {{Figure::room_low, maths::celsius(22).count, {}}}, on_day(1)));
    const auto hint = cold_hint(bench.book(), soak);
    ASSERT_TRUE(hint);
    EXPECT_EQ(hint->room, maths::celsius(15));
    EXPECT_EQ(hint->usual, maths::celsius(22));
    // Viscosities of pure glycerol at 15 and 22 C by Cheng 2008, Ind. Eng. Chem. Res. 47:3285.
    ASSERT_TRUE(hint->times_as_long);
    EXPECT_NEAR(*hint->times_as_long, 1.93548, 0.00001);
    soak.room = maths::celsius(-5);
    EXPECT_FALSE(cold_hint(bench.book(), soak)->times_as_long);
    soak.room = maths::celsius(22);
    EXPECT_FALSE(cold_hint(bench.book(), soak));
    soak.room.reset();
    EXPECT_FALSE(cold_hint(bench.book(), soak));
}

} // namespace soakbook::tests
