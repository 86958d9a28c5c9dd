// SPDX-License-Identifier: GPL-3.0-or-later
// Level marks and the dial of the tank. 12.5 kg of glycerine at 9.9 L, and the dial pairs 55/52 and 61/55.5, are common
// practice, no source.
#include "bench.h"
#include "core/work/dial_advice.h"
#include "core/work/figures.h"
#include "core/work/level_marks.h"

#include <cmath>

namespace soakbook::tests {

using namespace work;
using maths::celsius;
using maths::kilograms;

TEST(LevelMark, twelve_and_a_half_kilograms_of_glycerine_stand_at_nine_point_nine_litres) {
    const auto marks = glycerine_marks(kilograms(12.5));
    ASSERT_EQ(marks.size(), 4U);
    EXPECT_EQ(marks[1].at, celsius(20));
    EXPECT_EQ(std::round(maths::in_litres(marks[1].volume) * 10), 99);
    // Density by Cheng 2008, Ind. Eng. Chem. Res. 47:3285: 1277 - 0.654 T kg/m3.
    EXPECT_NEAR(maths::in_litres(marks[0].volume), 12.5 / 1.26719, 1e-6);
    EXPECT_NEAR(maths::in_litres(marks[1].volume), 12.5 / 1.26392, 1e-6);
    EXPECT_NEAR(maths::in_litres(marks[3].volume), 12.5 / 1.25738, 1e-6);
    for (const LevelMark& mark : marks) {
        EXPECT_FALSE(mark.is_estimate);
        EXPECT_EQ(mark.density, DensityOf::cheng_2008);
    }
    EXPECT_TRUE(glycerine_marks(-kilograms(1)).empty());
}

TEST(LevelMark, the_warm_liquid_is_an_estimate_and_says_so) {
    // 40 % at 22 C with Cheng's glycerol: 1394.33 kg/m3, computed from 1 / (s / 1653 + (1 - s) / glycerol).
    const auto mark = liquid_mark(kilograms(1), maths::percent(40), celsius(22));
    ASSERT_TRUE(mark);
    EXPECT_NEAR(maths::in_litres(mark->volume), 1 / 1.39433, 2e-6);
    EXPECT_TRUE(mark->is_estimate);
    EXPECT_EQ(mark->density, DensityOf::ideal_volumes);
    EXPECT_FALSE(liquid_mark(kilograms(1), maths::percent(140), celsius(22)));
    EXPECT_FALSE(liquid_mark(kilograms(1), maths::percent(40), celsius(101)));
}

TEST(LevelMark, warm_is_the_middle_of_the_temperatures_wanted) {
    Bench bench;
    EXPECT_FALSE(liquid_mark(bench.book(), kilograms(62.5), maths::percent(40)));
    must(set_figures(bench.book(),
                     {{Figure::heat_low, celsius(50).count, {}}, {Figure::heat_high, celsius(56).count, {}}},
                     on_day(0)));
    EXPECT_EQ(liquid_mark(bench.book(), kilograms(62.5), maths::percent(40))->at, celsius(53));
}

namespace {

/// A tank that was read at these pairs of dial and probe.
struct ReadTank {
    Bench bench;
    BatchId batch = bench.mixed_batch();
    int minute = 0;

    void read(double dial, double probe) {
        ReadingEntry reading;
        reading.batch = batch;
        reading.dial = celsius(dial);
        reading.probe = celsius(probe);
        must(log_reading(bench.book(), reading, on_day(1, 8, minute++)));
    }
    DialAdvice advice(std::optional<double> wanted = std::nullopt) {
        return dial_advice(bench.book(), bench.tank, wanted ? std::optional(celsius(*wanted)) : std::nullopt);
    }
};

} // namespace

TEST(Dial, two_pairs_give_a_range_and_not_a_line) {
    ReadTank tank;
    tank.read(55, 52);
    tank.read(61, 55.5);
    const DialAdvice advice = tank.advice(55);
    ASSERT_EQ(advice.says, DialSays::advised);
    EXPECT_EQ(advice.pairs, 2);
    EXPECT_EQ(advice.offset_low, celsius(3));
    EXPECT_EQ(advice.offset_high, celsius(5.5));
    EXPECT_FALSE(advice.by_line);
    // The smaller offset keeps from overshooting: 55 + 3; the probe will then show 58 - 5.5 to 58 - 3.
    EXPECT_EQ(advice.dial, celsius(58));
    EXPECT_EQ(advice.expected_low, celsius(52.5));
    EXPECT_EQ(advice.expected_high, celsius(55));
    EXPECT_EQ(advice.held_by, DialHeldBy::nothing);
}

TEST(Dial, the_ceiling_is_kept_with_the_smaller_offset) {
    ReadTank tank;
    tank.read(62, 56.5);
    tank.read(63, 60);
    const DialAdvice advice = tank.advice(59);
    ASSERT_EQ(advice.says, DialSays::advised);
    EXPECT_EQ(advice.ceiling, celsius(60));
    EXPECT_EQ(advice.highest_dial, celsius(63)); // 60 + 3
    EXPECT_EQ(advice.dial, celsius(62));
}

TEST(Dial, no_more_than_a_step_beyond_the_dials_seen) {
    ReadTank tank;
    tank.read(55, 52);
    tank.read(61, 55.5);
    const DialAdvice advice = tank.advice(60); // 63 by the offset, but 61 is the highest seen
    EXPECT_EQ(advice.dial, celsius(62));
    EXPECT_EQ(advice.held_by, DialHeldBy::dials_seen);
}

TEST(Dial, four_pairs_give_a_line) {
    ReadTank tank;
    for (const auto& [dial, probe] : {std::pair{52.0, 49.1}, {55.0, 51.9}, {58.0, 55.1}, {61.0, 57.9}})
        tank.read(dial, probe);
    const DialAdvice advice = tank.advice(55);
    ASSERT_EQ(advice.says, DialSays::advised);
    EXPECT_TRUE(advice.by_line);
    EXPECT_NEAR(maths::in_celsius(advice.dial), 58.0, 0.2);
    EXPECT_LT(advice.expected_low, celsius(55));
    EXPECT_GT(advice.expected_high, celsius(55));
}

TEST(Dial, why_there_is_no_advice) {
    ReadTank tank;
    EXPECT_EQ(tank.advice(55).says, DialSays::no_pairs);
    tank.read(55, 52);
    EXPECT_EQ(tank.advice().says, DialSays::nothing_wanted);
    EXPECT_EQ(tank.advice(61).says, DialSays::above_ceiling);
    EXPECT_EQ(dial_advice(tank.bench.book(), VesselId{999}, celsius(55)).says, DialSays::no_pairs);
    // 70 on the dial gave 69: one step below it is 69, which would give 68.
    ReadTank hot;
    hot.read(70, 69);
    EXPECT_EQ(hot.advice(55).says, DialSays::nothing_safe);
}

TEST(Dial, while_the_tank_warms_its_readings_do_not_count) {
    ReadTank tank;
    tank.read(60, 30);
    tank.read(55, 52);
    EXPECT_EQ(tank.advice(55).offset_high, celsius(30));
    must(set_figures(tank.bench.book(),
                     {{Figure::heat_low, celsius(50).count, {}}, {Figure::heat_high, celsius(56).count, {}}},
                     on_day(1, 9)));
    const DialAdvice advice = tank.advice();
    EXPECT_EQ(advice.pairs, 1);
    EXPECT_EQ(advice.offset_high, celsius(3));
    EXPECT_EQ(advice.wanted, celsius(53));
    EXPECT_EQ(advice.dial, celsius(56));
}

} // namespace soakbook::tests
