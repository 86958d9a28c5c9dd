// SPDX-License-Identifier: GPL-3.0-or-later
// Bags on the shelf: their states by day, what is thrown away or counted anew, and strips by month.
#include "core/work/bag.h"
#include "core/work/due.h"
#include "core/work/stock.h"
#include "yards_bench.h"

namespace soakbook::tests {
namespace {

using namespace work;

struct Shelf : YardsBench {
    BatchId batch = bagged_batch();
    std::vector<BagId> ids = bags_of(batch);
    BagLine line(std::size_t i, int n) { return *bag(book(), ids[i], day_n(n)); }
};

TEST(BagStates, turn_on_their_days) {
    BagLine bag;
    EXPECT_EQ(bag_state(bag, day_n(0), 30), BagState::reserved);
    bag.sealed_on = day_n(0);
    bag.rest_until = day_n(7);
    bag.use_by = day_n(100);
    bag.left = 80;
    EXPECT_EQ(bag_state(bag, day_n(6), 30), BagState::resting);
    EXPECT_EQ(bag_state(bag, day_n(7), 30), BagState::ready);
    EXPECT_EQ(bag_state(bag, day_n(69), 30), BagState::ready);
    EXPECT_EQ(bag_state(bag, day_n(70), 30), BagState::near_limit);
    EXPECT_EQ(bag_state(bag, day_n(70), {}), BagState::ready) << "no warning time was said";
    EXPECT_EQ(bag_state(bag, day_n(100), 30), BagState::near_limit) << "the last day is still good";
    EXPECT_EQ(bag_state(bag, day_n(101), 30), BagState::past_limit);
    bag.left = 0;
    EXPECT_EQ(bag_state(bag, day_n(101), 30), BagState::gone);
    bag.void_reason = QStringLiteral("burst");
    EXPECT_EQ(bag_state(bag, day_n(6), 30), BagState::made_void);
}

TEST(BagStates, twelve_months_from_29_february_end_on_28_february) {
    // W3C XML Schema part 2, appendix E: the day of the month is kept, or the month's last day.
    YardsBench b;
    const int leap = static_cast<int>(maths::days_between(first_day, maths::day(2028, 2, 29)));
    const auto ids = b.bags_of(b.bagged_batch(leap - 2));
    const auto line = *bag(b.book(), ids[0], day_n(leap));
    EXPECT_EQ(line.sealed_on, maths::day(2028, 2, 29));
    EXPECT_EQ(line.use_by, maths::day(2029, 2, 28));
    EXPECT_EQ(bag(b.book(), ids[0], maths::day(2029, 2, 28))->state, BagState::ready);
    EXPECT_EQ(bag(b.book(), ids[0], maths::day(2029, 3, 1))->state, BagState::past_limit);
}

TEST(Shelf, strips_are_thrown_away_with_a_reason_and_no_more_than_are_left) {
    Shelf b;
    const auto discard = [&](std::optional<int> n, const QString& reason, int on = 5) {
        return discard_strips(b.book(), b.ids[0], n, day_n(on), reason, on_day(5));
    };
    EXPECT_TRUE(refused(discard({}, QStringLiteral("x")), Why::missing, QStringLiteral("strips")));
    EXPECT_TRUE(refused(discard(0, QStringLiteral("x")), Why::not_positive, QStringLiteral("strips")));
    EXPECT_TRUE(refused(discard(81, QStringLiteral("x")), Why::bag_short, QStringLiteral("strips")));
    EXPECT_TRUE(refused(discard(3, {}), Why::reason_missing, QStringLiteral("reason")));
    EXPECT_TRUE(refused(discard(3, QString(4001, QLatin1Char('x'))), Why::too_long, QStringLiteral("reason")));
    EXPECT_TRUE(refused(discard(3, QStringLiteral("x"), 1), Why::before_sealed, QStringLiteral("on")));
    EXPECT_TRUE(refused(discard(3, QStringLiteral("x"), 6), Why::in_the_future, QStringLiteral("on")));
    must(discard(3, QStringLiteral("mouldy")));
    EXPECT_EQ(b.left(b.ids[0]), 77);
    must(discard(77, QStringLiteral("mouldy")));
    EXPECT_EQ(b.line(0, 5).state, BagState::gone);
    EXPECT_TRUE(refused(discard_bags(b.book(), {b.ids[0]}, {}, QStringLiteral("x"), on_day(5)), Why::bag_gone));
    EXPECT_EQ(
        must(discard_bags(b.book(), {b.ids[1], b.ids[2], b.ids[1]}, {}, QStringLiteral("past their limit"), on_day(5))),
        160);
}

TEST(Shelf, a_recount_writes_the_difference) {
    Shelf b;
    EXPECT_TRUE(refused(recount_bag(b.book(), b.ids[0], {}, QStringLiteral("x"), on_day(5)), Why::missing,
                        QStringLiteral("left")));
    EXPECT_TRUE(refused(recount_bag(b.book(), b.ids[0], -1, QStringLiteral("x"), on_day(5)), Why::too_small,
                        QStringLiteral("left")));
    EXPECT_TRUE(refused(recount_bag(b.book(), b.ids[0], 80, QStringLiteral("x"), on_day(5)), Why::nothing_changed));
    EXPECT_TRUE(
        refused(recount_bag(b.book(), b.ids[0], 78, {}, on_day(5)), Why::reason_missing, QStringLiteral("reason")));
    EXPECT_EQ(must(recount_bag(b.book(), b.ids[0], 78, QStringLiteral("counted twice"), on_day(5))), -2);
    EXPECT_EQ(must(recount_bag(b.book(), b.ids[0], 81, QStringLiteral("counted again"), on_day(6))), 3);
    const auto line = b.line(0, 6);
    EXPECT_EQ(line.left, 81);
    EXPECT_EQ(line.recounted, 1);
    const auto events = bag_events(b.book(), b.ids[0]);
    ASSERT_EQ(events.size(), 3u);
    EXPECT_EQ(events[0].kind, BagEvent::Kind::sealed);
    EXPECT_EQ(events[2].strips, 3);
    EXPECT_EQ(events[2].reason, QStringLiteral("counted again"));
}

TEST(Shelf, opened_and_resealed_are_days_of_their_own) {
    Shelf b;
    b.say(Figure::opened_days, 30);
    EXPECT_TRUE(refused(reseal_bag(b.book(), b.ids[0], day_n(5), on_day(5)), Why::nothing_changed)) << "it is not open";
    EXPECT_TRUE(refused(open_bag(b.book(), b.ids[0], day_n(1), on_day(5)), Why::before_sealed));
    must(open_bag(b.book(), b.ids[0], day_n(5), on_day(5)));
    EXPECT_TRUE(refused(open_bag(b.book(), b.ids[0], day_n(6), on_day(6)), Why::nothing_changed));
    EXPECT_TRUE(refused(reseal_bag(b.book(), b.ids[0], day_n(4), on_day(6)), Why::before_start, QStringLiteral("on")));
    must(reseal_bag(b.book(), b.ids[0], day_n(6), on_day(6)));
    EXPECT_TRUE(refused(open_bag(b.book(), b.ids[0], day_n(5), on_day(7)), Why::before_start));
    must(open_bag(b.book(), b.ids[0], day_n(7), on_day(7)));
    EXPECT_EQ(b.line(0, 7).opened_on, day_n(5)) << "its days run from the first opening";
    EXPECT_FALSE(b.line(0, 35).opened_too_long);
    EXPECT_TRUE(b.line(0, 36).opened_too_long);
}

TEST(Shelf, bags_are_moved_and_those_that_stand_there_already_are_not) {
    Shelf b;
    EXPECT_TRUE(refused(move_bags(b.book(), {b.ids[0]}, QStringLiteral("shelf 1"), on_day(5)), Why::nothing_changed));
    EXPECT_TRUE(refused(move_bags(b.book(), {b.ids[0]}, QString(201, QLatin1Char('x')), on_day(5)), Why::too_long,
                        QStringLiteral("stands")));
    EXPECT_TRUE(refused(move_bags(b.book(), {BagId{99}}, QStringLiteral("barn"), on_day(5)), Why::not_found));
    must(move_bags(b.book(), {b.ids[0]}, QStringLiteral("barn"), on_day(5)));
    EXPECT_EQ(must(move_bags(b.book(), {b.ids[0], b.ids[1]}, QStringLiteral("barn"), on_day(5))), 1);
    EXPECT_EQ(b.line(1, 5).stands, QStringLiteral("barn"));
}

TEST(Shelf, lists_are_by_limit_with_gone_and_void_bags_last) {
    Shelf b;
    const auto later = b.bags_of(b.bagged_batch(5, 1));
    must(discard_bags(b.book(), {b.ids[0]}, {}, QStringLiteral("wet"), on_day(8)));
    must(void_bag(b.book(), b.ids[1], because(QStringLiteral("burst"), 8)));
    const auto all = bags(b.book(), day_n(8), BagFilter::all);
    ASSERT_EQ(all.size(), 18u);
    EXPECT_EQ(all[16].id, b.ids[0]);
    EXPECT_EQ(all[17].id, b.ids[1]);
    EXPECT_EQ(all[10].id, later[0]);
    EXPECT_EQ(bags(b.book(), day_n(8)).size(), 16u);
    EXPECT_EQ(bags(b.book(), day_n(8), BagFilter::gone).size(), 2u);
    EXPECT_EQ(stock_figures(b.book(), day_n(8)).ready, 16 * 80);
}

TEST(Months, strips_are_counted_where_their_limit_falls_and_rounds_draw_on_the_nearest) {
    YardsBench b;
    b.bagged_batch(); // 960 strips, sealed 5 August 2026, use by 5 August 2027
    b.round(40);      // 12 September
    const auto months = stock_by_month(b.book(), day_n(3));
    ASSERT_EQ(months.size(), 12u);
    EXPECT_EQ(months[0].month, 8u);
    EXPECT_EQ(months[1].wanted, 104);
    EXPECT_EQ(months[11].month, 7u);
    EXPECT_EQ(months[11].in_date, 960) << "if nothing is hung";
    const auto year = year_ahead(b.book(), day_n(3));
    EXPECT_EQ(year.in_date_after_rounds[0], 960);
    EXPECT_EQ(year.in_date_after_rounds[1], 960 - 104);
    ASSERT_EQ(year.rounds.size(), 1u);
    EXPECT_EQ(year.rounds[0].wanted, 104);
    EXPECT_EQ(year.rounds[0].short_of, 0);
    const auto next = year_ahead(b.book(), maths::day(2026, 9, 1));
    EXPECT_EQ(next.reach_limit[11], 960 - 104);
    EXPECT_EQ(next.in_date_after_rounds[11], 0);
}

} // namespace
} // namespace soakbook::tests
