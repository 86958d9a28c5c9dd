// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/line_fit.h"
#include "core/maths/thermostat.h"
#include "tests/maths/answers.h"

#include <array>
#include <limits>
#include <random>
#include <vector>

namespace soakbook::maths {
namespace {

const std::vector<DialPair> two{{celsius(55), celsius(52)}, {celsius(61), celsius(55.5)}};
const std::vector<DialPair> five{{celsius(50), celsius(47.1)},
                                 {celsius(54), celsius(50.6)},
                                 {celsius(58), celsius(53.9)},
                                 {celsius(62), celsius(57.2)},
                                 {celsius(64), celsius(58.8)}};

DialWish wish(double wanted) {
    return {celsius(wanted), celsius(60), celsius(1)};
}

// Common practice, no source.
TEST(Thermostat, two_pairs_give_a_range_and_the_smaller_offset_keeps_the_ceiling) {
    EXPECT_TRUE(offsets(two) == (OffsetRange{2, celsius(3), celsius(5.5)}));
    const auto advice = dial_for(two, wish(54));
    ASSERT_TRUE(advice);
    EXPECT_FALSE(advice->by_line);
    EXPECT_EQ(advice->dial, celsius(57));
    EXPECT_EQ(advice->limit, DialLimit::none);
    EXPECT_EQ(advice->expected, (TemperatureRange{celsius(51.5), celsius(54)}));
    EXPECT_EQ(advice->highest_dial, celsius(62)); // one step beyond the dials seen
}

TEST(Thermostat, no_advice_goes_more_than_a_step_beyond_the_dials_seen) {
    const auto hotter = dial_for(two, wish(60));
    ASSERT_TRUE(hotter);
    EXPECT_EQ(hotter->dial, celsius(62));
    EXPECT_EQ(hotter->limit, DialLimit::dials_seen);
    const auto colder = dial_for(two, wish(20));
    ASSERT_TRUE(colder);
    EXPECT_EQ(colder->dial, celsius(54));
    EXPECT_EQ(colder->limit, DialLimit::dials_seen);
}

TEST(Thermostat, the_ceiling_is_kept_with_the_smallest_offset) {
    const std::vector<DialPair> hot{{celsius(64), celsius(60.5)}, {celsius(65), celsius(61)}};
    const auto advice = dial_for(hot, wish(60));
    ASSERT_TRUE(advice);
    EXPECT_EQ(advice->highest_dial, celsius(63.5));
    EXPECT_EQ(advice->dial, celsius(63.5));
    EXPECT_LE(advice->expected.high, celsius(60));
}

TEST(Thermostat, from_four_pairs_on_the_line_is_used) {
    const auto advice = dial_for(five, wish(55));
    ASSERT_TRUE(advice);
    EXPECT_TRUE(advice->by_line);
    EXPECT_NEAR(in_celsius(advice->dial), 57.6 + 1.48 / (109.44 / 131.2), 0.005);
    EXPECT_LT(advice->expected.low, celsius(55));
    EXPECT_GT(advice->expected.high, celsius(55));
    EXPECT_LE(advice->highest_dial, celsius(65));
}

TEST(Thermostat, four_pairs_at_one_dial_are_no_line) {
    const std::vector<DialPair> same(4, {celsius(58), celsius(54)});
    const auto advice = dial_for(same, wish(54));
    ASSERT_TRUE(advice);
    EXPECT_FALSE(advice->by_line);
    EXPECT_EQ(advice->dial, celsius(58));
}

TEST(Thermostat, no_pairs_no_advice) {
    EXPECT_THAT(dial_for({}, wish(54)), Refuses(Unanswerable::too_few));
    EXPECT_THAT(offsets({}), Refuses(Unanswerable::too_few));
}

TEST(Thermostat, refuses_wishes_that_cannot_be) {
    EXPECT_THAT(dial_for(two, {celsius(61), celsius(60), celsius(1)}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(dial_for(two, {celsius(50), celsius(60), Temperature{}}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(dial_for(two, {celsius(5000), celsius(6000), celsius(1)}), Refuses(Unanswerable::out_of_range));
    const std::vector<DialPair> absurd{{celsius(55), celsius(5000)}};
    EXPECT_THAT(dial_for(absurd, wish(50)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(dial_for(two, {celsius(40), celsius(45), celsius(1)}), Refuses(Unanswerable::no_choice_fits));
}

TEST(Thermostat, over_the_ceiling_is_over_by_the_smallest_step) {
    EXPECT_FALSE(is_over_ceiling(celsius(60), celsius(60)));
    EXPECT_TRUE(is_over_ceiling(celsius(60.01), celsius(60)));
}

TEST(ThermostatProperty, advice_never_expects_more_than_the_ceiling) {
    std::mt19937_64 random(60);
    std::uniform_int_distribution<std::int64_t> dial(4'000, 7'000);
    std::normal_distribution<double> noise(0.0, 40.0);
    std::uniform_int_distribution<std::size_t> how_many(1, 12);
    std::uniform_int_distribution<std::int64_t> wanted(3'000, 6'000);
    int advised = 0;
    for (int i = 0; i < 5'000; ++i) {
        std::vector<DialPair> pairs(how_many(random));
        for (DialPair& pair : pairs) {
            pair.dial = Temperature{dial(random)};
            pair.probe = Temperature{pair.dial.count * 8 / 10 + 700 + std::llround(noise(random))};
        }
        const auto advice = dial_for(pairs, {Temperature{wanted(random)}, celsius(60), celsius(1)});
        if (!advice)
            continue;
        ++advised;
        ASSERT_LE(advice->dial, advice->highest_dial);
        ASSERT_LE(advice->expected.low, advice->expected.high);
        Temperature highest_seen = pairs[0].dial;
        Temperature lowest_seen = pairs[0].dial;
        for (const DialPair& pair : pairs) {
            highest_seen = std::max(highest_seen, pair.dial);
            lowest_seen = std::min(lowest_seen, pair.dial);
        }
        ASSERT_LE(advice->dial, highest_seen + celsius(1));
        ASSERT_GE(advice->dial, lowest_seen - celsius(1));
        ASSERT_LE(advice->expected.high, celsius(60));
    }
    EXPECT_GT(advised, 3'000);
}

TEST(LineFit, refuses_what_is_no_line) {
    const std::array steep{Point{1, 1}, Point{1, 2}, Point{1, 3}};
    EXPECT_THAT(Line::through(steep), Refuses(Unanswerable::zero_below_the_line));
    const std::array few{Point{1, 1}, Point{2, 2}};
    EXPECT_THAT(Line::through(few), Refuses(Unanswerable::too_few));
    const std::array bad{Point{1, 1}, Point{2, std::nan("")}, Point{3, 1}};
    EXPECT_THAT(Line::through(bad), Refuses(Unanswerable::not_a_quantity));
    const std::array huge{Point{1e300, 1}, Point{-1e300, 2}, Point{0, 1e308}};
    EXPECT_FALSE(Line::through(huge).has_value());
}

} // namespace
} // namespace soakbook::maths
