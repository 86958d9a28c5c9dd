// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/charts_limits.h"
#include "tests/maths/answers.h"

#include <array>
#include <limits>

namespace soakbook::maths {
namespace {

TEST(Chart, an_outlier_is_marked) {
    const std::array figures{9.1, 9.2, 9.15, 12.0, 9.1};
    EXPECT_THAT(chart_marks(figures, 9.15, 8.5, 9.8).value(), testing::ElementsAre(ChartMark{3, ChartSignal::outside}));
}

TEST(Chart, the_eighth_in_a_row_on_one_side_is_marked_and_each_after_it) {
    std::vector<double> figures(9, 1.0);
    const auto marks = chart_marks(figures, 0.0, -3, 3).value();
    EXPECT_THAT(marks,
                testing::ElementsAre(ChartMark{7, ChartSignal::run_of_eight}, ChartMark{8, ChartSignal::run_of_eight}));
    figures[4] = 0.0; // on the mean: the run ends
    EXPECT_THAT(chart_marks(figures, 0.0, -3, 3).value(), testing::IsEmpty());
    figures[4] = -1.0;
    EXPECT_THAT(chart_marks(figures, 0.0, -3, 3).value(), testing::IsEmpty());
}

TEST(Chart, refuses_what_makes_no_chart) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const std::array one{9.1};
    const std::array bad{9.1, nan};
    EXPECT_FALSE(individuals_limits(one).has_value());
    EXPECT_FALSE(individuals_limits(bad).has_value());
    EXPECT_FALSE(individuals_limits({}).has_value());
    const std::array two{9.1, 9.2};
    EXPECT_FALSE(individuals_limits(two, 0.0).has_value());
    EXPECT_FALSE(subgroup_constants(1).has_value());
    EXPECT_FALSE(subgroup_constants(1001).has_value());
    const std::array subgroups{Subgroup{9.1, 0.1}, Subgroup{9.2, -0.1}};
    EXPECT_FALSE(subgroup_limits(subgroups, 10).has_value());
    EXPECT_FALSE(chart_marks(two, 9.0, 9.5, 8.0).has_value());
    EXPECT_FALSE(chart_marks(bad, 9.0, 8.0, 10.0).has_value());
}

TEST(Chart, batches_all_alike_have_limits_on_the_mean) {
    const std::array same{9.2, 9.2, 9.2};
    const auto limits = individuals_limits(same);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->lower, 9.2, 1e-12);
    EXPECT_NEAR(limits->upper, 9.2, 1e-12);
}

} // namespace
} // namespace soakbook::maths
