// SPDX-License-Identifier: GPL-3.0-or-later
// Bins that must be flooded. 62.5 kg make 960 strips in two bins of 480 and leave at most 40.42 kg: common practice, no
// source. The flood mass of 31.25 kg a bin is invented for the arithmetic.
#include "bench.h"
#include "core/work/bin_yield.h"

namespace soakbook::tests {

using namespace work;
using maths::kilograms;

TEST(BinYield, two_bins_at_once_or_three_one_after_another) {
    Bench bench;
    // The bench's bins say 30 kg; what was measured at the last soak goes before that.
    SoakEntry soak;
    soak.batch = bench.clear_batch();
    soak.lot = bench.strips;
    soak.bins.push_back({bench.bin, 480, kilograms(31.25)});
    must(start_soak(bench.book(), soak, on_day(1, 10)));
    const auto yields = bin_yields(bench.book(), bench.bin, bench.strip_kind, kilograms(62.5));
    ASSERT_TRUE(yields);
    EXPECT_EQ(yields->flood, kilograms(31.25));
    EXPECT_EQ(yields->side_by_side.bins, 2);
    EXPECT_EQ(yields->side_by_side.strips, 960);
    EXPECT_EQ(yields->side_by_side.most_left, kilograms(40.42));
    EXPECT_EQ(yields->side_by_side.more_days, 0);
    EXPECT_EQ(yields->one_after_another.bins, 3);
    EXPECT_EQ(yields->one_after_another.strips, 1440);
    EXPECT_EQ(yields->one_after_another.most_left, kilograms(29.38));
    EXPECT_EQ(yields->one_after_another.more_days, 2);
}

TEST(BinYield, no_more_bins_at_once_than_there_are) {
    Bench bench;
    EXPECT_EQ(bin_yields(bench.book(), bench.bin, bench.strip_kind, kilograms(150))->side_by_side.bins, 2);
}

TEST(BinYield, an_unmeasured_bin_gives_no_such_figure) {
    Bench bench;
    VesselEntry fresh;
    fresh.is_tank = false;
    fresh.name = QStringLiteral("bin 3");
    fresh.strips_held = 200;
    const VesselId unmeasured = must(save_vessel(bench.book(), fresh, on_day(0)));
    EXPECT_FALSE(bin_yields(bench.book(), unmeasured, bench.strip_kind, kilograms(62.5)));
    EXPECT_FALSE(bin_yields(bench.book(), bench.tank, bench.strip_kind, kilograms(62.5)));
    EXPECT_FALSE(bin_yields(bench.book(), bench.bin, bench.strip_kind, maths::Mass{}));
}

} // namespace soakbook::tests
