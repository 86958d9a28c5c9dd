// SPDX-License-Identifier: GPL-3.0-or-later
// The mean of a sample, its interval, the acid in a strip.
#include "core/maths/distributions.h"
#include "core/maths/sampling.h"
#include "tests/maths/answers.h"

#include <array>

namespace soakbook::maths {
namespace {

// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2 (critical values of Student's t).
TEST(OutsideWeighing, students_t_from_the_nist_table) {
    EXPECT_THAT(student_quantile(0.975, 4), IsNear(2.776445, 5e-7));
    EXPECT_THAT(student_quantile(0.975, 9), IsNear(2.262157, 5e-7));
    EXPECT_THAT(student_quantile(0.975, 19), IsNear(2.093024, 5e-7));
    // The table's three decimals, further rows (from memory).
    EXPECT_THAT(student_quantile(0.95, 1), IsNear(6.314, 5e-4));
    EXPECT_THAT(student_quantile(0.95, 10), IsNear(1.812, 5e-4));
    EXPECT_THAT(student_quantile(0.99, 10), IsNear(2.764, 5e-4));
    EXPECT_THAT(student_quantile(0.975, 100), IsNear(1.984, 5e-4));
}

// Source: mean +- t s / sqrt(n), NIST/SEMATECH 1.3.5.2; computed by hand for these five weights.
TEST(OutsideWeighing, five_weights_with_their_interval) {
    const std::array weights{grams(6.42), grams(6.55), grams(6.38), grams(6.61), grams(6.49)};
    const auto spread = spread_of(weights);
    ASSERT_TRUE(spread);
    EXPECT_NEAR(spread->mean, 6.4900, 5e-5);
    EXPECT_NEAR(spread->deviation, 0.0935414, 5e-8);
    EXPECT_NEAR(spread->interval.low, 6.37385, 5e-6);
    EXPECT_NEAR(spread->interval.high, 6.60615, 5e-6);
}

// Source: NIST/SEMATECH 1.3.5.2, heat flow meter data ZARR13 (from memory): n 195, mean 9.261460, s 0.022789, 95 %
// limits 9.258242 and 9.264679. Only the summary is published there, so the half-width is checked from it.
TEST(OutsideWeighing, heat_flow_meter_limits) {
    const double t = student_quantile(0.975, 194).value();
    EXPECT_NEAR(t, 1.9723, 5e-5);
    EXPECT_NEAR(9.261460 - t * 0.022789 / std::sqrt(195.0), 9.258242, 1e-6);
    EXPECT_NEAR(9.261460 + t * 0.022789 / std::sqrt(195.0), 9.264679, 1e-6);
}

// Source: conservation of mass; dihydrate to anhydrous by the IUPAC weights.
TEST(OutsideWeighing, acid_in_a_strip) {
    EXPECT_THAT(acid_per_strip(grams(28.90), grams(12.40), percent(40)), Is(grams(6.600)));
}

// Source: common practice, no source.
TEST(OutsideWeighing, ten_strips_from_the_trade) {
    EXPECT_THAT(mean_together(grams(339), 10), Is(grams(33.9)));
    EXPECT_THAT(uptake(grams(34), grams(11)), Is(grams(23)));
    EXPECT_THAT(acid_per_strip(grams(34), grams(11), percent(40)), Is(grams(9.2)));
    EXPECT_THAT(acid_per_strip(grams(33.9), grams(11), percent(40)), Is(grams(9.16)));
}

} // namespace
} // namespace soakbook::maths
