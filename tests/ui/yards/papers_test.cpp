// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on paper for a yard, as it stands in the workbook.
#include "room.h"

#include "core/work/visit.h"
#include "ui/papers/pull_sheet.h"
#include "ui/papers/run_sheet.h"

namespace soakbook::tests {
namespace {

using namespace work;

TEST_F(YardsRoom, a_run_sheet_has_a_line_for_each_hive_and_the_bags_to_take) {
    const YardId yard = made_yard();
    const RoundId round = made_round(yard);
    const auto sheet = ui::run_sheet(*desk, round, yard);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->yard, QStringLiteral("Sallow Carr"));
    EXPECT_EQ(sheet->round, QStringLiteral("Late summer"));
    EXPECT_EQ(sheet->total, QStringLiteral("80"));
    ASSERT_EQ(sheet->lines.size(), 20U);
    EXPECT_EQ(sheet->lines.front().hive, QStringLiteral("SC-01"));
    EXPECT_EQ(sheet->lines.front().bees, QStringLiteral("8"));
    EXPECT_EQ(sheet->lines.front().strips, QStringLiteral("4"));
    ASSERT_EQ(sheet->bags.size(), 1U);
    EXPECT_EQ(sheet->bags.front().strips, QStringLiteral("80"));
    EXPECT_EQ(sheet->bags.front().place, QStringLiteral("shelf 1"));
}

TEST_F(YardsRoom, a_load_out_takes_enough_bags_for_all_yards_together) {
    const YardId yard = made_yard();
    YardEntry entry;
    entry.name = QStringLiteral("Hill top");
    const YardId other = must(save_yard(bench.book(), entry, on_day(0)));
    HiveRow row;
    row.yard = other;
    row.prefix = QStringLiteral("H");
    row.first = 1;
    row.count = 10;
    row.frames_of_bees = 10;
    must(add_hives(bench.book(), row, on_day(0)));
    const RoundId first = made_round(yard);
    RoundEntry round = round_entry(bench.book(), first);
    round.yards = {yard, other};
    const RoundId both = must(plan_round(bench.book(), round, on_day(3)));
    const auto load = ui::load_out(*desk, both);
    ASSERT_TRUE(load);
    EXPECT_EQ(load->total, QStringLiteral("120"));
    EXPECT_EQ(load->yards.size(), 2U);
    // Bags of 80: one would do for either yard, the two together need a second.
    EXPECT_EQ(load->bags.size(), 2U);
}

TEST_F(YardsRoom, a_pull_list_says_what_hangs_and_until_when) {
    const YardId yard = made_yard();
    const RoundId round = made_round(yard);
    VisitEntry entry;
    entry.round = round;
    entry.yard = yard;
    entry.supers_on = false;
    for (const VisitLine& line : must(plan_visit(bench.book(), round, yard, desk->today())).lines) {
        entry.rows.push_back({line.hive, line.planned, {}, {}, {}});
    }
    must(enter_visit(bench.book(), entry, on_day(3)));
    on(3 + 43);
    const ui::PullList list = ui::pull_list(*desk, yard);
    EXPECT_EQ(list.total, QStringLiteral("80"));
    ASSERT_EQ(list.lines.size(), 20U);
    EXPECT_EQ(list.lines.front().hive, QStringLiteral("SC-01"));
    EXPECT_EQ(list.lines.front().strips, QStringLiteral("4"));
    EXPECT_EQ(list.lines.front().state, QStringLiteral("to pull"));
}

} // namespace
} // namespace soakbook::tests
