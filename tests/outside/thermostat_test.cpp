// SPDX-License-Identifier: GPL-3.0-or-later
// The straight line and its prediction.
#include "core/maths/line_fit.h"
#include "core/maths/thermostat.h"
#include "tests/maths/answers.h"

#include <array>
#include <vector>

namespace soakbook::maths {
namespace {

// Source: Anscombe 1973, Am. Stat. 27:17, first data set (from memory): y = 3.00 + 0.500 x, residual standard
// error 1.237.
TEST(OutsideThermostat, anscombes_first_line) {
    const std::array points{Point{10, 8.04},  Point{8, 6.95},  Point{13, 7.58}, Point{9, 8.81},
                            Point{11, 8.33},  Point{14, 9.96}, Point{6, 7.24},  Point{4, 4.26},
                            Point{12, 10.84}, Point{7, 4.82},  Point{5, 5.68}};
    const auto line = Line::through(points);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->offset(), 3.0001, 5e-5);
    EXPECT_NEAR(line->slope(), 0.5001, 5e-5);
    EXPECT_NEAR(line->residual_deviation(), 1.237, 5e-4);
    // The prediction at the mean of x (9) by the textbook formula: +- t(0.975, 9) s sqrt(1 + 1/11).
    const auto prediction = line->prediction(9.0);
    ASSERT_TRUE(prediction);
    EXPECT_NEAR(prediction->high - 7.500909, 2.262157 * 1.236603 * std::sqrt(12.0 / 11.0), 1e-5);
}

// Source: NIST StRD, linear regression, Norris: offset -0.262323073774029, slope 1.00211681802045, residual standard
// deviation 0.884796396144373 (certified; figures and the 36 points from memory).
TEST(OutsideThermostat, nist_norris) {
    const std::array x{0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                       0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                       0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
    const std::array y{0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                       0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                       0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
    std::vector<Point> points;
    for (std::size_t i = 0; i < x.size(); ++i)
        points.push_back({x[i], y[i]});
    const auto line = Line::through(points);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->offset(), -0.262323073774029, 1e-11);
    EXPECT_NEAR(line->slope(), 1.00211681802045, 1e-13);
    EXPECT_NEAR(line->residual_deviation(), 0.884796396144373, 1e-12);
}

// Source: common practice, no source: a dial at 55 gave 52 C, at 61 gave 55.5 C; the smaller offset keeps the ceiling.
TEST(OutsideThermostat, two_pairs_from_the_trade) {
    const std::array pairs{DialPair{celsius(55), celsius(52)}, DialPair{celsius(61), celsius(55.5)}};
    EXPECT_THAT(offsets(pairs), Is(OffsetRange{2, celsius(3), celsius(5.5)}));
    const auto advice = dial_for(pairs, {celsius(55), celsius(60), celsius(1)});
    ASSERT_TRUE(advice);
    EXPECT_FALSE(advice->by_line);
    EXPECT_EQ(advice->dial, celsius(58));
}

} // namespace
} // namespace soakbook::maths
