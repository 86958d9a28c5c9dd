// SPDX-License-Identifier: GPL-3.0-or-later
// What may still be put right in the shed once strips hang in hives; and a file that cannot be written just now.
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/hive.h"
#include "core/book/records/pail.h"
#include "core/book/records/placement.h"
#include "core/book/records/yard.h"

#include <sqlite3.h>

namespace soakbook::tests {

using namespace work;
using maths::days_after;
using maths::grams;
using maths::kilograms;

namespace {

/// A bagged batch, and eight strips of its first bag in a hive since day 10.
struct Hanging {
    Bench bench;
    BatchId batch = bench.bagged_batch();
    BagId bag = bench.bags_of(batch).at(0);
    PlacementId placement;

    Hanging() {
        struct Done {
            explicit operator bool() const { return true; }
        };
        bench.book().write({QStringLiteral("strips_in"), 1, {}}, on_day(10), [&](book::Writing& writing) {
            book::Yard yard;
            yard.name = QStringLiteral("orchard");
            book::Hive hive;
            hive.yard = book::insert(writing, yard);
            hive.name = QStringLiteral("12");
            book::Placement in;
            in.hive = book::insert(writing, hive);
            in.yard = hive.yard;
            in.bag = bag;
            in.strips = 8;
            in.acid_per_strip = grams(9.16);
            in.placed_on = days_after(first_day, 10);
            in.written = moment(10, 12);
            placement = book::insert(writing, in);
            return Done{};
        });
    }
    book::Placement record() { return *book::fetch(bench.book(), placement); }
};

} // namespace

TEST(Hanging, a_weighing_put_right_mends_the_acid_of_strips_in_hives) {
    Hanging h;
    for (const SoakLine& soak : h.bench.view(h.batch).soaks) {
        WeighEntry entry;
        entry.strips = 10;
        entry.total = grams(330);
        must(correct_weighing(h.bench.book(), soak.weighings.at(0).id, entry, because(QStringLiteral("misread"), 12)));
    }
    EXPECT_EQ(book::fetch(h.bench.book(), h.bag)->acid_per_strip, grams(8.8));
    EXPECT_EQ(h.record().acid_per_strip, grams(8.8));
}

TEST(Hanging, a_bag_is_not_put_right_below_what_left_it) {
    Hanging h;
    EXPECT_TRUE(
        refused(correct_bag(h.bench.book(), {h.bag, 7, std::nullopt, std::nullopt}, because(QStringLiteral("x"), 12)),
                Why::too_small, QStringLiteral("packed")));
    EXPECT_TRUE(correct_bag(h.bench.book(), {h.bag, 8, std::nullopt, std::nullopt}, because(QStringLiteral("x"), 12))
                    .has_value());
}

TEST(Hanging, a_bag_is_not_sealed_after_its_strips_were_hung_or_past_its_limit_by_then) {
    Hanging h;
    const auto reseal = [&](maths::Day day) {
        return correct_bag(h.bench.book(), {h.bag, std::nullopt, std::nullopt, day},
                           because(QStringLiteral("wrong date"), 12));
    };
    EXPECT_TRUE(refused(reseal(days_after(first_day, 11)), Why::before_sealed, QStringLiteral("sealed_on")));
    EXPECT_TRUE(reseal(days_after(first_day, 10)).has_value());
    EXPECT_TRUE(reseal(days_after(first_day, 3)).has_value());
}

TEST(Hanging, a_bag_is_not_made_void_while_its_strips_hang) {
    Hanging h;
    const auto outcome = void_bag(h.bench.book(), h.bag, because(QStringLiteral("burst"), 12));
    EXPECT_TRUE(refused(outcome, Why::undo_blocked));
    EXPECT_EQ(outcome.error().facts, QStringList{QStringLiteral("12")});
}

TEST(Hanging, only_strips_that_were_pulled_are_weighed_and_they_get_no_verdict) {
    Hanging h;
    WeighEntry entry;
    entry.placement = h.placement;
    entry.strips = 7;
    entry.total = grams(70); // bees left less than the dry card
    EXPECT_TRUE(refused(log_weighing(h.bench.book(), entry, on_day(60)), Why::not_found));
    struct Done {
        explicit operator bool() const { return true; }
    };
    h.bench.book().write({QStringLiteral("strips_out"), 1, {}}, on_day(55), [&](book::Writing& writing) {
        book::Placement out = h.record();
        out.pulled_on = days_after(first_day, 55);
        out.pulled = 7;
        out.missing = 1;
        book::update(writing, out);
        return Done{};
    });
    const WeighFigures figures = must(log_weighing(h.bench.book(), entry, on_day(60)));
    EXPECT_EQ(figures.mean, grams(10));
    EXPECT_FALSE(figures.verdict);
    EXPECT_EQ(figures.acid_per_strip, maths::Mass{});
    entry.strips = 8;
    EXPECT_TRUE(
        refused(log_weighing(h.bench.book(), entry, on_day(60)), Why::more_than_soaked, QStringLiteral("strips")));
    entry.strips = 7;
    entry.at = moment(54, 12);
    EXPECT_TRUE(refused(log_weighing(h.bench.book(), entry, on_day(60)), Why::before_start, QStringLiteral("at")));
}

TEST(Held, by_another_program_the_work_is_refused_and_done_when_tried_again) {
    Bench bench;
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(bench.path().toUtf8().constData(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_TRUE(refused(plan_mix(bench.book(), bench.plan(), on_day(0)), Why::busy));
    EXPECT_TRUE(refused(recount_lot(bench.book(), bench.bags, 3, QStringLiteral("x"), on_day(0)), Why::busy));
    ASSERT_EQ(sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(other);
    EXPECT_TRUE(plan_mix(bench.book(), bench.plan(), on_day(0)).has_value());
}

TEST(Late, a_whole_batch_written_down_a_week_after_keeps_its_true_days) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.planned_on = first_day;
    const auto now = [](int minute) { return on_day(7, 20, minute); };
    const BatchId batch = must(plan_mix(bench.book(), plan, now(0))).batch;
    WeighedMix weighed{batch, {}, moment(0, 18), true};
    for (const InputLine& input : bench.inputs_of(batch))
        weighed.masses.push_back({input.id, input.planned});
    must(weigh_mix(bench.book(), weighed, now(1)));
    ReadingEntry reading;
    reading.batch = batch;
    reading.probe = maths::celsius(53);
    reading.at = moment(1, 8);
    must(log_reading(bench.book(), reading, now(2)));
    StirEntry stir;
    stir.batch = batch;
    stir.clear = true;
    stir.outlet_poured_back = true;
    stir.at = moment(1, 9);
    must(log_stir(bench.book(), stir, now(3)));
    SoakEntry soak;
    soak.batch = batch;
    soak.bins = {{bench.bin, 480, std::nullopt}};
    soak.at = moment(1, 10);
    const SoakId in_bin = must(start_soak(bench.book(), soak, now(4))).at(0);
    WeighEntry weighing;
    weighing.soak = in_bin;
    weighing.strips = 10;
    weighing.total = grams(339);
    weighing.at = moment(2, 10);
    must(log_weighing(bench.book(), weighing, now(5)));
    BagEntry bags;
    bags.batch = batch;
    bags.bags = 6;
    bags.sealed_on = days_after(first_day, 2);
    const BagId bag = must(fill_bags(bench.book(), bags, now(6))).bags.at(0);
    PourEntry pour;
    pour.batch = batch;
    pour.pails = {kilograms(25), kilograms(25)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    pour.at = moment(2, 15);
    must(pour_leftovers(bench.book(), pour, now(7)));

    const BatchView view = bench.view(batch);
    EXPECT_EQ(view.line.day, first_day);
    EXPECT_TRUE(view.readings.at(0).written_late);
    EXPECT_EQ(view.clear_at, moment(1, 9));
    EXPECT_EQ(view.soaks.at(0).started, moment(1, 10));
    EXPECT_EQ(view.soaks.at(0).ended->local_day(), days_after(first_day, 2));
    EXPECT_EQ(book::fetch(bench.book(), bag)->use_by, maths::day(2027, 8, 5));
    EXPECT_EQ(book::fetch(bench.book(), bag)->strip, grams(33.9));
    EXPECT_EQ(book::fetch(bench.book(), view.pails.at(0).id)->sealed_on, days_after(first_day, 2));
}

} // namespace soakbook::tests
