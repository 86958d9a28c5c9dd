// SPDX-License-Identifier: GPL-3.0-or-later
// Strips out, and placements and pulls put right or made void.
#include "core/work/undo.h"
#include "core/work/yards_view.h"
#include "yards_bench.h"

namespace soakbook::tests {
namespace {

using namespace work;

struct Hanging : YardsBench {
    std::vector<BagId> bag_ids = bags_of(bagged_batch());
    RoundId the_round = round(10);
    VisitDone done = visit(the_round, 10);

    PullEntry one(const QString& name, int n) {
        PullEntry entry;
        entry.on = day_n(n);
        entry.rows.push_back({placement(hive(name)), {}, {}, {}});
        return entry;
    }
};

TEST(Pulls, strips_counted_and_missing_make_up_what_hangs) {
    Hanging b;
    auto entry = b.one(QStringLiteral("A1"), 55);
    entry.rows[0].pulled = 5;
    auto outcome = enter_pull(b.book(), entry, on_day(55));
    EXPECT_TRUE(refused(outcome, Why::counted_more, QStringLiteral("rows/0/pulled")));
    EXPECT_EQ(outcome.error().facts, (QStringList{QStringLiteral("n:5"), QStringLiteral("n:4")}));
    entry.rows[0].pulled = 2;
    entry.rows[0].missing = 1;
    EXPECT_TRUE(refused(enter_pull(b.book(), entry, on_day(55)), Why::counted_more));
    entry.rows[0].pulled = -1;
    EXPECT_TRUE(refused(enter_pull(b.book(), entry, on_day(55)), Why::too_small, QStringLiteral("rows/0/pulled")));
    entry.rows[0].pulled.reset();
    entry.rows[0].missing = 1;
    const auto done = must(enter_pull(b.book(), entry, on_day(55)));
    EXPECT_EQ(done.pulled, 3);
    EXPECT_EQ(done.missing, 1);
    EXPECT_EQ(done.hives, 1);
}

TEST(Pulls, a_group_is_counted_as_a_whole) {
    Hanging b;
    PullEntry entry;
    entry.on = day_n(55);
    int strips = 0;
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(55)))
        if (line.hive == b.row) {
            entry.rows.push_back({line.placement, line.strips - 1, 1, QStringLiteral("one on the ground")});
            strips += line.strips;
        }
    EXPECT_EQ(strips, 24);
    const auto done = must(enter_pull(b.book(), entry, on_day(55)));
    EXPECT_EQ(done.hives, 6);
    EXPECT_EQ(done.pulled + done.missing, 24);
}

TEST(Pulls, days_that_cannot_be_are_refused_and_early_ones_asked_about) {
    Hanging b;
    EXPECT_TRUE(refused(enter_pull(b.book(), b.one(QStringLiteral("A1"), 9), on_day(55)), Why::before_placed,
                        QStringLiteral("on")));
    EXPECT_TRUE(refused(enter_pull(b.book(), b.one(QStringLiteral("A1"), 56), on_day(55)), Why::in_the_future,
                        QStringLiteral("on")));
    const auto early = enter_pull(b.book(), b.one(QStringLiteral("A1"), 51), on_day(55));
    EXPECT_TRUE(asked(early, Why::window_not_open));
    EXPECT_EQ(early.error().facts, QStringList{QStringLiteral("d:2026-09-24")});
    must(enter_pull(b.book(), b.one(QStringLiteral("A1"), 51), on_day(55), {Why::window_not_open}));
    auto entry = b.one(QStringLiteral("A2"), 55);
    must(enter_pull(b.book(), entry, on_day(55)));
    EXPECT_TRUE(refused(enter_pull(b.book(), entry, on_day(55)), Why::already_pulled, QStringLiteral("rows/0/pulled")));
    EXPECT_TRUE(refused(enter_pull(b.book(), {}, on_day(55)), Why::missing, QStringLiteral("rows")));
    auto twice = b.one(QStringLiteral("A3"), 55);
    twice.rows.push_back(twice.rows[0]);
    EXPECT_TRUE(refused(enter_pull(b.book(), twice, on_day(55)), Why::not_found));
}

TEST(Pulls, strips_in_a_hive_that_died_stay_on_the_list_until_they_are_out) {
    Hanging b;
    auto dead = *hive(b.book(), b.hives[0]);
    dead.state = StateOfHive::dead;
    dead.state_on = day_n(30);
    must(save_hive(b.book(), dead, on_day(30)));
    bool seen = false;
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(55)))
        if (line.hive == b.hives[0]) {
            seen = true;
            EXPECT_TRUE(line.hive_dead);
        }
    EXPECT_TRUE(seen);
    must(enter_pull(b.book(), b.one(QStringLiteral("A1"), 55), on_day(55)));
}

TEST(Pulls, states_turn_on_their_days) {
    const auto from = day_n(10);
    const auto by = day_n(20);
    EXPECT_EQ(pull_state(from, by, day_n(9), 3), PullState::waiting);
    EXPECT_EQ(pull_state(from, by, day_n(10), 3), PullState::open);
    EXPECT_EQ(pull_state(from, by, day_n(16), 3), PullState::open);
    EXPECT_EQ(pull_state(from, by, day_n(17), 3), PullState::closing_soon);
    EXPECT_EQ(pull_state(from, by, day_n(20), 3), PullState::closing_soon);
    EXPECT_EQ(pull_state(from, by, day_n(21), 3), PullState::past);
}

TEST(Corrections, a_placement_is_put_right_with_a_reason) {
    Hanging b;
    const auto id = b.placement(b.hives[0]);
    EXPECT_TRUE(refused(correct_placement(b.book(), id, 3, {}, on_day(20)), Why::reason_missing));
    const auto why = because(QStringLiteral("miscounted"), 20);
    EXPECT_TRUE(refused(correct_placement(b.book(), id, 4, {}, why), Why::nothing_changed));
    EXPECT_TRUE(refused(correct_placement(b.book(), id, 0, {}, why), Why::not_positive, QStringLiteral("strips")));
    EXPECT_TRUE(refused(correct_placement(b.book(), id, 400, {}, why), Why::bag_short, QStringLiteral("strips")));
    EXPECT_TRUE(refused(correct_placement(b.book(), id, {}, day_n(1), why), Why::before_sealed, QStringLiteral("on")));
    EXPECT_TRUE(refused(correct_placement(b.book(), id, {}, day_n(21), why), Why::in_the_future, QStringLiteral("on")));
    const int before = b.left(b.done.bags[0].bag) + b.left(b.done.bags[1].bag);
    must(correct_placement(b.book(), id, 3, day_n(9), why));
    EXPECT_EQ(b.left(b.done.bags[0].bag) + b.left(b.done.bags[1].bag), before + 1);
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(20)))
        if (line.placement == id) {
            EXPECT_EQ(line.strips, 3);
            EXPECT_EQ(line.placed_on, day_n(9));
            EXPECT_EQ(line.pull_by, day_n(9 + 56)) << "the window keeps the days it was given";
        }
}

TEST(Corrections, strips_corrected_after_the_pull_change_what_is_missing) {
    Hanging b;
    const auto id = b.placement(b.row);
    b.pull(b.yard, 55);
    const auto why = because(QStringLiteral("one more was hung"), 56);
    EXPECT_TRUE(refused(correct_placement(b.book(), id, 23, {}, why), Why::counted_more)) << "24 came out";
    EXPECT_TRUE(refused(correct_placement(b.book(), id, {}, day_n(56), because(QStringLiteral("later"), 60)),
                        Why::before_placed));
    must(correct_placement(b.book(), id, 25, {}, why));
    int out = 0;
    for (const HiveEvent& event : hive_events(b.book(), b.row))
        if (event.kind == HiveEvent::Kind::strips_out) {
            ++out;
            EXPECT_EQ(event.strips, 24);
            EXPECT_EQ(event.missing, 1);
        }
    EXPECT_EQ(out, 1);
}

TEST(Corrections, a_pull_is_put_right_with_a_reason) {
    Hanging b;
    const auto id = b.placement(b.hives[0]);
    EXPECT_TRUE(refused(correct_pull(b.book(), id, 3, 1, {}, because(QStringLiteral("x"), 20)), Why::not_found))
        << "nothing came out yet";
    b.pull(b.yard, 55);
    EXPECT_TRUE(refused(correct_pull(b.book(), id, 3, 1, {}, on_day(56)), Why::reason_missing));
    const auto why = because(QStringLiteral("one was left in"), 56);
    EXPECT_TRUE(refused(correct_pull(b.book(), id, 3, 2, {}, why), Why::counted_more));
    EXPECT_TRUE(refused(correct_pull(b.book(), id, {}, {}, day_n(9), why), Why::before_placed));
    EXPECT_TRUE(refused(correct_pull(b.book(), id, 4, 0, {}, why), Why::nothing_changed));
    EXPECT_EQ(must(correct_pull(b.book(), id, 3, {}, day_n(54), why)), 3);
}

TEST(Corrections, a_void_placement_gives_its_strips_back_to_the_bag) {
    Hanging b;
    const auto id = b.placement(b.hives[0]);
    const int before = b.left(b.done.bags[0].bag) + b.left(b.done.bags[1].bag);
    EXPECT_TRUE(refused(void_placement(b.book(), id, on_day(20)), Why::reason_missing));
    EXPECT_EQ(must(void_placement(b.book(), id, because(QStringLiteral("wrong hive"), 20))), 4);
    EXPECT_TRUE(refused(void_placement(b.book(), id, because(QStringLiteral("again"), 20)), Why::not_found));
    EXPECT_EQ(b.left(b.done.bags[0].bag) + b.left(b.done.bags[1].bag), before + 4);
    bool kept = false;
    for (const HiveEvent& event : hive_events(b.book(), b.hives[0]))
        kept = kept || event.made_void;
    EXPECT_TRUE(kept) << "still shown";
}

TEST(Corrections, with_its_last_strips_void_a_yard_is_to_be_visited_again) {
    YardsBench b;
    b.bagged_batch();
    const auto round = b.round(10);
    VisitEntry entry = b.as_planned(round, b.yard, 10);
    for (auto& r : entry.rows)
        if (r.hive != b.row)
            r.strips = 0;
    must(enter_visit(b.book(), entry, on_day(10)));
    EXPECT_TRUE(rounds(b.book()).front().yards.front().second);
    for (const PullLine& line : hanging(b.book(), {}, day_n(10)))
        must(void_placement(b.book(), line.placement, because(QStringLiteral("rained off"), 10)));
    EXPECT_FALSE(rounds(b.book()).front().yards.front().second);
}

TEST(Hives, windows_that_do_not_meet_are_said) {
    Hanging b;
    PlaceEntry more;
    more.hive = b.hives[0];
    more.strips = 2;
    more.on = day_n(20);
    more.supers_on = false;
    must(place_strips(b.book(), more, on_day(20), {Why::hive_has_strips}));
    const auto line_of = [&](int n) {
        for (HiveLine& line : hive_lines(b.book(), b.yard, day_n(n)))
            if (line.entry.id == b.hives[0])
                return std::move(line);
        throw std::runtime_error("gone");
    };
    EXPECT_FALSE(line_of(20).windows_clash) << "62 to 66 is in both";
    EXPECT_EQ(line_of(20).pull_by, day_n(66)) << "the earliest last day";
    EXPECT_EQ(line_of(20).strips, 6);
    more.on = day_n(30);
    must(place_strips(b.book(), more, on_day(30), {Why::hive_has_strips}));
    EXPECT_TRUE(line_of(30).windows_clash) << "from day 72 and to day 66";
    EXPECT_EQ(line_of(30).since, day_n(10));
    EXPECT_EQ(line_of(30).day_number, 21);
}

} // namespace
} // namespace soakbook::tests
