// SPDX-License-Identifier: GPL-3.0-or-later
// A weight put right is followed by everything that was copied from it; the account of a closed batch stays exact.
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/batch.h"
#include "core/book/records/pail.h"
#include "core/work/papers.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;

namespace {

template <class Record> Record record(Bench& bench, book::Id<Record> id) {
    return *book::fetch(bench.book(), id);
}

WeighInId weighing_of(Bench& bench, BatchId batch, std::size_t soak) {
    return bench.view(batch).soaks.at(soak).weighings.at(0).id;
}

WeighEntry ten(maths::Mass total) {
    WeighEntry entry;
    entry.strips = 10;
    entry.total = total;
    entry.drip_minutes = 30;
    return entry;
}

void expect_mass_kept(Bench& bench, BatchId id) {
    const Balance account = must(balance(bench.book(), id));
    const auto batch = record(bench, id);
    EXPECT_EQ(account.in,
              account.in_strips + account.free_in_bags + account.in_pails + account.named_losses + account.unexplained);
    EXPECT_EQ(batch.taken, account.in_strips + account.free_in_bags);
    EXPECT_EQ(batch.unexplained, account.unexplained);
}

} // namespace

TEST(Corrections, a_weighing_put_right_mends_the_bags_filled_by_it_and_their_labels) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    const auto soaks = bench.soaks_of(batch);
    BagEntry entry;
    entry.batch = batch;
    entry.bags = 6;
    entry.soak = soaks[0];
    const BagId first = must(fill_bags(bench.book(), entry, on_day(2, 14))).bags.at(0);
    entry.soak = soaks[1];
    const BagId other = must(fill_bags(bench.book(), entry, on_day(2, 14))).bags.at(0);
    must(labels_printed(bench.book(), {first, other}, {}, on_day(2, 15)));
    must(correct_weighing(bench.book(), weighing_of(bench, batch, 0), ten(grams(335)),
                          because(QStringLiteral("misread"), 3)));
    EXPECT_EQ(record(bench, first).strip, grams(33.5));
    EXPECT_EQ(record(bench, first).acid_per_strip, grams(9));
    EXPECT_EQ(record(bench, first).label, book::LabelState::stale);
    EXPECT_EQ(record(bench, other).strip, grams(33.9));
    EXPECT_EQ(record(bench, other).label, book::LabelState::printed);
}

TEST(Corrections, of_a_closed_batch_keep_its_account_exact) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    PourEntry pour;
    pour.batch = batch;
    pour.pails = {kilograms(20), kilograms(19)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    const auto pails = must(pour_leftovers(bench.book(), pour, on_day(2, 15))).pails;
    must(close_batch(bench.book(), batch, on_day(2, 18)));
    expect_mass_kept(bench, batch);
    const auto doing = because(QStringLiteral("looked again"), 4);
    must(correct_weighed(bench.book(), bench.inputs_of(batch).at(1).id, kilograms(37.1), doing));
    expect_mass_kept(bench, batch);
    must(correct_weighing(bench.book(), weighing_of(bench, batch, 0), ten(grams(337)), doing));
    expect_mass_kept(bench, batch);
    must(void_weighing(bench.book(), weighing_of(bench, batch, 1), doing));
    expect_mass_kept(bench, batch);
    const auto bags = bench.bags_of(batch);
    must(correct_bag(bench.book(), {bags[0], 78, kilograms(2.7), std::nullopt}, doing));
    expect_mass_kept(bench, batch);
    must(void_bag(bench.book(), bags[1], doing));
    expect_mass_kept(bench, batch);
    must(correct_pail(bench.book(), pails[0], kilograms(19.25), doing));
    expect_mass_kept(bench, batch);
    must(correct_soak(bench.book(), bench.soaks_of(batch).at(0), 481, std::nullopt, doing));
    expect_mass_kept(bench, batch);
    EXPECT_TRUE(record(bench, batch).closed);
}

TEST(Corrections, a_mis_weighed_can_changes_strength_bags_pails_and_the_batch_that_took_them) {
    Bench bench;
    const BatchId first = bench.bagged_batch();
    PourEntry pour;
    pour.batch = first;
    pour.pails = {kilograms(20)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    const auto pails = must(pour_leftovers(bench.book(), pour, on_day(2, 15))).pails;
    const BatchId second = bench.clear_batch(10, kilograms(62.5), pails);
    EXPECT_EQ(bench.view(second).strength, maths::percent(40));

    const InputLine acid = bench.inputs_of(first).at(0);
    EXPECT_TRUE(refused(correct_weighed(bench.book(), acid.id, kilograms(24), on_day(12)), Why::reason_missing));
    EXPECT_TRUE(refused(correct_weighed(bench.book(), acid.id, kilograms(25), because(QStringLiteral("x"), 12)),
                        Why::nothing_changed));
    must(correct_weighed(bench.book(), acid.id, kilograms(24), because(QStringLiteral("the can was not tared"), 12)));

    const maths::Fraction strength = maths::share(kilograms(24), kilograms(61.5));
    EXPECT_EQ(bench.view(first).strength, strength);
    EXPECT_EQ(record(bench, pails[0]).strength, strength);
    const auto bag = record(bench, bench.bags_of(first).at(0));
    EXPECT_EQ(bag.strength, strength);
    EXPECT_EQ(bag.acid_per_strip, maths::part_of(grams(22.9), strength));
    const maths::Mass acid_of_second = kilograms(17) + maths::part_of(kilograms(20), strength);
    EXPECT_EQ(bench.view(second).strength, maths::share(acid_of_second, kilograms(62.5)));
}

TEST(Corrections, a_pail_in_a_mix_keeps_its_whole_mass) {
    Bench bench;
    const BatchId first = bench.bagged_batch();
    PourEntry pour;
    pour.batch = first;
    pour.pails = {kilograms(20)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    const auto pails = must(pour_leftovers(bench.book(), pour, on_day(2, 15))).pails;
    const BatchId second = bench.clear_batch(10, kilograms(62.5), pails);
    const InputLine pail = bench.inputs_of(second).at(2);
    EXPECT_TRUE(refused(correct_weighed(bench.book(), pail.id, kilograms(10), because(QStringLiteral("half"), 12)),
                        Why::pail_part_wanted));
    EXPECT_EQ(bench.view(first).pails.at(0).went_to, bench.view(second).line.code);
}

TEST(Corrections, a_weighing_written_late_fills_bags_that_had_none_and_no_others) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    BagEntry entry;
    entry.batch = batch;
    entry.bags = 2;
    const BagId bag = must(fill_bags(bench.book(), entry, on_day(2, 14), {Why::no_weigh_in})).bags.at(0);
    WeighEntry late = ten(grams(339));
    late.soak = bench.soaks_of(batch).at(0);
    late.at = moment(2, 10);
    must(log_weighing(bench.book(), late, on_day(3)));
    EXPECT_EQ(record(bench, bag).strip, grams(33.9));
    EXPECT_EQ(record(bench, bag).acid_per_strip, grams(9.16));
    late.total = grams(341);
    late.at = moment(2, 11);
    must(log_weighing(bench.book(), late, on_day(3)));
    EXPECT_EQ(record(bench, bag).strip, grams(33.9));
}

TEST(Corrections, a_rule_that_changes_later_changes_no_bag) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    const BagId id = bench.bags_of(batch).at(0);
    const auto before = record(bench, id);
    StripKindEntry kind = strip_kinds(bench.book()).at(0);
    kind.dry = grams(12);
    kind.target = grams(36);
    must(save_strip_kind(bench.book(), kind, on_day(3)));
    must(correct_weighing(bench.book(), weighing_of(bench, batch, 0), ten(grams(339.5)),
                          because(QStringLiteral("misread"), 3)));
    EXPECT_EQ(record(bench, id).dry, before.dry);
    EXPECT_EQ(record(bench, id).use_by, before.use_by);
    EXPECT_EQ(bench.view(batch).soaks.at(0).target, grams(34));
}

} // namespace soakbook::tests
