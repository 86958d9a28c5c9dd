// SPDX-License-Identifier: GPL-3.0-or-later
// The bars of the chart: strips by the month of their limit.
#include "tests/work/yards_bench.h"
#include "ui/store/stock_months.h"

namespace soakbook::tests {
namespace {

using ui::MonthState;
using work::BagState;

const maths::Day today = maths::day(2026, 11, 10);

work::BagLine bag(maths::Day use_by, int left, BagState state) {
    work::BagLine line;
    line.use_by = use_by;
    line.left = left;
    line.state = state;
    return line;
}

ui::StockByMonth months(const std::vector<work::BagLine>& bags) {
    return ui::stock_months(bags, today, QLocale::c());
}

} // namespace

TEST(StoreMonths, go_a_year_ahead_with_none_left_out) {
    const auto shown =
        months({bag(maths::day(2027, 3, 1), 80, BagState::ready), bag(maths::day(2027, 3, 31), 60, BagState::ready)});
    ASSERT_EQ(shown.months.size(), 12U);
    EXPECT_EQ(shown.months[0].words, QStringLiteral("November 2026"));
    EXPECT_EQ(shown.months[0].strips, 0);
    EXPECT_EQ(shown.months[4].words, QStringLiteral("March 2027"));
    EXPECT_EQ(shown.months[4].strips, 140);
    EXPECT_EQ(shown.months[4].bags, 2);
    EXPECT_EQ(shown.months[4].state, MonthState::in_date);
    EXPECT_EQ(shown.months[11].words, QStringLiteral("October 2027"));
}

TEST(StoreMonths, a_month_with_strips_past_and_near_has_two_bars) {
    const auto shown = months({bag(maths::day(2026, 11, 3), 12, BagState::past_limit),
                               bag(maths::day(2026, 11, 25), 70, BagState::near_limit)});
    ASSERT_EQ(shown.months.size(), 13U);
    EXPECT_EQ(shown.months[0].strips, 12);
    EXPECT_EQ(shown.months[0].state, MonthState::past);
    EXPECT_EQ(shown.months[1].strips, 70);
    EXPECT_EQ(shown.months[1].state, MonthState::near);
    EXPECT_NE(shown.months[0].words, shown.months[1].words);
}

TEST(StoreMonths, what_is_long_past_stands_in_one_bar_before_the_others) {
    const auto shown = months({bag(maths::day(2024, 1, 3), 5, BagState::past_limit),
                               bag(maths::day(2026, 7, 31), 7, BagState::past_limit),
                               bag(maths::day(2026, 8, 1), 9, BagState::past_limit)});
    EXPECT_EQ(shown.months[0].strips, 12) << "older than three months";
    EXPECT_EQ(shown.months[1].words, QStringLiteral("August 2026"));
    EXPECT_EQ(shown.months[1].strips, 9);
    EXPECT_EQ(shown.months[2].strips, 0) << "September is not left out";
}

TEST(StoreMonths, are_none_without_strips) {
    EXPECT_TRUE(months({}).months.empty());
    EXPECT_TRUE(months({bag(maths::day(2027, 3, 1), 0, BagState::gone)}).months.empty());
}

} // namespace soakbook::tests
