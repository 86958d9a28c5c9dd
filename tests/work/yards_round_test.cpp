// SPDX-License-Identifier: GPL-3.0-or-later
// A round of one yard from plan to pull, with what goes wrong on the way.
#include "core/work/papers.h"
#include "core/work/register_view.h"
#include "core/work/undo.h"
#include "core/work/yards_view.h"
#include "yards_bench.h"

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using namespace work;

TEST(Rounds, a_group_gets_its_number_times_the_dose_of_its_average_hive) {
    YardsBench b;
    b.bagged_batch();
    RoundEntry entry;
    entry.name = QStringLiteral("Late summer");
    entry.planned_on = day_n(10);
    entry.yards = {b.yard};
    const auto figures = must(reckon_round(b.book(), entry, day_n(3)));
    EXPECT_EQ(figures.hives, 26);
    EXPECT_EQ(figures.strips, 20 * 4 + 6 * 4); // handbook: 8 frames and 10 frames, both 4 strips
    EXPECT_EQ(figures.ready, 960);
    EXPECT_EQ(figures.short_of, 0);
    EXPECT_EQ(figures.pull_from, day_n(10 + 42));
    EXPECT_EQ(figures.pull_by, day_n(10 + 56));
}

TEST(Rounds, the_average_hive_of_a_group_is_not_rounded_before_it_is_dosed) {
    YardsBench b;
    b.bagged_batch();
    auto group = *hive(b.book(), b.row);
    group.frames_of_bees = 61; // 10.17 frames: 5 strips by the rule, 30 for six
    must(save_hive(b.book(), group, on_day(0)));
    const auto plan = must(plan_visit(b.book(), b.round(10), b.yard, day_n(10)));
    EXPECT_EQ(plan.lines.back().name, QStringLiteral("long row"));
    EXPECT_EQ(plan.lines.back().planned, 30);
}

TEST(Rounds, boxes_of_a_group_count_together_and_its_limits_hold_for_each_hive) {
    YardsBench b;
    b.bagged_batch();
    auto group = *hive(b.book(), b.row);
    group.brood_boxes = 9; // a box and a half each
    must(save_hive(b.book(), group, on_day(0)));
    RoundEntry entry;
    entry.name = QStringLiteral("By box");
    entry.planned_on = day_n(10);
    entry.yards = {b.yard};
    entry.dose_rule = DoseRule::brood_boxes;
    entry.dose_strips = 2;
    auto round = must(plan_round(b.book(), entry, on_day(3)));
    auto plan = must(plan_visit(b.book(), round, b.yard, day_n(10)));
    EXPECT_EQ(plan.lines.back().planned, 18);
    EXPECT_EQ(plan.lines.front().planned, std::nullopt) << "no boxes were said of A1: nothing is guessed";
    entry.id = round;
    entry.dose_most = 2;
    must(plan_round(b.book(), entry, on_day(3)));
    plan = must(plan_visit(b.book(), round, b.yard, day_n(10)));
    EXPECT_EQ(plan.lines.back().planned, 12);
}

TEST(Rounds, a_rule_changed_later_changes_no_round_planned_before) {
    YardsBench b;
    b.bagged_batch();
    const auto round = b.round(10);
    auto kind = strip_kinds(b.book()).at(0);
    kind.dose_frames_tenths = 50;
    must(save_strip_kind(b.book(), kind, on_day(4)));
    must(set_figures(b.book(), {{Figure::pull_by_days, 90, {}}, {Figure::withdrawal_days, 30, {}}}, on_day(4)));
    const auto plan = must(plan_visit(b.book(), round, b.yard, day_n(10)));
    EXPECT_EQ(plan.lines.front().planned, 4);
    EXPECT_EQ(plan.pull_by, day_n(10 + 56));
    EXPECT_EQ(round_entry(b.book(), round).withdrawal_days, 14);
}

TEST(Rounds, what_is_missing_is_asked_for_and_never_guessed) {
    Bench bare;
    YardEntry yard;
    yard.name = QStringLiteral("Mill lane");
    RoundEntry entry;
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::missing, QStringLiteral("name")));
    entry.name = QStringLiteral("Late summer");
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::missing, QStringLiteral("planned_on")));
    entry.planned_on = day_n(10);
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::missing, QStringLiteral("yards")));
    entry.yards = {must(save_yard(bare.book(), yard, on_day(0)))};
    const auto outcome = plan_round(bare.book(), entry, on_day(0));
    EXPECT_TRUE(refused(outcome, Why::figure_missing, QStringLiteral("pull_from_days")));
    EXPECT_EQ(outcome.error().facts.value(0), QStringLiteral("pull_from_days"));
    entry.pull_from_days = 42;
    entry.pull_by_days = 41;
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::too_small, QStringLiteral("pull_by_days")));
    entry.pull_by_days = 56;
    EXPECT_TRUE(
        refused(plan_round(bare.book(), entry, on_day(0)), Why::figure_missing, QStringLiteral("withdrawal_days")));
    entry.withdrawal_days = 0;
    entry.dose_rule = DoseRule::fixed;
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::missing, QStringLiteral("dose_strips")));
    entry.dose_strips = 4;
    entry.dose_least = 5;
    entry.dose_most = 4;
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::too_small, QStringLiteral("dose_most")));
    entry.dose_least = 0;
    must(plan_round(bare.book(), entry, on_day(0)));
    EXPECT_TRUE(refused(plan_round(bare.book(), entry, on_day(0)), Why::name_taken, QStringLiteral("name")));
}

TEST(Rounds, times_of_the_yard_are_asked_about_when_a_round_is_planned) {
    YardsBench b;
    YardTimeEntry flow{{}, b.yard, TimeKind::flow, QStringLiteral("ivy"), day_n(30), day_n(50)};
    must(save_yard_time(b.book(), flow, on_day(0)));
    RoundEntry entry;
    entry.name = QStringLiteral("Late summer");
    entry.planned_on = day_n(10);
    entry.yards = {b.yard};
    EXPECT_EQ(must(reckon_round(b.book(), entry, day_n(0))).meeting.size(), 1u) << "it begins while strips hang: shown";
    must(plan_round(b.book(), entry, on_day(0)));
    entry.name = QStringLiteral("Earlier");
    entry.planned_on = day_n(-40); // out before the flow begins
    EXPECT_TRUE(must(reckon_round(b.book(), entry, day_n(0))).meeting.empty());
    entry.name = QStringLiteral("In it");
    for (const int n : {30, 50}) {
        entry.planned_on = day_n(n);
        EXPECT_TRUE(asked(plan_round(b.book(), entry, on_day(0)), Why::in_flow)) << n;
    }
    must(plan_round(b.book(), entry, on_day(0), {Why::in_flow}));
    must(save_yard_time(b.book(), {{}, b.yard, TimeKind::closed, QStringLiteral("fair"), day_n(60), day_n(60)},
                        on_day(0)));
    entry.name = QStringLiteral("At the fair");
    entry.planned_on = day_n(60);
    EXPECT_TRUE(asked(plan_round(b.book(), entry, on_day(0)), Why::yard_closed));
}

TEST(Rounds, one_in_which_strips_hang_is_changed_no_more) {
    YardsBench b;
    b.bagged_batch();
    const auto round = b.round(10);
    auto entry = round_entry(b.book(), round);
    EXPECT_TRUE(refused(plan_round(b.book(), entry, on_day(4)), Why::nothing_changed));
    entry.planned_on = day_n(11);
    must(plan_round(b.book(), entry, on_day(4)));
    b.visit(round, 11);
    entry.planned_on = day_n(12);
    EXPECT_TRUE(refused(plan_round(b.book(), entry, on_day(12)), Why::hive_has_strips));
}

// The whole story: plan, in, an entry a day late, a dead hive, missing strips, a move, the pull list on the right day,
// a correction, a void and an undo after a print, as the hives and the Register show them.
TEST(Rounds, a_yard_of_twenty_from_plan_to_pull) {
    YardsBench b;
    const auto batch = b.bagged_batch();
    const auto bags = b.bags_of(batch);
    const auto round = b.round(10);

    auto plan = must(plan_visit(b.book(), round, b.yard, day_n(10)));
    ASSERT_EQ(plan.lines.size(), 21u);
    EXPECT_EQ(plan.lines[1].name, QStringLiteral("A2")) << "A2 before A10";
    EXPECT_EQ(plan.strips, 104);
    ASSERT_EQ(plan.bags.size(), 2u) << "104 strips out of bags of 80: two are opened";

    // Entered a day late, with A7 found dead and A3 getting three.
    auto entry = b.as_planned(round, b.yard, 10);
    entry.rows[2].strips = 3;
    entry.rows[6].strips = 0;
    entry.rows[6].state = StateOfHive::dead;
    entry.rows[6].note = QStringLiteral("robbed out");
    const auto done = must(enter_visit(b.book(), entry, on_day(11)));
    EXPECT_EQ(done.hives, 25);
    EXPECT_EQ(done.strips, 104 - 1 - 4);
    EXPECT_EQ(done.pull_from, day_n(52));
    EXPECT_EQ(done.pull_by, day_n(66));
    EXPECT_EQ(b.left(done.bags[0].bag) + b.left(done.bags[1].bag), 160 - 99);
    EXPECT_EQ(bag(b.book(), done.bags[0].bag, day_n(11))->opened_on, day_n(10));
    EXPECT_EQ(hive(b.book(), b.hives[6])->state, StateOfHive::dead);
    EXPECT_EQ(hive(b.book(), b.hives[6])->state_on, day_n(10));
    EXPECT_TRUE(must(plan_visit(b.book(), round, b.yard, day_n(12))).visited);
    EXPECT_EQ(must(plan_visit(b.book(), round, b.yard, day_n(12))).strips, 0)
        << "done: as planned a second time hangs nothing";

    // The pull list: not before the window, then open on its first day, for 25 hives.
    auto lines = hanging(b.book(), b.yard, day_n(51));
    // 19 hives and the row; one hive's or the row's strips may come from two bags.
    EXPECT_GE(lines.size(), 20u);
    EXPECT_EQ(lines.front().state, PullState::waiting);
    EXPECT_EQ(lines.front().day_number, 42);
    EXPECT_EQ(hanging(b.book(), b.yard, day_n(52)).front().state, PullState::open);
    EXPECT_EQ(hanging(b.book(), b.yard, day_n(66)).front().state, PullState::open) << "the last day is still good";
    EXPECT_EQ(hanging(b.book(), b.yard, day_n(67)).front().state, PullState::past);

    // A1 moves away and keeps what hangs.
    YardEntry other;
    other.name = QStringLiteral("Orchard");
    const auto orchard = must(save_yard(b.book(), other, on_day(20)));
    must(move_hives(b.book(), {b.hives[0]}, orchard, day_n(20), on_day(20)));
    const auto moved = hanging(b.book(), orchard, day_n(52));
    ASSERT_EQ(moved.size(), 1u);
    EXPECT_EQ(moved.front().placed_in, QStringLiteral("Mill lane"));

    // Pulled in the window; two strips of A2 are missing.
    PullEntry pull;
    pull.on = day_n(55);
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(55))) {
        pull.rows.push_back({line.placement, {}, {}, {}});
        if (line.hive_name == QStringLiteral("A2"))
            pull.rows.back().missing = 2;
    }
    const auto out = must(enter_pull(b.book(), pull, on_day(55)));
    EXPECT_EQ(out.hives, 24);
    EXPECT_EQ(out.missing, 2);
    EXPECT_EQ(out.pulled, 99 - 4 - 2);
    EXPECT_TRUE(hanging(b.book(), b.yard, day_n(56)).empty());
    EXPECT_EQ(hanging(b.book(), {}, day_n(56)).size(), 1u) << "A1 in the orchard";

    for (const HiveLine& line : hive_lines(b.book(), {}, day_n(56))) {
        if (line.entry.name == QStringLiteral("A1")) {
            EXPECT_EQ(line.no_harvest_before, std::nullopt) << "strips still hang";
        } else if (line.entry.name == QStringLiteral("A2")) {
            EXPECT_EQ(line.no_harvest_before, day_n(55 + 14));
        }
    }
}

TEST(Rounds, the_last_limit_of_a_leap_day_and_its_window_stay_on_the_calendar) {
    // Handbook 8: 2026-08-31 + 42 / + 56 = 2026-10-12 / 2026-10-26.
    YardsBench b;
    b.bagged_batch();
    const auto round = b.round(28);
    const auto done = b.visit(round, 28);
    EXPECT_EQ(day_n(28), maths::day(2026, 8, 31));
    EXPECT_EQ(done.pull_from, maths::day(2026, 10, 12));
    EXPECT_EQ(done.pull_by, maths::day(2026, 10, 26));
}

TEST(Rounds, a_yard_done_in_part_stays_open_with_the_rest) {
    YardsBench b;
    b.bagged_batch();
    const auto round = b.round(10);
    auto entry = b.as_planned(round, b.yard, 10);
    entry.rows.resize(12);
    must(enter_visit(b.book(), entry, on_day(10)));
    const auto plan = must(plan_visit(b.book(), round, b.yard, day_n(11)));
    EXPECT_FALSE(plan.visited);
    EXPECT_EQ(plan.strips, 8 * 4 + 24);
    EXPECT_EQ(rounds(b.book()).front().strips_planned, 104);
    EXPECT_EQ(rounds(b.book()).front().strips_in, 48);
    b.visit(round, 11, {Why::hive_has_strips});
    EXPECT_TRUE(must(plan_visit(b.book(), round, b.yard, day_n(11))).visited);
}

} // namespace
} // namespace soakbook::tests
