// SPDX-License-Identifier: GPL-3.0-or-later
// Which bags give, law 4, and every question of a visit.
#include "core/work/bag.h"
#include "core/work/stock.h"
#include "core/work/undo.h"
#include "yards_bench.h"

namespace soakbook::tests {
namespace {

using namespace work;

/// Bags of one batch, and of a second one made so many days later.
struct TwoBatches : YardsBench {
    BatchId first = bagged_batch(0, 1);
    BatchId second = bagged_batch(5, 1);
    std::vector<BagId> old_bags = bags_of(first);
    std::vector<BagId> new_bags = bags_of(second);

    VisitEntry one_hive(RoundId in_round, int wanted, int n, std::optional<BagId> bag = {}) {
        VisitEntry entry;
        entry.round = in_round;
        entry.yard = yard;
        entry.on = day_n(n);
        entry.supers_on = false;
        entry.rows.push_back({hives[0], wanted, bag, {}, {}});
        return entry;
    }
};

TEST(Bags, the_nearest_limit_gives_first) {
    TwoBatches b;
    const auto plan = must(plan_visit(b.book(), b.round(10), b.yard, day_n(10)));
    ASSERT_EQ(plan.bags.size(), 2u);
    for (const BagUse& use : plan.bags)
        EXPECT_EQ(use.use_by, *bag(b.book(), b.old_bags[0], day_n(10))->use_by);
}

TEST(Bags, an_opened_bag_of_the_same_limit_gives_before_others) {
    TwoBatches b;
    must(open_bag(b.book(), b.old_bags[4], day_n(9), on_day(9)));
    const auto shares = must(share_out(b.book(), b.one_hive(b.round(10), 4, 10), day_n(10)));
    ASSERT_EQ(shares.at(0).size(), 1u);
    EXPECT_EQ(shares[0][0].bag, b.old_bags[4]);
}

TEST(Bags, the_last_one_opened_is_the_smallest_that_will_do) {
    TwoBatches b;
    must(discard_strips(b.book(), b.old_bags[2], 50, day_n(9), QStringLiteral("mouldy"), on_day(9))); // 30 left
    must(discard_strips(b.book(), b.old_bags[3], 70, day_n(9), QStringLiteral("mouldy"), on_day(9))); // 10 left
    const auto shares = must(share_out(b.book(), b.one_hive(b.round(10), 24, 10), day_n(10)));
    ASSERT_EQ(shares.at(0).size(), 1u) << "one bag is opened, not two";
    EXPECT_EQ(shares[0][0].bag, b.old_bags[2]);
}

TEST(Bags, a_hive_may_get_its_strips_from_two_bags) {
    TwoBatches b;
    const auto round = b.round(10);
    const auto done = must(enter_visit(b.book(), b.one_hive(round, 100, 10), on_day(10)));
    EXPECT_EQ(done.bags.size(), 2u);
    EXPECT_EQ(done.strips, 100);
    EXPECT_EQ(hanging(b.book(), b.yard, day_n(10)).size(), 2u) << "a placement for each bag";
}

TEST(Bags, the_grid_is_told_the_same_bags_that_the_visit_takes) {
    TwoBatches b;
    const auto round = b.round(10);
    auto entry = b.as_planned(round, b.yard, 10);
    entry.rows[1].bag = b.new_bags[0];
    entry.rows[4].strips = 0;
    const auto shares = must(share_out(b.book(), entry, day_n(10)));
    must(enter_visit(b.book(), entry, on_day(10)));
    std::multiset<std::tuple<std::int64_t, std::int64_t, int>> told;
    for (std::size_t i = 0; i < shares.size(); ++i)
        for (const FromBag& part : shares[i])
            told.emplace(entry.rows[i].hive.value, part.bag.value, part.strips);
    std::multiset<std::tuple<std::int64_t, std::int64_t, int>> hung;
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(10))) {
        for (const BagLine& each : bags(b.book(), day_n(10), BagFilter::all))
            if (each.code == line.bag_code)
                hung.emplace(line.hive.value, each.id.value, line.strips);
    }
    EXPECT_EQ(told, hung);
    EXPECT_TRUE(shares[4].empty());
}

TEST(Bags, a_short_bag_named_is_refused_with_what_is_left) {
    TwoBatches b;
    must(discard_strips(b.book(), b.old_bags[0], 78, day_n(9), QStringLiteral("torn"), on_day(9)));
    const auto outcome = enter_visit(b.book(), b.one_hive(b.round(10), 4, 10, b.old_bags[0]), on_day(10));
    EXPECT_TRUE(refused(outcome, Why::bag_short, QStringLiteral("rows/0/strips")));
    EXPECT_EQ(outcome.error().facts, (QStringList{bag(b.book(), b.old_bags[0], day_n(9))->code, QStringLiteral("n:2"),
                                                  QStringLiteral("n:4")}));
}

TEST(Bags, more_than_the_store_has_is_refused_and_nothing_is_written) {
    YardsBench b;
    b.bagged_batch(0, 1); // 480 strips
    const auto round = b.round(10);
    auto entry = b.as_planned(round, b.yard, 10);
    entry.rows[0].strips = 400;
    const auto outcome = enter_visit(b.book(), entry, on_day(10));
    EXPECT_TRUE(refused(outcome, Why::not_enough_strips, QStringLiteral("rows/20/strips")));
    EXPECT_EQ(outcome.error().facts, (QStringList{QStringLiteral("n:480"), QStringLiteral("n:500")}));
    EXPECT_TRUE(hanging(b.book(), {}, day_n(10)).empty());
    EXPECT_EQ(bags(b.book(), day_n(10), BagFilter::opened).size(), 0u);
}

TEST(Law4, a_bag_past_its_limit_needs_a_reason_that_is_kept) {
    TwoBatches b;
    const int late =
        static_cast<int>(maths::days_between(first_day, *bag(b.book(), b.old_bags[0], day_n(0))->use_by)) + 1;
    const auto round = b.round(late);
    const auto plan = must(plan_visit(b.book(), round, b.yard, day_n(late)));
    for (const BagUse& use : plan.bags)
        EXPECT_GE(use.use_by, day_n(late)) << "never taken unless it is named";
    auto entry = b.one_hive(round, 4, late, b.old_bags[0]);
    EXPECT_TRUE(
        refused(enter_visit(b.book(), entry, on_day(late)), Why::bag_past_limit, QStringLiteral("past_limit_reason")));
    entry.past_limit_reason = QStringLiteral("nothing else at hand");
    must(enter_visit(b.book(), entry, on_day(late)));
    auto last_day = b.one_hive(round, 4, late - 1, b.old_bags[1]);
    must(enter_visit(b.book(), last_day, on_day(late), {Why::hive_has_strips}));
}

TEST(Law4, a_resting_bag_is_asked_about_or_refused_as_the_rule_says) {
    YardsBench b;
    b.say(Figure::rest_days, 7);
    const auto ids = b.bags_of(b.bagged_batch()); // sealed on day 2: rests until day 9
    EXPECT_EQ(bag(b.book(), ids[0], day_n(3))->rest_until, day_n(9));
    const auto round = b.round(8);
    EXPECT_EQ(must(plan_visit(b.book(), round, b.yard, day_n(8))).short_of, 104);
    EXPECT_EQ(must(plan_visit(b.book(), round, b.yard, day_n(9))).short_of, 0) << "ready on the day its rest ends";
    VisitEntry entry;
    entry.round = round;
    entry.yard = b.yard;
    entry.on = day_n(8);
    entry.supers_on = false;
    entry.rows.push_back({b.hives[0], 4, ids[0], {}, {}});
    EXPECT_TRUE(asked(enter_visit(b.book(), entry, on_day(8)), Why::bag_resting));
    b.say(Figure::rest_refuses, 1);
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(8), {Why::bag_resting}), Why::bag_resting_refused,
                        QStringLiteral("rows/0/bag")));
    b.say(Figure::rest_refuses, 0);
    must(enter_visit(b.book(), entry, on_day(8), {Why::bag_resting}));
    entry.on = day_n(9);
    entry.rows[0].hive = b.hives[1];
    must(enter_visit(b.book(), entry, on_day(9))); // rested
}

TEST(Law4, bags_that_are_not_there_or_not_filled_or_gone_give_nothing) {
    TwoBatches b;
    const auto round = b.round(10);
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 10, BagId{4711}), on_day(10)), Why::not_found,
                        QStringLiteral("rows/0/bag")));
    const auto reserved = must(reserve_labels(b.book(), b.weighed_batch(5, 1), 1, on_day(8))).bags.at(0);
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 10, reserved), on_day(10)), Why::not_filled));
    must(discard_bags(b.book(), {b.old_bags[0]}, day_n(9), QStringLiteral("burst"), on_day(9)));
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 10, b.old_bags[0]), on_day(10)), Why::bag_gone));
    must(void_bag(b.book(), b.old_bags[1], because(QStringLiteral("burst"), 9)));
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 10, b.old_bags[1]), on_day(10)), Why::bag_gone));
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 6, b.new_bags[0]), on_day(10)),
                        Why::before_sealed)); // sealed on day 7
}

TEST(Law4, a_bag_open_longer_than_the_rule_is_asked_about) {
    TwoBatches b;
    b.say(Figure::opened_days, 20);
    must(open_bag(b.book(), b.old_bags[0], day_n(9), on_day(9)));
    const auto round = b.round(10);
    must(enter_visit(b.book(), b.one_hive(round, 4, 29, b.old_bags[0]), on_day(29)));
    EXPECT_TRUE(
        asked(enter_visit(b.book(), b.one_hive(round, 4, 30, b.old_bags[0]), on_day(30), {Why::hive_has_strips}),
              Why::bag_opened_long));
}

TEST(Visits, supers_are_asked_for_and_yes_is_asked_again) {
    TwoBatches b;
    const auto round = b.round(10);
    auto entry = b.one_hive(round, 4, 10);
    entry.supers_on.reset();
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::missing, QStringLiteral("supers_on")));
    entry.supers_on = true;
    EXPECT_TRUE(asked(enter_visit(b.book(), entry, on_day(10)), Why::supers_on));
    must(enter_visit(b.book(), entry, on_day(10), {Why::supers_on}));
    // Said of the hive itself, it is known.
    auto h = *hive(b.book(), b.hives[1]);
    h.supers_on = false;
    must(save_hive(b.book(), h, on_day(10)));
    auto other = b.one_hive(round, 4, 10);
    other.rows[0].hive = b.hives[1];
    other.supers_on.reset();
    must(enter_visit(b.book(), other, on_day(10)));
}

TEST(Visits, flows_and_closed_times_are_asked_about) {
    TwoBatches b;
    const auto round = b.round(9);
    const auto add = [&](TimeKind kind, const char* what, int from, int to) {
        must(save_yard_time(b.book(), {{}, b.yard, kind, QLatin1String(what), day_n(from), day_n(to)}, on_day(0)));
    };
    add(TimeKind::closed, "harvest festival", 10, 11);
    add(TimeKind::flow, "heather", 4, 10);
    add(TimeKind::flow, "ivy", 40, 60);
    add(TimeKind::flow, "limes of next year", 70, 90);
    const auto plan = must(plan_visit(b.book(), round, b.yard, day_n(10)));
    ASSERT_EQ(plan.meeting.size(), 3u) << "strips hang from day 10 to 66";
    EXPECT_TRUE(plan.times.at(2).startsWith(QStringLiteral("ivy, 2026-09-12")));
    EXPECT_TRUE(asked(enter_visit(b.book(), b.one_hive(round, 4, 10), on_day(12)), Why::in_flow));
    EXPECT_TRUE(asked(enter_visit(b.book(), b.one_hive(round, 4, 10), on_day(12), {Why::in_flow}), Why::yard_closed));
    EXPECT_TRUE(asked(enter_visit(b.book(), b.one_hive(round, 4, 11), on_day(12)), Why::yard_closed));
    must(enter_visit(b.book(), b.one_hive(round, 4, 10), on_day(12), {Why::yard_closed, Why::in_flow}));
    must(enter_visit(b.book(), b.one_hive(round, 4, 12), on_day(12), {Why::hive_has_strips}));
}

TEST(Visits, strips_that_hang_already_and_doses_outside_the_rule_are_asked_about) {
    TwoBatches b;
    RoundEntry rule;
    rule.name = QStringLiteral("With limits");
    rule.planned_on = day_n(10);
    rule.yards = {b.yard};
    rule.dose_least = 2;
    rule.dose_most = 6;
    const auto round = must(plan_round(b.book(), rule, on_day(3)));
    const auto outcome = enter_visit(b.book(), b.one_hive(round, 7, 10), on_day(10));
    EXPECT_TRUE(asked(outcome, Why::dose_outside));
    EXPECT_EQ(outcome.error().facts,
              (QStringList{QStringLiteral("n:7"), QStringLiteral("n:2"), QStringLiteral("n:6")}));
    auto group = b.one_hive(round, 37, 10);
    group.rows[0].hive = b.row;
    EXPECT_TRUE(asked(enter_visit(b.book(), group, on_day(10)), Why::dose_outside)) << "six hives: 12 to 36";
    group.rows[0].strips = 36;
    must(enter_visit(b.book(), group, on_day(10)));
    must(enter_visit(b.book(), b.one_hive(round, 4, 10), on_day(10)));
    EXPECT_TRUE(asked(enter_visit(b.book(), b.one_hive(round, 4, 10), on_day(10)), Why::hive_has_strips));
}

TEST(Visits, days_to_come_are_refused_and_days_long_past_are_asked_about) {
    TwoBatches b;
    const auto round = b.round(10);
    EXPECT_TRUE(
        refused(enter_visit(b.book(), b.one_hive(round, 4, 11), on_day(10)), Why::in_the_future, QStringLiteral("on")));
    auto entry = b.one_hive(round, 4, 10);
    EXPECT_TRUE(asked(enter_visit(b.book(), entry, on_day(400)), Why::long_ago));
    must(enter_visit(b.book(), entry, on_day(400), {Why::long_ago}));
}

TEST(Visits, rows_that_cannot_be_are_refused_at_their_field) {
    TwoBatches b;
    const auto round = b.round(10);
    auto entry = b.one_hive(round, 4, 10);
    entry.rows[0].strips.reset();
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::missing, QStringLiteral("rows/0/strips")));
    entry.rows[0].strips = -1;
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::too_small, QStringLiteral("rows/0/strips")));
    entry.rows[0].strips = 100'000;
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::too_large, QStringLiteral("rows/0/strips")));
    entry.rows[0].strips = 4;
    entry.rows[0].note = QString(10'000, QLatin1Char('x'));
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::too_long, QStringLiteral("rows/0/note")));
    entry.rows[0].note.clear();
    entry.rows[0].state = StateOfHive::dead;
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::hive_dead, QStringLiteral("rows/0/strips")));
    entry.rows[0].strips = 0;
    must(enter_visit(b.book(), entry, on_day(10)));
    entry.rows[0] = {b.hives[0], 4, {}, {}, {}};
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::hive_dead, QStringLiteral("rows/0/strips")));
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(RoundId{99}, 4, 10), on_day(10)), Why::not_found,
                        QStringLiteral("round")));
    entry.yard = must(save_yard(b.book(), {{}, QStringLiteral("Orchard"), {}, {}, true}, on_day(10)));
    EXPECT_TRUE(refused(enter_visit(b.book(), entry, on_day(10)), Why::not_found, QStringLiteral("yard")));
}

TEST(Visits, a_late_entry_finds_the_hives_as_they_stood) {
    TwoBatches b;
    const auto round = b.round(10);
    const auto orchard = must(save_yard(b.book(), {{}, QStringLiteral("Orchard"), {}, {}, true}, on_day(10)));
    must(move_hives(b.book(), {b.hives[0]}, orchard, day_n(12), on_day(12)));
    const auto before = must(plan_visit(b.book(), round, b.yard, day_n(11)));
    EXPECT_EQ(before.lines.size(), 21u);
    EXPECT_EQ(must(plan_visit(b.book(), round, b.yard, day_n(12))).lines.size(), 20u);
    must(enter_visit(b.book(), b.one_hive(round, 4, 11), on_day(13)));
    const auto lines = hanging(b.book(), orchard, day_n(13));
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].placed_in, QStringLiteral("Mill lane"));
    EXPECT_TRUE(refused(enter_visit(b.book(), b.one_hive(round, 4, 12), on_day(13)), Why::not_found));
}

TEST(Visits, one_visit_is_one_undo) {
    TwoBatches b;
    const auto round = b.round(10);
    auto entry = b.as_planned(round, b.yard, 10);
    entry.rows[3].strips = 0;
    entry.rows[3].state = StateOfHive::gone;
    must(enter_visit(b.book(), entry, on_day(10)));
    must(undo(b.book(), on_day(10)));
    EXPECT_TRUE(hanging(b.book(), {}, day_n(10)).empty());
    EXPECT_EQ(hive(b.book(), b.hives[3])->state, StateOfHive::alive);
    EXPECT_EQ(bags(b.book(), day_n(10), BagFilter::opened).size(), 0u);
    EXPECT_FALSE(must(plan_visit(b.book(), round, b.yard, day_n(10))).visited);
    must(redo(b.book(), on_day(10)));
    EXPECT_EQ(hive(b.book(), b.hives[3])->state, StateOfHive::gone);
    EXPECT_FALSE(hanging(b.book(), {}, day_n(10)).empty());
}

TEST(Placing, one_hive_outside_a_round_takes_its_window_from_set_up) {
    TwoBatches b;
    PlaceEntry entry;
    entry.hive = b.hives[5];
    entry.strips = 4;
    entry.on = day_n(12);
    EXPECT_TRUE(refused(place_strips(b.book(), entry, on_day(12)), Why::missing, QStringLiteral("supers_on")));
    entry.supers_on = false;
    const auto done = must(place_strips(b.book(), entry, on_day(12)));
    EXPECT_EQ(done.pull_by, day_n(12 + 56));
    entry.strips = 0;
    EXPECT_TRUE(refused(place_strips(b.book(), entry, on_day(12)), Why::not_positive, QStringLiteral("strips")));
    entry.strips.reset();
    EXPECT_TRUE(refused(place_strips(b.book(), entry, on_day(12)), Why::missing, QStringLiteral("strips")));
    must(set_figures(b.book(), {{Figure::pull_from_days, {}, {}}}, on_day(12)));
    entry.strips = 4;
    EXPECT_TRUE(refused(place_strips(b.book(), entry, on_day(12)), Why::figure_missing, QStringLiteral("pull_from")));
}

} // namespace
} // namespace soakbook::tests
