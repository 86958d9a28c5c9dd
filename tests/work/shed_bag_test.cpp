// SPDX-License-Identifier: GPL-3.0-or-later
// Bag. A bag of 80 at 34 g holds 2.72 kg; 6 stacks of 80 are a bin of 480; twelve months from 29 February end on 28
// February (common practice, no source; the months by W3C XML Schema part 2, appendix E).
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/work/figures.h"
#include "core/work/papers.h"

#include <set>

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;

namespace {
BagEntry bags_of_eighty(BatchId batch, int bags) {
    BagEntry entry;
    entry.batch = batch;
    entry.bags = bags;
    return entry;
}
book::Bag record(Bench& bench, BagId id) {
    return *book::fetch(bench.book(), id);
}
} // namespace

TEST(Bag, six_stacks_of_eighty_empty_a_bin) {
    Bench bench;
    const BatchId batch = bench.weighed_batch(0, 1);
    const BagFigures figures =
        must(reckon_bags(bench.book(), bags_of_eighty(batch, 6), maths::days_after(first_day, 2)));
    EXPECT_EQ(figures.strips, 480);
    EXPECT_EQ(figures.still_to_bag, 0);
    EXPECT_EQ(figures.strip, grams(33.9));
    EXPECT_EQ(figures.acid_per_strip, grams(9.16));
    EXPECT_EQ(figures.expected_net, grams(33.9 * 80));
    EXPECT_EQ(figures.verdict, WeighVerdict::on_target);
    EXPECT_EQ(figures.use_by, maths::day(2027, 8, 5));
    EXPECT_FALSE(figures.rest_until); // no rest was said in Set-up
}

TEST(Bag, of_eighty_at_the_target_holds_two_kilograms_seven_hundred_and_twenty) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    WeighEntry weighing;
    weighing.soak = bench.soaks_of(batch).at(0);
    weighing.strips = 10;
    weighing.total = grams(340);
    must(log_weighing(bench.book(), weighing, on_day(2, 10)));
    EXPECT_EQ(must(reckon_bags(bench.book(), bags_of_eighty(batch, 6), maths::days_after(first_day, 2))).expected_net,
              kilograms(2.72));
}

TEST(Bag, copies_the_rules_and_the_weighing_it_was_filled_by) {
    Bench bench;
    must(set_figures(bench.book(), {{Figure::rest_days, 7, {}}}, on_day(0)));
    const BatchId batch = bench.bagged_batch();
    const auto ids = bench.bags_of(batch);
    ASSERT_EQ(ids.size(), 12U);
    must(set_figures(bench.book(), {{Figure::rest_days, 14, {}}, {Figure::use_within_months, 6, {}}}, on_day(3)));
    const book::Bag bag = record(bench, ids[0]);
    EXPECT_EQ(bag.packed, 80);
    EXPECT_EQ(bag.dry, grams(11));
    EXPECT_EQ(bag.strip, grams(33.9));
    EXPECT_EQ(bag.acid_per_strip, grams(9.16));
    EXPECT_EQ(bag.strength, maths::percent(40));
    EXPECT_EQ(bag.rest_days, 7);
    EXPECT_EQ(bag.rest_until, maths::day(2026, 8, 12));
    EXPECT_EQ(bag.use_months, 12);
    EXPECT_EQ(bag.use_by, maths::day(2027, 8, 5));
    EXPECT_EQ(bag.stands, QStringLiteral("shelf 1"));
}

TEST(Bag, every_bag_has_a_code_of_its_own) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    const BagsFilled filled = must(fill_bags(bench.book(), bags_of_eighty(batch, 12), on_day(2, 14)));
    EXPECT_EQ(filled.codes.size(), 12);
    EXPECT_EQ(std::set<QString>(filled.codes.begin(), filled.codes.end()).size(), 12U);
    for (const QString& code : filled.codes)
        EXPECT_TRUE(code.startsWith(QLatin1Char('S'))) << code.toStdString();
}

TEST(Bag, sealed_on_a_leap_day_is_good_until_the_last_of_february) {
    Bench bench;
    const int leap = static_cast<int>(maths::days_between(first_day, maths::day(2028, 2, 29)));
    const BatchId batch = bench.bagged_batch(leap - 2);
    EXPECT_EQ(record(bench, bench.bags_of(batch).at(0)).sealed_on, maths::day(2028, 2, 29));
    EXPECT_EQ(record(bench, bench.bags_of(batch).at(0)).use_by, maths::day(2029, 2, 28));
}

TEST(Bag, the_last_one_may_be_short) {
    Bench bench;
    const BatchId batch = bench.weighed_batch(0, 1);
    BagEntry entry = bags_of_eighty(batch, 6);
    entry.last_bag = 72;
    entry.net = kilograms(2.75);
    const BagsFilled filled = must(fill_bags(bench.book(), entry, on_day(2, 14)));
    EXPECT_EQ(filled.figures.strips, 472);
    EXPECT_EQ(filled.figures.last_bag, 72);
    EXPECT_EQ(filled.figures.still_to_bag, 8);
    EXPECT_EQ(record(bench, filled.bags.front()).net, kilograms(2.75));
    EXPECT_EQ(record(bench, filled.bags.back()).packed, 72);
    EXPECT_FALSE(record(bench, filled.bags.back()).net); // that one was not on the scale
    EXPECT_EQ(bench.view(batch).line.state, BatchState::bagging);
    entry.last_bag = 81;
    EXPECT_TRUE(refused(reckon_bags(bench.book(), entry, maths::days_after(first_day, 2)), Why::too_large,
                        QStringLiteral("last_bag")));
}

TEST(Bag, counts_down_the_lot_of_bags) {
    Bench bench;
    bench.bagged_batch();
    for (const LotLine& lot : lots(bench.book(), first_day)) {
        const bool is_bags = lot.entry.id == bench.bags;
        const bool is_strips = lot.entry.id == bench.strips;
        EXPECT_TRUE(!is_bags || lot.left == 488) << lot.left;
        EXPECT_TRUE(!is_strips || lot.left == 4040) << lot.left;
    }
}

TEST(Bag, more_strips_than_were_soaked_are_refused) {
    Bench bench;
    const BatchId batch = bench.weighed_batch(0, 1);
    const auto outcome = fill_bags(bench.book(), bags_of_eighty(batch, 7), on_day(2, 14));
    EXPECT_TRUE(refused(outcome, Why::more_than_soaked, QStringLiteral("bags")));
    EXPECT_EQ(outcome.error().facts, (QStringList{QStringLiteral("n:560"), QStringLiteral("n:480")}));
    must(fill_bags(bench.book(), bags_of_eighty(batch, 6), on_day(2, 14)));
    EXPECT_TRUE(refused(fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(2, 14)), Why::more_than_soaked));
}

TEST(Bag, counts_that_are_empty_or_absurd) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    BagEntry entry = bags_of_eighty(batch, 0);
    const auto today = maths::days_after(first_day, 2);
    EXPECT_TRUE(refused(reckon_bags(bench.book(), entry, today), Why::not_positive, QStringLiteral("bags")));
    entry.bags.reset();
    EXPECT_TRUE(refused(reckon_bags(bench.book(), entry, today), Why::missing, QStringLiteral("bags")));
    entry.bags = 1'000'000;
    EXPECT_TRUE(refused(reckon_bags(bench.book(), entry, today), Why::too_large, QStringLiteral("bags")));
    entry.bags = 1;
    entry.strips_per_bag = -1;
    EXPECT_TRUE(refused(reckon_bags(bench.book(), entry, today), Why::not_positive, QStringLiteral("strips_per_bag")));
}

TEST(Bag, days_that_cannot_be) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    BagEntry entry = bags_of_eighty(batch, 1);
    entry.sealed_on = maths::days_after(first_day, 3);
    EXPECT_TRUE(
        refused(fill_bags(bench.book(), entry, on_day(2, 14)), Why::in_the_future, QStringLiteral("sealed_on")));
    entry.sealed_on = first_day; // soaked the day after
    EXPECT_TRUE(refused(fill_bags(bench.book(), entry, on_day(2, 14)), Why::before_start, QStringLiteral("sealed_on")));
    entry.sealed_on = maths::days_after(first_day, 2);
    EXPECT_TRUE(asked(fill_bags(bench.book(), entry, on_day(400)), Why::long_ago));
}

TEST(Bag, without_a_weighing_or_with_light_strips_is_asked_about) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    EXPECT_TRUE(asked(fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(2, 14)), Why::no_weigh_in));
    const BagId unweighed =
        must(fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(2, 14), {Why::no_weigh_in})).bags.at(0);
    EXPECT_FALSE(record(bench, unweighed).acid_per_strip);
    WeighEntry weighing;
    weighing.soak = bench.soaks_of(batch).at(0);
    weighing.strips = 10;
    weighing.total = grams(300);
    must(log_weighing(bench.book(), weighing, on_day(2, 15)));
    const auto outcome = fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(2, 16));
    EXPECT_TRUE(asked(outcome, Why::light_strips));
    EXPECT_EQ(outcome.error().facts, (QStringList{QStringLiteral("m:30000"), QStringLiteral("m:33500")}));
    EXPECT_TRUE(fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(2, 16), {Why::light_strips}).has_value());
}

TEST(Bag, a_net_weight_far_off_is_asked_about_and_an_impossible_one_refused) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    BagEntry entry = bags_of_eighty(batch, 1);
    entry.net = kilograms(3.1);
    EXPECT_TRUE(asked(fill_bags(bench.book(), entry, on_day(2, 14)), Why::odd_bag_weight));
    entry.net = kilograms(0.88); // the dry strips alone
    EXPECT_TRUE(refused(fill_bags(bench.book(), entry, on_day(2, 14)), Why::lighter_than_dry, QStringLiteral("net")));
    entry.net = maths::Mass{};
    EXPECT_TRUE(refused(fill_bags(bench.book(), entry, on_day(2, 14)), Why::not_positive, QStringLiteral("net")));
    entry.net = kilograms(2.8);
    EXPECT_TRUE(fill_bags(bench.book(), entry, on_day(2, 14)).has_value());
}

TEST(Bag, of_a_batch_that_is_only_planned_or_closed_is_refused) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(refused(fill_bags(bench.book(), bags_of_eighty(planned.batch, 1), on_day(2)), Why::batch_not_mixed));
    EXPECT_TRUE(refused(reserve_labels(bench.book(), planned.batch, 5, on_day(2)), Why::batch_not_mixed));
    must(void_batch(bench.book(), planned.batch, because(QStringLiteral("x"), 0)));
    const BatchId batch = bench.bagged_batch();
    must(close_batch(bench.book(), batch, on_day(3)));
    EXPECT_TRUE(refused(fill_bags(bench.book(), bags_of_eighty(batch, 1), on_day(3)), Why::batch_closed));
    EXPECT_TRUE(refused(reserve_labels(bench.book(), batch, 5, on_day(3)), Why::batch_closed));
}

TEST(Bag, bagging_the_last_strips_takes_them_out_of_their_bin) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    must(fill_bags(bench.book(), bags_of_eighty(batch, 6), on_day(2, 14), {Why::no_weigh_in}));
    EXPECT_EQ(bench.view(batch).soaks.at(0).ended, moment(2, 14));
    EXPECT_EQ(bench.view(batch).line.state, BatchState::to_close);
}

TEST(Bag, of_the_second_bin_goes_by_the_weighing_of_that_bin) {
    Bench bench;
    const BatchId batch = bench.bagged_batch(0, 1);
    StirEntry stir;
    stir.batch = batch;
    stir.clear = true;
    stir.outlet_poured_back = true;
    must(log_stir(bench.book(), stir, on_day(2, 15)));
    SoakEntry soak;
    soak.batch = batch;
    soak.bins = {{bench.second_bin, 480, std::nullopt}};
    WeighEntry weighing;
    weighing.soak = must(start_soak(bench.book(), soak, on_day(2, 16))).at(0);
    weighing.strips = 10;
    weighing.total = grams(345);
    must(log_weighing(bench.book(), weighing, on_day(3, 16)));
    const BagId bag = must(fill_bags(bench.book(), bags_of_eighty(batch, 6), on_day(3, 17))).bags.at(0);
    EXPECT_EQ(record(bench, bag).soak, weighing.soak);
    EXPECT_EQ(record(bench, bag).strip, grams(34.5));
    EXPECT_EQ(record(bench, bench.bags_of(batch).at(0)).strip, grams(33.9));
}

TEST(Bag, labels_may_be_reserved_and_filled_later) {
    Bench bench;
    const BatchId batch = bench.weighed_batch(0, 1);
    EXPECT_TRUE(
        refused(reserve_labels(bench.book(), batch, 0, on_day(2, 8)), Why::not_positive, QStringLiteral("labels")));
    const BagsFilled reserved = must(reserve_labels(bench.book(), batch, 3, on_day(2, 8)));
    EXPECT_EQ(bench.view(batch).labels_reserved, 3);
    FillReserved entry;
    entry.batch = batch;
    EXPECT_TRUE(
        refused(fill_reserved(bench.book(), entry, on_day(2, 15)), Why::missing, QStringLiteral("rows/0/strips")));
    entry.rows = {{reserved.bags[0], std::nullopt, kilograms(2.74)}, {reserved.bags[1], 40, std::nullopt}};
    const BagsFilled filled = must(fill_reserved(bench.book(), entry, on_day(2, 15)));
    EXPECT_EQ(filled.codes, reserved.codes.mid(0, 2));
    EXPECT_EQ(record(bench, reserved.bags[0]).packed, 80);
    EXPECT_EQ(record(bench, reserved.bags[0]).net, kilograms(2.74));
    EXPECT_EQ(record(bench, reserved.bags[1]).packed, 40);
    EXPECT_EQ(record(bench, reserved.bags[1]).acid_per_strip, grams(9.16));
    EXPECT_EQ(bench.view(batch).labels_reserved, 1);
    EXPECT_TRUE(
        refused(fill_reserved(bench.book(), entry, on_day(2, 15)), Why::already_filled, QStringLiteral("rows/0/bag")));
    must(void_bag(bench.book(), reserved.bags[2], because(QStringLiteral("label spoilt"), 2, 15)));
    entry.rows = {{reserved.bags[2], 80, std::nullopt}};
    EXPECT_TRUE(
        refused(fill_reserved(bench.book(), entry, on_day(2, 15)), Why::bag_gone, QStringLiteral("rows/0/bag")));
    const BagId more = must(reserve_labels(bench.book(), batch, 1, on_day(2, 16))).bags.at(0);
    entry.rows = {{more, 400, std::nullopt}};
    EXPECT_TRUE(refused(fill_reserved(bench.book(), entry, on_day(2, 16)), Why::more_than_soaked));
}

TEST(Bag, is_put_right_with_a_reason_and_its_label_is_printed_again) {
    Bench bench;
    must(set_figures(bench.book(), {{Figure::rest_days, 7, {}}}, on_day(0)));
    const BatchId batch = bench.bagged_batch();
    const BagId id = bench.bags_of(batch).at(0);
    must(labels_printed(bench.book(), {id}, {}, on_day(2, 15)));
    BagCorrection entry;
    entry.bag = id;
    EXPECT_TRUE(refused(correct_bag(bench.book(), entry, because(QStringLiteral("x"), 3)), Why::nothing_changed));
    entry.packed = 79;
    EXPECT_TRUE(refused(correct_bag(bench.book(), entry, on_day(3)), Why::reason_missing, QStringLiteral("reason")));
    entry.sealed_on = maths::days_after(first_day, 3);
    must(correct_bag(bench.book(), entry, because(QStringLiteral("counted again"), 3)));
    const book::Bag bag = record(bench, id);
    EXPECT_EQ(bag.packed, 79);
    EXPECT_EQ(bag.sealed_on, maths::day(2026, 8, 6));
    EXPECT_EQ(bag.rest_until, maths::day(2026, 8, 13));
    EXPECT_EQ(bag.use_by, maths::day(2027, 8, 6));
    EXPECT_EQ(bag.label, book::LabelState::stale);
    entry = {};
    entry.bag = id;
    entry.packed = 81; // one more than the bin still gives: 79 of 80 were counted, one is left over
    EXPECT_TRUE(refused(correct_bag(bench.book(), entry, because(QStringLiteral("x"), 3)), Why::more_than_soaked,
                        QStringLiteral("packed")));
    entry.packed.reset();
    entry.net = kilograms(0.5);
    EXPECT_TRUE(refused(correct_bag(bench.book(), entry, because(QStringLiteral("x"), 3)), Why::lighter_than_dry,
                        QStringLiteral("net")));
    entry.net.reset();
    entry.sealed_on = maths::days_after(first_day, -1);
    EXPECT_TRUE(refused(correct_bag(bench.book(), entry, because(QStringLiteral("x"), 3)), Why::before_start,
                        QStringLiteral("sealed_on")));
}

TEST(Bag, burst_or_spoilt_is_made_void_once) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    const BagId id = bench.bags_of(batch).at(0);
    EXPECT_TRUE(refused(void_bag(bench.book(), id, on_day(3)), Why::reason_missing));
    must(void_bag(bench.book(), id, because(QStringLiteral("burst"), 3)));
    EXPECT_TRUE(refused(void_bag(bench.book(), id, because(QStringLiteral("burst"), 3)), Why::bag_gone));
    EXPECT_TRUE(
        refused(correct_bag(bench.book(), {id, 70, std::nullopt, std::nullopt}, because(QStringLiteral("x"), 3)),
                Why::bag_gone));
    EXPECT_TRUE(bench.view(batch).bags.at(0).made_void);
}

} // namespace soakbook::tests
