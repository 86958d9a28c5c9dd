// SPDX-License-Identifier: GPL-3.0-or-later
// Leftovers: pails, named losses, where every kilogram went, and the batch closed on it.
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/batch.h"
#include "core/work/figures.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;

namespace {
PourEntry pour_of(BatchId batch, const std::vector<maths::Mass>& pails) {
    PourEntry entry;
    entry.batch = batch;
    entry.pails = pails;
    entry.warm_and_clear = true;
    entry.scraped = true;
    return entry;
}
} // namespace

TEST(Leftovers, pails_get_codes_and_the_strength_of_their_batch) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    const PailsPoured poured =
        must(pour_leftovers(bench.book(), pour_of(batch, {kilograms(20), kilograms(18.5)}), on_day(2, 15)));
    EXPECT_EQ(poured.codes.size(), 2);
    EXPECT_TRUE(poured.codes[0].startsWith(QLatin1Char('P')));
    EXPECT_FALSE(poured.only_together);
    const BatchView view = bench.view(batch);
    ASSERT_EQ(view.pails.size(), 2U);
    EXPECT_EQ(view.pails[1].strength, maths::percent(40));
    EXPECT_EQ(view.pails[1].mass, kilograms(18.5));
    EXPECT_TRUE(view.pails[1].went_to.isEmpty());
}

TEST(Leftovers, poured_cold_or_unscraped_says_that_the_pails_belong_together) {
    Bench bench;
    PourEntry entry = pour_of(bench.bagged_batch(), {kilograms(20)});
    entry.warm_and_clear = false;
    EXPECT_TRUE(must(pour_leftovers(bench.book(), entry, on_day(2, 15))).only_together);
}

TEST(Leftovers, questions_left_open_and_masses_that_cannot_be) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    PourEntry entry = pour_of(batch, {});
    EXPECT_TRUE(refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::missing, QStringLiteral("pails/0")));
    entry.pails = {kilograms(10), maths::Mass{}};
    EXPECT_TRUE(
        refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::not_positive, QStringLiteral("pails/1")));
    entry.pails = {kilograms(10)};
    entry.warm_and_clear.reset();
    EXPECT_TRUE(
        refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::missing, QStringLiteral("warm_and_clear")));
    entry.warm_and_clear = true;
    entry.scraped.reset();
    EXPECT_TRUE(refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::missing, QStringLiteral("scraped")));
    entry.scraped = true;
    entry.at = moment(0, 10);
    EXPECT_TRUE(refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::before_start, QStringLiteral("at")));
    entry.at = moment(2, 16);
    EXPECT_TRUE(refused(pour_leftovers(bench.book(), entry, on_day(2, 15)), Why::in_the_future, QStringLiteral("at")));
}

TEST(Leftovers, more_than_the_strips_can_have_left_is_asked_and_more_than_went_in_refused) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    EXPECT_TRUE(pour_leftovers(bench.book(), pour_of(batch, {kilograms(20)}), on_day(2, 15)).has_value());
    // 40.42 kg can be left at most, so 20.42 now.
    const auto outcome = pour_leftovers(bench.book(), pour_of(batch, {kilograms(21)}), on_day(2, 15));
    EXPECT_TRUE(asked(outcome, Why::more_than_left));
    EXPECT_EQ(outcome.error().facts, (QStringList{QStringLiteral("m:21000000"), QStringLiteral("m:20420000")}));
    must(set_figures(bench.book(), {{Figure::unexplained_limit, 20'000, {}}}, on_day(2)));
    EXPECT_TRUE(
        refused(pour_leftovers(bench.book(), pour_of(batch, {kilograms(43)}), on_day(2, 15), {Why::more_than_left}),
                Why::more_than_left, QStringLiteral("pails/0")));
    // 2 % of 62.5 kg are 1.25 kg: within the limit it is not even asked.
    EXPECT_TRUE(pour_leftovers(bench.book(), pour_of(batch, {kilograms(21)}), on_day(2, 15)).has_value());
}

TEST(Leftovers, every_milligram_is_accounted_for) {
    Bench bench;
    const BatchId batch = bench.weighed_batch();
    BagEntry bags;
    bags.batch = batch;
    bags.bags = 12;
    bags.net = kilograms(2.75);
    must(fill_bags(bench.book(), bags, on_day(2, 14)));
    must(pour_leftovers(bench.book(), pour_of(batch, {kilograms(20), kilograms(19)}), on_day(2, 15)));
    must(log_loss(bench.book(), batch, NamedLoss::drips, kilograms(0.4), {}, on_day(2, 16)));
    must(log_loss(bench.book(), batch, NamedLoss::tank_heel, kilograms(0.3), QStringLiteral("below the outlet"),
                  on_day(2, 16)));
    const Balance account = must(balance(bench.book(), batch));
    EXPECT_EQ(account.in, kilograms(62.5));
    EXPECT_EQ(account.in_strips, grams(22.9 * 960));
    EXPECT_EQ(account.free_in_bags, 12 * (kilograms(2.75) - grams(33.9 * 80)));
    EXPECT_EQ(account.in_pails, kilograms(39));
    EXPECT_EQ(account.named_losses, kilograms(0.7));
    EXPECT_EQ(account.in,
              account.in_strips + account.free_in_bags + account.in_pails + account.named_losses + account.unexplained);
    EXPECT_EQ(account.unexplained, kilograms(62.5 - 12 * (2.75 - 0.88) - 39 - 0.7));
    EXPECT_FALSE(account.limit);
    EXPECT_FALSE(account.beyond_limit);
}

TEST(Leftovers, a_batch_closes_on_its_account) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    must(pour_leftovers(bench.book(), pour_of(batch, {kilograms(40)}), on_day(2, 15)));
    const Balance account = must(close_batch(bench.book(), batch, on_day(2, 18)));
    const book::Batch record = *book::fetch(bench.book(), batch);
    EXPECT_EQ(record.closed, moment(2, 18));
    EXPECT_EQ(record.taken, grams(22.9 * 960));
    EXPECT_EQ(record.unexplained, account.unexplained);
    EXPECT_EQ(bench.view(batch).line.state, BatchState::closed);
    EXPECT_TRUE(refused(close_batch(bench.book(), batch, on_day(2, 19)), Why::batch_closed));
    EXPECT_TRUE(refused(pour_leftovers(bench.book(), pour_of(batch, {kilograms(1)}), on_day(3)), Why::batch_closed));
    EXPECT_TRUE(
        refused(log_loss(bench.book(), batch, NamedLoss::spill, kilograms(1), {}, on_day(3)), Why::batch_closed));
}

TEST(Leftovers, a_loss_beyond_the_limit_is_asked_about) {
    Bench bench;
    must(set_figures(bench.book(), {{Figure::unexplained_limit, 20'000, {}}}, on_day(0)));
    const BatchId batch = bench.bagged_batch();
    must(pour_leftovers(bench.book(), pour_of(batch, {kilograms(30)}), on_day(2, 15)));
    EXPECT_TRUE(must(balance(bench.book(), batch)).beyond_limit);
    EXPECT_TRUE(asked(close_batch(bench.book(), batch, on_day(2, 18)), Why::loss_unexplained));
    EXPECT_TRUE(close_batch(bench.book(), batch, on_day(2, 18), {Why::loss_unexplained}).has_value());
    EXPECT_EQ(book::fetch(bench.book(), batch)->unexplained_limit, maths::ppm(20'000));
}

TEST(Leftovers, closing_with_strips_still_in_a_bin_or_labels_unfilled_is_refused) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    const auto outcome = close_batch(bench.book(), batch, on_day(2));
    EXPECT_TRUE(refused(outcome, Why::strips_not_bagged));
    EXPECT_EQ(outcome.error().facts, QStringList{QStringLiteral("n:480")});
    must(end_soak(bench.book(), bench.soaks_of(batch).at(0), std::nullopt, on_day(2)));
    const BagsFilled reserved = must(reserve_labels(bench.book(), batch, 1, on_day(2)));
    const auto labels = close_batch(bench.book(), batch, on_day(2));
    EXPECT_TRUE(refused(labels, Why::not_filled));
    EXPECT_EQ(labels.error().facts, reserved.codes);
    must(void_bag(bench.book(), reserved.bags[0], because(QStringLiteral("spoilt"), 2)));
    EXPECT_TRUE(close_batch(bench.book(), batch, on_day(2)).has_value());
}

TEST(Leftovers, a_planned_batch_has_no_account) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(refused(balance(bench.book(), planned.batch), Why::batch_not_mixed));
    EXPECT_TRUE(refused(close_batch(bench.book(), planned.batch, on_day(0)), Why::batch_not_mixed));
    EXPECT_TRUE(
        refused(pour_leftovers(bench.book(), pour_of(planned.batch, {kilograms(1)}), on_day(0)), Why::batch_not_mixed));
}

TEST(Leftovers, a_closed_batch_opens_again_with_a_reason) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    EXPECT_TRUE(refused(reopen_batch(bench.book(), batch, because(QStringLiteral("x"), 3)), Why::nothing_changed));
    must(close_batch(bench.book(), batch, on_day(2, 18)));
    EXPECT_TRUE(refused(reopen_batch(bench.book(), batch, on_day(3)), Why::reason_missing));
    must(reopen_batch(bench.book(), batch, because(QStringLiteral("one pail forgotten"), 3)));
    EXPECT_EQ(bench.view(batch).line.state, BatchState::to_close);
    must(pour_leftovers(bench.book(), pour_of(batch, {kilograms(30)}), on_day(3)));
}

TEST(Leftovers, losses_have_a_mass_and_may_be_made_void) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    EXPECT_TRUE(refused(log_loss(bench.book(), batch, NamedLoss::drips, std::nullopt, {}, on_day(2, 16)), Why::missing,
                        QStringLiteral("mass")));
    EXPECT_TRUE(refused(log_loss(bench.book(), batch, NamedLoss::drips, maths::Mass{}, {}, on_day(2, 16)),
                        Why::not_positive, QStringLiteral("mass")));
    EXPECT_TRUE(refused(log_loss(bench.book(), batch, NamedLoss::drips, kilograms(63), {}, on_day(2, 16)),
                        Why::more_than_left, QStringLiteral("mass")));
    const LossId loss = must(
        log_loss(bench.book(), batch, NamedLoss::spill, kilograms(1), QStringLiteral("at the tap"), on_day(2, 16)));
    EXPECT_EQ(bench.view(batch).losses.at(0).mass, kilograms(1));
    EXPECT_TRUE(refused(void_loss(bench.book(), loss, on_day(2, 16)), Why::reason_missing));
    must(void_loss(bench.book(), loss, because(QStringLiteral("other batch"), 2, 16)));
    EXPECT_TRUE(bench.view(batch).losses.empty());
    EXPECT_EQ(must(balance(bench.book(), batch)).named_losses, maths::Mass{});
}

} // namespace soakbook::tests
