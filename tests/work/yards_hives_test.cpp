// SPDX-License-Identifier: GPL-3.0-or-later
// Yards, hives, groups, moves and mite counts.
#include "core/work/count.h"
#include "core/work/yards_view.h"
#include "yards_bench.h"

namespace soakbook::tests {
namespace {

using namespace work;

TEST(Names, are_ordered_as_people_count) {
    EXPECT_TRUE(comes_before(QStringLiteral("A2"), QStringLiteral("A10")));
    EXPECT_TRUE(comes_before(QStringLiteral("a2"), QStringLiteral("B1")));
    EXPECT_TRUE(comes_before(QStringLiteral("A09"), QStringLiteral("A10")));
    EXPECT_FALSE(comes_before(QStringLiteral("A10"), QStringLiteral("A2")));
    EXPECT_FALSE(comes_before(QStringLiteral("A2"), QStringLiteral("A2")));
    EXPECT_TRUE(comes_before(QStringLiteral("A"), QStringLiteral("A1")));
    // One order for any two different names, so that a sort is safe.
    EXPECT_NE(comes_before(QStringLiteral("A2"), QStringLiteral("a02")),
              comes_before(QStringLiteral("a02"), QStringLiteral("A2")));
    EXPECT_TRUE(comes_before(QStringLiteral("x99999999999999999999"), QStringLiteral("x100000000000000000000")));
}

TEST(Yards, need_a_name_of_their_own) {
    YardsBench b;
    EXPECT_TRUE(refused(save_yard(b.book(), {}, on_day(0)), Why::missing, QStringLiteral("name")));
    EXPECT_TRUE(refused(save_yard(b.book(), {{}, QStringLiteral("mill LANE"), {}, {}, true}, on_day(0)),
                        Why::name_taken, QStringLiteral("name")));
    EXPECT_TRUE(refused(save_yard(b.book(), {{}, QString(201, QLatin1Char('x')), {}, {}, true}, on_day(0)),
                        Why::too_long, QStringLiteral("name")));
    EXPECT_TRUE(
        refused(save_yard(b.book(), {YardId{77}, QStringLiteral("Nowhere"), {}, {}, true}, on_day(0)), Why::not_found));
    auto yard = yards(b.book()).at(0);
    EXPECT_TRUE(refused(save_yard(b.book(), yard, on_day(0)), Why::nothing_changed));
    yard.active = false;
    must(save_yard(b.book(), yard, on_day(0)));
    EXPECT_TRUE(yards(b.book()).empty());
    EXPECT_EQ(yards(b.book(), true).size(), 1u);
}

TEST(Yards, hives_and_rounds_take_no_name_with_signs_that_nobody_sees) {
    YardsBench b;
    const QString name = QStringLiteral("A\u20667");
    EXPECT_TRUE(refused(save_yard(b.book(), {{}, name, {}, {}, true}, on_day(0)), Why::hidden_signs, QStringLiteral("name")));
    HiveEntry hive;
    hive.yard = b.yard;
    hive.name = name;
    EXPECT_TRUE(refused(save_hive(b.book(), hive, on_day(0)), Why::hidden_signs, QStringLiteral("name")));
    HiveRow row;
    row.yard = b.yard;
    row.prefix = name;
    row.first = 1;
    row.count = 2;
    EXPECT_TRUE(refused(add_hives(b.book(), row, on_day(0)), Why::hidden_signs, QStringLiteral("prefix")));
    RoundEntry round;
    round.name = name;
    round.planned_on = day_n(0);
    round.yards = {b.yard};
    EXPECT_TRUE(refused(plan_round(b.book(), round, on_day(0)), Why::hidden_signs, QStringLiteral("name")));
    hive.name = QStringLiteral("\u05D0 7"); // letters that run from the right are letters
    must(save_hive(b.book(), hive, on_day(0)));
}

TEST(Yards, times_have_a_first_and_a_last_day) {
    YardsBench b;
    YardTimeEntry time{{}, b.yard, TimeKind::flow, QStringLiteral("lime"), day_n(5), day_n(3)};
    EXPECT_TRUE(refused(save_yard_time(b.book(), time, on_day(0)), Why::before_start, QStringLiteral("to")));
    time.to.reset();
    EXPECT_TRUE(refused(save_yard_time(b.book(), time, on_day(0)), Why::missing, QStringLiteral("to")));
    time.to = day_n(5);
    const auto id = must(save_yard_time(b.book(), time, on_day(0)));
    time.id = id;
    EXPECT_TRUE(refused(save_yard_time(b.book(), time, on_day(0)), Why::nothing_changed));
    time.what.clear();
    EXPECT_TRUE(refused(save_yard_time(b.book(), time, on_day(0)), Why::missing, QStringLiteral("what")));
    must(remove_yard_time(b.book(), id, on_day(0)));
    EXPECT_TRUE(yard_times(b.book(), b.yard).empty());
    EXPECT_TRUE(refused(remove_yard_time(b.book(), id, on_day(0)), Why::not_found));
}

TEST(Hives, are_refused_figures_without_sense) {
    YardsBench b;
    HiveEntry entry;
    entry.yard = b.yard;
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::missing, QStringLiteral("name")));
    entry.name = QStringLiteral("a1");
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::name_taken, QStringLiteral("name")));
    entry.name = QStringLiteral("B1");
    entry.hives = 0;
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::not_positive, QStringLiteral("hives")));
    entry.hives = 1;
    entry.frames_of_bees = 101;
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::too_large, QStringLiteral("frames_of_bees")));
    entry.frames_of_bees = -1;
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::too_small, QStringLiteral("frames_of_bees")));
    entry.frames_of_bees = 8;
    entry.brood_boxes = 21;
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::too_large, QStringLiteral("brood_boxes")));
    entry.brood_boxes = 1;
    entry.state = StateOfHive::dead;
    entry.state_on = day_n(1);
    EXPECT_TRUE(refused(save_hive(b.book(), entry, on_day(0)), Why::in_the_future, QStringLiteral("state_on")));
    entry.state_on = day_n(0);
    must(save_hive(b.book(), entry, on_day(0)));
}

TEST(Hives, a_dead_hives_name_may_be_given_again) {
    YardsBench b;
    auto dead = *hive(b.book(), b.hives[0]);
    dead.state = StateOfHive::dead;
    must(save_hive(b.book(), dead, on_day(0)));
    EXPECT_EQ(hive(b.book(), b.hives[0])->state_on, day_n(0));
    HiveEntry entry;
    entry.yard = b.yard;
    entry.name = QStringLiteral("A1");
    must(save_hive(b.book(), entry, on_day(0)));
    dead = *hive(b.book(), b.hives[0]);
    dead.state = StateOfHive::alive;
    EXPECT_TRUE(refused(save_hive(b.book(), dead, on_day(0)), Why::name_taken, QStringLiteral("name")));
}

TEST(Hives, a_row_of_numbers_is_added_in_one_go) {
    YardsBench b;
    HiveRow row{b.yard, QStringLiteral("C"), 8, 4, 2, 1, 6};
    EXPECT_EQ(must(add_hives(b.book(), row, on_day(0))).size(), 4u);
    QStringList names;
    for (const HiveEntry& entry : hives(b.book(), b.yard))
        if (entry.name.startsWith(QLatin1Char('C')))
            names << entry.name;
    EXPECT_EQ(names, (QStringList{QStringLiteral("C08"), QStringLiteral("C09"), QStringLiteral("C10"),
                                  QStringLiteral("C11")}));
    EXPECT_TRUE(refused(add_hives(b.book(), row, on_day(0)), Why::name_taken, QStringLiteral("first")));
    row.count = 0;
    EXPECT_TRUE(refused(add_hives(b.book(), row, on_day(0)), Why::not_positive, QStringLiteral("count")));
    row.count = 2'000;
    EXPECT_TRUE(refused(add_hives(b.book(), row, on_day(0)), Why::too_large, QStringLiteral("count")));
    row.first.reset();
    EXPECT_TRUE(refused(add_hives(b.book(), row, on_day(0)), Why::missing, QStringLiteral("first")));
}

TEST(Hives, the_grid_typed_over_is_one_piece_of_work) {
    YardsBench b;
    auto all = hives(b.book(), b.yard);
    EXPECT_TRUE(refused(save_hives(b.book(), all, on_day(0)), Why::nothing_changed));
    all[0].frames_of_bees = 12;
    all[3].supers_on = true;
    EXPECT_EQ(must(save_hives(b.book(), all, on_day(0))), 2);
    all[1].name = QStringLiteral("X");
    all[2].name = QStringLiteral("x");
    EXPECT_TRUE(refused(save_hives(b.book(), all, on_day(0)), Why::name_taken, QStringLiteral("rows/2/name")));
    all[2].name = QStringLiteral("Y");
    all[2].frames_of_bees = 1000;
    EXPECT_TRUE(refused(save_hives(b.book(), all, on_day(0)), Why::too_large, QStringLiteral("rows/2/frames_of_bees")));
    EXPECT_EQ(hives(b.book(), b.yard)[1].name, QStringLiteral("A2")) << "all or nothing";
}

TEST(Moves, go_somewhere_else_and_not_back_in_time) {
    YardsBench b;
    b.bagged_batch();
    const auto orchard = must(save_yard(b.book(), {{}, QStringLiteral("Orchard"), {}, {}, true}, on_day(0)));
    EXPECT_TRUE(refused(move_hives(b.book(), {}, orchard, {}, on_day(0)), Why::missing, QStringLiteral("hives")));
    EXPECT_TRUE(refused(move_hives(b.book(), {b.hives[0]}, {}, {}, on_day(0)), Why::missing, QStringLiteral("to")));
    EXPECT_TRUE(
        refused(move_hives(b.book(), {b.hives[0]}, b.yard, {}, on_day(0)), Why::same_yard, QStringLiteral("to")));
    EXPECT_TRUE(refused(move_hives(b.book(), {b.hives[0]}, orchard, day_n(1), on_day(0)), Why::in_the_future,
                        QStringLiteral("on")));
    b.visit(b.round(10), 10);
    EXPECT_TRUE(refused(move_hives(b.book(), {b.hives[0]}, orchard, day_n(9), on_day(12)), Why::before_start,
                        QStringLiteral("on")))
        << "strips were hung in Mill lane on day 10";
    must(move_hives(b.book(), {b.hives[0], b.row}, orchard, day_n(12), on_day(12)));
    EXPECT_TRUE(refused(move_hives(b.book(), {b.hives[0]}, b.yard, day_n(11), on_day(12)), Why::before_start,
                        QStringLiteral("on")));
    HiveEntry same;
    same.yard = orchard;
    same.name = QStringLiteral("A2");
    must(save_hive(b.book(), same, on_day(12)));
    EXPECT_TRUE(
        refused(move_hives(b.book(), {b.hives[1]}, orchard, {}, on_day(12)), Why::name_taken, QStringLiteral("to")));
    for (const YardLine& line : yard_lines(b.book(), day_n(12))) {
        if (line.id == orchard) {
            EXPECT_EQ(line.hives, 1 + 6 + 1);
            EXPECT_EQ(line.carrying, 7);
            EXPECT_EQ(line.strips_hanging, 28);
        } else {
            EXPECT_EQ(line.hives, 19);
            EXPECT_EQ(line.strips_hanging, 76);
        }
    }
    const auto events = hive_events(b.book(), b.hives[0]);
    ASSERT_EQ(events.size(), 2u);
    EXPECT_EQ(events[0].kind, HiveEvent::Kind::moved);
    EXPECT_EQ(events[0].text, QStringLiteral("Orchard"));
}

TEST(Yards, one_given_up_is_shown_while_strips_hang_there) {
    YardsBench b;
    b.bagged_batch();
    b.visit(b.round(10), 10);
    auto yard = yards(b.book()).at(0);
    yard.active = false;
    must(save_yard(b.book(), yard, on_day(11)));
    EXPECT_EQ(yard_lines(b.book(), day_n(11)).size(), 1u);
    b.pull(b.yard, 55);
    EXPECT_TRUE(yard_lines(b.book(), day_n(56)).empty());
}

TEST(Counts, a_wash_gives_a_rate_with_its_interval) {
    // Handbook 10, Newcombe 1998: 15/148 by Wilson 0.062386 to 0.160487.
    YardsBench b;
    const auto figures = mite_figures(b.book(), MiteCountKind::wash, 15, 148, {});
    EXPECT_EQ(figures.rate, maths::ppm(101351));
    EXPECT_EQ(figures.low, maths::ppm(62386));
    EXPECT_EQ(figures.high, maths::ppm(160487));
    EXPECT_EQ(figures.over_threshold, std::nullopt) << "no threshold was said";
    b.say(Figure::mite_threshold, 30'000);
    EXPECT_EQ(mite_figures(b.book(), MiteCountKind::wash, 9, 300, {}).over_threshold, true);
    EXPECT_EQ(mite_figures(b.book(), MiteCountKind::wash, 8, 300, {}).over_threshold, false);
    // Three on a hundred lies between 1.6 and 5.6 % for 9 of 300; 30 of 300 lies above 7 %, none of 300 below 1.3 %:
    // Wilson, Newcombe 1998, Stat. Med. 17:857.
    EXPECT_FALSE(mite_figures(b.book(), MiteCountKind::wash, 9, 300, {}).is_sure);
    EXPECT_TRUE(mite_figures(b.book(), MiteCountKind::wash, 30, 300, {}).is_sure);
    EXPECT_TRUE(mite_figures(b.book(), MiteCountKind::wash, 0, 300, {}).is_sure);
    EXPECT_EQ(mite_figures(b.book(), MiteCountKind::drop, 12, {}, 3).per_day, 4.0);
    EXPECT_EQ(mite_figures(b.book(), MiteCountKind::wash, 3, {}, {}).rate, std::nullopt);
}

TEST(Counts, a_wash_without_bees_is_refused) {
    YardsBench b;
    CountEntry entry;
    entry.on = day_n(5);
    EXPECT_TRUE(refused(enter_counts(b.book(), entry, on_day(5)), Why::missing, QStringLiteral("rows")));
    entry.rows.push_back({b.hives[0], {}, 300, {}, {}});
    EXPECT_TRUE(refused(enter_counts(b.book(), entry, on_day(5)), Why::missing, QStringLiteral("rows/0/mites")));
    entry.rows[0].mites = 9;
    entry.rows[0].bees.reset();
    EXPECT_TRUE(
        refused(enter_counts(b.book(), entry, on_day(5)), Why::mites_without_bees, QStringLiteral("rows/0/bees")));
    entry.rows[0].bees = 0;
    EXPECT_TRUE(refused(enter_counts(b.book(), entry, on_day(5)), Why::not_positive, QStringLiteral("rows/0/bees")));
    entry.rows[0].bees = 300;
    entry.on = day_n(6);
    EXPECT_TRUE(refused(enter_counts(b.book(), entry, on_day(5)), Why::in_the_future, QStringLiteral("on")));
    entry.on = day_n(5);
    entry.rows.push_back({b.hives[1], {}, {}, {}, {}}); // not counted
    entry.rows.push_back({b.hives[2], 0, 280, {}, {}});
    EXPECT_EQ(must(enter_counts(b.book(), entry, on_day(5))), 2);
    entry.kind = MiteCountKind::drop;
    EXPECT_TRUE(refused(enter_counts(b.book(), entry, on_day(5)), Why::missing, QStringLiteral("rows/0/days")));
    const auto all = counts(b.book(), {}, b.yard);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_TRUE(refused(void_count(b.book(), all[0].id, on_day(6)), Why::reason_missing));
    must(void_count(b.book(), all[0].id, because(QStringLiteral("wrong hive"), 6)));
    EXPECT_EQ(counts(b.book(), {}, {}).size(), 1u);
}

TEST(Counts, a_hive_shows_its_newest) {
    YardsBench b;
    for (const int n : {3, 5, 4}) {
        CountEntry entry;
        entry.on = day_n(n);
        entry.rows.push_back({b.hives[0], n, 300, {}, {}});
        must(enter_counts(b.book(), entry, on_day(6)));
    }
    const auto lines = hive_lines(b.book(), b.yard, day_n(6));
    ASSERT_TRUE(lines[0].last_count);
    EXPECT_EQ(lines[0].last_count->mites, 5);
    EXPECT_FALSE(lines[1].last_count);
}

} // namespace
} // namespace soakbook::tests
