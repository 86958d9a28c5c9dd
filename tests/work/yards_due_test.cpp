// SPDX-License-Identifier: GPL-3.0-or-later
// Due: each kind of row, looked for on the days around its own.
#include "core/work/bag.h"
#include "core/work/count.h"
#include "core/work/due.h"
#include "core/work/heat.h"
#include "core/work/leftovers.h"
#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "core/work/stock.h"
#include "yards_bench.h"

#include <algorithm>

namespace soakbook::tests {
namespace {

using namespace work;

struct Looking : YardsBench {
    /// Rows of one kind at noon of day n.
    std::vector<DueRow> rows(DueKind kind, int n, int hour = 12) {
        std::vector<DueRow> found;
        for (DueRow& each : due(book(), moment(n, hour)))
            if (each.kind == kind)
                found.push_back(std::move(each));
        return found;
    }
    /// The one row of that kind, in that group.
    DueRow one(DueKind kind, int n, DueGroup group, int hour = 12) {
        auto found = rows(kind, n, hour);
        if (found.size() != 1 || found[0].group != group) {
            ADD_FAILURE() << found.size() << " rows of kind " << static_cast<int>(kind) << " on day " << n
                          << (found.empty()
                                  ? ""
                                  : ", the first in group " + std::to_string(static_cast<int>(found[0].group)));
            return {};
        }
        return found[0];
    }
    bool misses(Figure figure, int n) {
        const auto found = rows(DueKind::figure_missing, n);
        return std::any_of(found.begin(), found.end(),
                           [&](const DueRow& each) { return each.subject == QLatin1String(info(figure).key); });
    }
};

TEST(Due, an_empty_workbook_asks_for_nothing) {
    Bench nothing(SetUp::nothing);
    EXPECT_TRUE(due(nothing.book(), moment(0, 12)).empty());
    Bench bare;
    EXPECT_TRUE(due(bare.book(), moment(0, 12)).empty())
        << "figures are asked for when they keep something real from being said";
}

TEST(Due, pulls_wait_open_close_and_pass) {
    Looking b;
    b.say(Figure::pull_warn_days, 3);
    b.bagged_batch();
    b.visit(b.round(10), 10);
    const auto later = b.one(DueKind::pull_opens, 40, DueGroup::later);
    EXPECT_EQ(later.yard, b.yard);
    EXPECT_EQ(later.count, 26) << "20 hives and the six of the row";
    EXPECT_EQ(later.strips, 104);
    EXPECT_EQ(later.from, day_n(52));
    EXPECT_EQ(later.by, day_n(66));
    EXPECT_EQ(later.since->local_day(), day_n(10));
    b.one(DueKind::pull_opens, 45, DueGroup::later);
    b.one(DueKind::pull_opens, 46, DueGroup::this_week);
    EXPECT_TRUE(b.rows(DueKind::pull_open, 51).empty());
    EXPECT_TRUE(b.rows(DueKind::pull_opens, 52).empty());
    b.one(DueKind::pull_open, 52, DueGroup::later);
    b.one(DueKind::pull_open, 60, DueGroup::this_week);
    b.one(DueKind::pull_open, 66, DueGroup::today);
    EXPECT_TRUE(b.rows(DueKind::pull_past, 66).empty());
    const auto past = b.one(DueKind::pull_past, 67, DueGroup::now);
    EXPECT_EQ(past.by, day_n(66));
    EXPECT_EQ(due_figures(b.book(), day_n(67)).hives_past_pull, 26);
    EXPECT_EQ(due_figures(b.book(), day_n(66)).hives_carrying, 26);
    b.pull(b.yard, 67);
    for (const DueKind kind : {DueKind::pull_opens, DueKind::pull_open, DueKind::pull_past})
        EXPECT_TRUE(b.rows(kind, 68).empty());
}

TEST(Due, a_dead_hive_that_holds_strips_is_its_own_row) {
    Looking b;
    b.bagged_batch();
    b.visit(b.round(10), 10);
    EXPECT_TRUE(b.rows(DueKind::pull_dead, 30).empty());
    auto dead = *hive(b.book(), b.hives[0]);
    dead.state = StateOfHive::dead;
    must(save_hive(b.book(), dead, on_day(30)));
    const auto row = b.one(DueKind::pull_dead, 30, DueGroup::today);
    EXPECT_EQ(row.count, 1);
    EXPECT_EQ(row.ids, std::vector<qint64>{b.placement(b.hives[0]).value});
    EXPECT_EQ(b.one(DueKind::pull_opens, 30, DueGroup::later).count, 25);
}

TEST(Due, a_count_is_due_after_pulling_until_it_is_made) {
    Looking b;
    b.bagged_batch();
    b.visit(b.round(10), 10);
    b.pull(b.yard, 55);
    EXPECT_TRUE(b.misses(Figure::count_after_days, 56));
    b.say(Figure::count_after_days, 14);
    EXPECT_FALSE(b.misses(Figure::count_after_days, 56));
    const auto row = b.one(DueKind::count_mites, 56, DueGroup::later);
    EXPECT_EQ(row.by, day_n(69));
    EXPECT_EQ(row.count, 26);
    EXPECT_EQ(row.since->local_day(), day_n(55));
    b.one(DueKind::count_mites, 69, DueGroup::today);
    b.one(DueKind::count_mites, 70, DueGroup::now);
    CountEntry counted;
    counted.on = day_n(70);
    for (const HiveId id : b.hives)
        counted.rows.push_back({id, 3, 300, {}, {}});
    must(enter_counts(b.book(), counted, on_day(70)));
    EXPECT_EQ(b.one(DueKind::count_mites, 71, DueGroup::now).count, 6) << "the row is still to count";
    counted.rows.assign(1, {b.row, 3, 300, {}, {}});
    must(enter_counts(b.book(), counted, on_day(70)));
    EXPECT_TRUE(b.rows(DueKind::count_mites, 71).empty());
}

TEST(Due, visits_and_short_rounds) {
    Looking b;
    const auto round = b.round(30);
    const auto visit = b.one(DueKind::visit_yard, 10, DueGroup::later);
    EXPECT_EQ(visit.round, round);
    EXPECT_EQ(visit.yard, b.yard);
    EXPECT_EQ(visit.strips, 104);
    b.one(DueKind::visit_yard, 24, DueGroup::this_week);
    b.one(DueKind::visit_yard, 30, DueGroup::today);
    b.one(DueKind::visit_yard, 31, DueGroup::now);
    const auto shortage = b.one(DueKind::round_short, 10, DueGroup::later);
    EXPECT_EQ(shortage.strips, 104);
    EXPECT_EQ(shortage.by, day_n(30));
    b.say(Figure::rest_days, 7);
    b.one(DueKind::round_short, 17, DueGroup::this_week); // what is sealed after day 23 still rests on day 30
    b.one(DueKind::round_short, 23, DueGroup::today);
    b.bagged_batch(10, 1);
    EXPECT_TRUE(b.rows(DueKind::round_short, 13).empty()) << "resting now, ready by then";
    must(close_round(b.book(), round, on_day(14)));
    EXPECT_TRUE(b.rows(DueKind::visit_yard, 31).empty());
}

TEST(Due, two_rounds_do_not_use_the_same_strips) {
    Looking b;
    b.bagged_batch(0, 1); // 480
    YardEntry entry;
    entry.name = QStringLiteral("Orchard");
    const auto orchard = must(save_yard(b.book(), entry, on_day(0)));
    HiveRow row{orchard, QStringLiteral("O"), 1, 100, 1, {}, 10};
    must(add_hives(b.book(), row, on_day(0)));
    b.round(30, QStringLiteral("first"), {orchard}); // 400
    const auto second = b.round(40, QStringLiteral("second"));
    const auto shortage = b.one(DueKind::round_short, 10, DueGroup::later);
    EXPECT_EQ(shortage.round, second);
    EXPECT_EQ(shortage.strips, 104 - 80);
}

TEST(Due, bags_rest_come_near_their_limit_and_pass_it) {
    Looking b;
    b.say(Figure::rest_days, 7);
    const auto ids = b.bags_of(b.bagged_batch()); // sealed day 2
    const auto rest = b.one(DueKind::rest_ends, 3, DueGroup::this_week);
    EXPECT_EQ(rest.by, day_n(9));
    EXPECT_EQ(rest.count, 12);
    EXPECT_EQ(rest.strips, 960);
    b.one(DueKind::rest_ends, 2, DueGroup::later);
    b.one(DueKind::rest_ends, 9, DueGroup::today);
    EXPECT_TRUE(b.rows(DueKind::rest_ends, 10).empty());

    const int limit = static_cast<int>(maths::days_between(first_day, *bag(b.book(), ids[0], day_n(3))->use_by));
    EXPECT_TRUE(b.misses(Figure::near_limit_days, 20));
    EXPECT_TRUE(b.rows(DueKind::bags_near_limit, limit).empty());
    b.say(Figure::near_limit_days, 30);
    EXPECT_FALSE(b.misses(Figure::near_limit_days, 20));
    EXPECT_TRUE(b.rows(DueKind::bags_near_limit, limit - 31).empty());
    const auto near = b.one(DueKind::bags_near_limit, limit - 30, DueGroup::this_week);
    EXPECT_EQ(near.count, 12);
    EXPECT_EQ(near.from, day_n(limit));
    EXPECT_EQ(near.ids.size(), 12u);
    b.one(DueKind::bags_near_limit, limit, DueGroup::today);
    EXPECT_TRUE(b.rows(DueKind::bags_past_limit, limit).empty());
    const auto past = b.one(DueKind::bags_past_limit, limit + 1, DueGroup::today);
    EXPECT_EQ(past.strips, 960);
    std::vector<BagId> all(ids.begin(), ids.end());
    must(discard_bags(b.book(), all, {}, QStringLiteral("past their limit"), on_day(limit + 1)));
    EXPECT_TRUE(b.rows(DueKind::bags_past_limit, limit + 2).empty());
}

TEST(Due, a_bag_open_too_long_and_a_label_to_print_again) {
    Looking b;
    const auto ids = b.bags_of(b.bagged_batch());
    EXPECT_FALSE(b.misses(Figure::opened_days, 5)) << "no bag is open";
    must(open_bag(b.book(), ids[0], day_n(5), on_day(5)));
    EXPECT_TRUE(b.misses(Figure::opened_days, 5));
    b.say(Figure::opened_days, 10);
    EXPECT_TRUE(b.rows(DueKind::opened_too_long, 15).empty());
    EXPECT_EQ(b.one(DueKind::opened_too_long, 16, DueGroup::today).ids, std::vector<qint64>{ids[0].value});

    must(labels_printed(b.book(), {ids[1]}, {}, on_day(6)));
    EXPECT_TRUE(b.rows(DueKind::print_label_again, 6).empty());
    BagCorrection correction;
    correction.bag = ids[1];
    correction.packed = 79;
    must(correct_bag(b.book(), correction, because(QStringLiteral("counted again"), 7)));
    EXPECT_EQ(b.one(DueKind::print_label_again, 7, DueGroup::today).ids, std::vector<qint64>{ids[1].value});
    must(labels_printed(b.book(), {ids[1]}, {}, on_day(8)));
    EXPECT_TRUE(b.rows(DueKind::print_label_again, 8).empty());
}

TEST(Due, a_pail_that_waits_longer_than_the_rule) {
    Looking b;
    PourEntry pour;
    pour.batch = b.bagged_batch();
    pour.pails = {maths::kilograms(10)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    must(pour_leftovers(b.book(), pour, on_day(2, 16)));
    EXPECT_TRUE(b.misses(Figure::pail_wait_days, 5));
    b.say(Figure::pail_wait_days, 60);
    EXPECT_TRUE(b.rows(DueKind::pail_waits, 62).empty());
    EXPECT_EQ(b.one(DueKind::pail_waits, 63, DueGroup::this_week).count, 1);
}

TEST(Due, a_tank_is_read_stirred_and_never_too_hot) {
    Looking b;
    const auto planned = must(plan_mix(b.book(), b.plan(), on_day(0, 9)));
    EXPECT_EQ(b.one(DueKind::weigh_planned, 0, DueGroup::today).batch, planned.batch);
    b.one(DueKind::weigh_planned, 1, DueGroup::now);
    const auto batch = b.mixed_batch(0);
    EXPECT_TRUE(b.misses(Figure::reading_gap_minutes, 1));
    EXPECT_TRUE(b.misses(Figure::stir_every_minutes, 1));
    b.say(Figure::reading_gap_minutes, 120);
    b.say(Figure::stir_every_minutes, 30);
    b.one(DueKind::read_tank, 0, DueGroup::today, 19);
    EXPECT_EQ(b.one(DueKind::read_tank, 0, DueGroup::now, 20).since, moment(0, 18)) << "weighed in at 18";
    ReadingEntry reading;
    reading.batch = batch;
    reading.probe = maths::celsius(61);
    must(log_reading(b.book(), reading, on_day(1, 8)));
    const auto hot = b.one(DueKind::over_ceiling, 1, DueGroup::now, 8);
    EXPECT_EQ(hot.temperature, maths::celsius(61));
    b.one(DueKind::read_tank, 1, DueGroup::today, 9);
    reading.probe = maths::celsius(57);
    must(log_reading(b.book(), reading, on_day(1, 9)));
    EXPECT_TRUE(b.rows(DueKind::over_ceiling, 1, 9).empty());
    StirEntry stir;
    stir.batch = batch;
    stir.minutes = 5;
    stir.clear = false;
    must(log_stir(b.book(), stir, on_day(1, 9)));
    EXPECT_EQ(b.one(DueKind::stir_tank, 1, DueGroup::now, 10).since, moment(1, 9));
    stir.clear = true;
    stir.outlet_poured_back = true;
    must(log_stir(b.book(), stir, on_day(1, 10)));
    EXPECT_TRUE(b.rows(DueKind::stir_tank, 1, 11).empty());
}

TEST(Due, a_soak_with_a_curve_is_weighed_at_the_hour_its_curve_reaches_the_target) {
    Looking b;
    const auto batch = b.soaked_batch(0, 1); // started day 1 at 10
    b.say(Figure::first_weigh_hours, 2);
    b.say(Figure::weigh_every_hours, 24);
    WeighEntry sample;
    sample.soak = b.soaks_of(batch)[0];
    sample.strips = 10;
    // On 11 + 26 (1 - exp(-0.15 t)) g, which comes to 34 g after ln(26 / 3) / 0.15 = 14.4 h: half past midnight.
    for (const auto& [hours, grams] : {std::pair{2, 177.4}, {5, 247.2}, {8, 291.7}}) {
        sample.total = maths::grams(grams);
        must(log_weighing(b.book(), sample, on_day(1, 10 + hours)));
    }
    const auto row = b.one(DueKind::weigh_strips, 1, DueGroup::this_week, 19);
    ASSERT_TRUE(row.by_hour);
    EXPECT_LT(moment(2, 0, 10).utc_ms, row.by_hour->utc_ms);
    EXPECT_LT(row.by_hour->utc_ms, moment(2, 0, 40).utc_ms);
    // Whoever weighs more often than that is told the earlier hour.
    b.say(Figure::weigh_every_hours, 3);
    EXPECT_EQ(b.one(DueKind::weigh_strips, 1, DueGroup::today, 19).by_hour, moment(1, 21));
}

TEST(Due, a_soak_is_weighed_then_bagged_then_its_batch_is_closed) {
    Looking b;
    const auto batch = b.soaked_batch(0, 1); // started day 1 at 10
    EXPECT_TRUE(b.misses(Figure::first_weigh_hours, 1));
    b.say(Figure::first_weigh_hours, 20);
    b.say(Figure::weigh_every_hours, 6);
    const auto weigh = b.one(DueKind::weigh_strips, 1, DueGroup::this_week, 12);
    EXPECT_EQ(weigh.soak, b.soaks_of(batch)[0]);
    EXPECT_EQ(weigh.subject, QStringLiteral("bin 1"));
    EXPECT_EQ(weigh.by_hour, moment(2, 6));
    b.one(DueKind::weigh_strips, 2, DueGroup::today, 5);
    b.one(DueKind::weigh_strips, 2, DueGroup::now, 6);
    WeighEntry light;
    light.soak = b.soaks_of(batch)[0];
    light.strips = 10;
    light.total = maths::grams(300);
    must(log_weighing(b.book(), light, on_day(2, 7)));
    EXPECT_EQ(b.one(DueKind::weigh_strips, 2, DueGroup::today, 8).by_hour, moment(2, 13));
    EXPECT_TRUE(b.rows(DueKind::bag_strips, 2).empty());
    light.total = maths::grams(339);
    must(log_weighing(b.book(), light, on_day(2, 13)));
    EXPECT_TRUE(b.rows(DueKind::weigh_strips, 2, 14).empty());
    EXPECT_EQ(b.one(DueKind::bag_strips, 2, DueGroup::today, 14).count, 480);
    must(reserve_labels(b.book(), batch, 2, on_day(2, 14)));
    EXPECT_EQ(b.one(DueKind::fill_reserved, 2, DueGroup::this_week, 14).count, 2);
    must(end_soak(b.book(), b.soaks_of(batch)[0], {}, on_day(2, 15)));
    BagEntry bags;
    bags.batch = batch;
    bags.bags = 6;
    must(fill_bags(b.book(), bags, on_day(2, 16)));
    EXPECT_TRUE(b.rows(DueKind::bag_strips, 2, 17).empty());
    EXPECT_EQ(b.one(DueKind::pour_or_close, 2, DueGroup::this_week, 17).batch, batch);
}

TEST(Due, most_urgent_first_within_each_group) {
    Looking b;
    b.say(Figure::near_limit_days, 30);
    b.say(Figure::pull_warn_days, 3);
    b.bagged_batch();
    b.visit(b.round(10), 10);
    b.round(90, QStringLiteral("later"));
    for (const int n : {11, 40, 52, 66, 67, 95, 370, 400}) {
        const auto rows = due(b.book(), moment(n, 12));
        EXPECT_TRUE(std::is_sorted(rows.begin(), rows.end(), [](const DueRow& a, const DueRow& c) {
            return std::tie(a.group, a.sort_day) < std::tie(c.group, c.sort_day);
        }));
        for (const DueRow& row : rows)
            EXPECT_TRUE(row.batch || row.yard || row.round || !row.ids.empty() || !row.subject.isEmpty())
                << "it leads nowhere";
    }
}

} // namespace
} // namespace soakbook::tests
