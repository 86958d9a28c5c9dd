// SPDX-License-Identifier: GPL-3.0-or-later
// Pails: each goes whole into one mix, or into none. Half a pail is refused: settled acid, the upper half may be almost
// pure glycerine (common practice, no source).
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/pail.h"
#include "core/work/figures.h"

namespace soakbook::tests {

using namespace work;
using maths::kilograms;
using maths::percent;

namespace {

/// 62.5 kg mixed on the first day, of which pails are poured next day.
std::vector<PailId> poured(Bench& bench, const std::vector<maths::Mass>& masses, bool warm_and_clear = true,
                           bool scraped = true) {
    const BatchId batch = bench.clear_batch();
    PourEntry pour;
    pour.batch = batch;
    pour.pails = masses;
    pour.warm_and_clear = warm_and_clear;
    pour.scraped = scraped;
    return must(pour_leftovers(bench.book(), pour, on_day(1, 15))).pails;
}

MixPlan plan_with(Bench& bench, const std::vector<PailId>& pails) {
    MixPlan plan = bench.plan();
    plan.pails = pails;
    return plan;
}

const Confirmed tank_shared{Why::tank_in_use};

} // namespace

TEST(Pails, a_whole_pail_stands_for_its_acid_and_glycerine_in_the_next_mix) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    const MixFigures figures = must(reckon_mix(bench.book(), plan_with(bench, pails), maths::days_after(first_day, 2)));
    EXPECT_EQ(figures.from_pails, kilograms(20));
    EXPECT_EQ(figures.acid.total, kilograms(17));
    EXPECT_EQ(figures.glycerine.total, kilograms(25.5));
    EXPECT_EQ(figures.total, kilograms(62.5));
}

TEST(Pails, half_a_pail_is_refused_with_the_whole_mass_to_take) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    MixPlan plan = bench.plan();
    plan.parts_of_pails = {{pails[0], kilograms(10)}};
    const auto outcome = plan_mix(bench.book(), plan, on_day(2), tank_shared);
    EXPECT_TRUE(refused(outcome, Why::pail_part_wanted, QStringLiteral("pails")));
    EXPECT_EQ(outcome.error().facts.at(1), QStringLiteral("m:20000000"));
    plan.parts_of_pails = {{pails[0], kilograms(20)}}; // all of it is no part
    EXPECT_TRUE(plan_mix(bench.book(), plan, on_day(2), tank_shared).has_value());
}

TEST(Pails, half_a_pail_weighed_in_is_refused_too) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    const PlannedBatch planned = must(plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared));
    WeighedMix weighed{planned.batch, {}, std::nullopt, true};
    for (const InputLine& input : bench.inputs_of(planned.batch))
        weighed.masses.push_back({input.id, input.pail ? kilograms(10) : input.planned});
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(2, 18)), Why::pail_part_wanted,
                        QStringLiteral("inputs/2/mass")));
    weighed.masses[2].second = kilograms(21);
    EXPECT_TRUE(
        refused(weigh_mix(bench.book(), weighed, on_day(2, 18)), Why::too_large, QStringLiteral("inputs/2/mass")));
    weighed.masses[2].second = kilograms(20);
    weighed.pails_scraped = false;
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(2, 18)), Why::pail_used_in_part,
                        QStringLiteral("pails_scraped")));
    weighed.pails_scraped = true;
    weighed.at = moment(0, 18); // before the pail was poured
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(2, 18)), Why::before_start));
    weighed.at.reset();
    EXPECT_EQ(must(weigh_mix(bench.book(), weighed, on_day(2, 18))).strength, percent(40));
}

TEST(Pails, a_pail_that_went_into_a_batch_goes_into_no_other) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    const PlannedBatch first = must(plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared));
    const auto outcome = plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared);
    EXPECT_TRUE(refused(outcome, Why::pail_used, QStringLiteral("pails")));
    EXPECT_EQ(outcome.error().facts.at(1), first.code);
    must(void_batch(bench.book(), first.batch, because(QStringLiteral("dropped"), 2)));
    EXPECT_TRUE(plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared).has_value());
}

TEST(Pails, a_pail_used_in_part_goes_into_no_mix) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    must(pail_used_in_part(bench.book(), pails[0], std::nullopt, on_day(2)));
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan_with(bench, pails), on_day(3), tank_shared), Why::pail_used_in_part,
                        QStringLiteral("pails")));
    EXPECT_TRUE(refused(pail_used_in_part(bench.book(), pails[0], std::nullopt, on_day(3)), Why::nothing_changed));
    EXPECT_TRUE(mix_start(bench.book(), first_day).pails_that_can.empty());
}

TEST(Pails, a_pail_thrown_away_is_gone) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    EXPECT_TRUE(refused(discard_pail(bench.book(), pails[0], std::nullopt, QString(), on_day(2)), Why::reason_missing,
                        QStringLiteral("reason")));
    EXPECT_TRUE(refused(
        discard_pail(bench.book(), pails[0], maths::days_after(first_day, 0), QStringLiteral("leaked"), on_day(2)),
        Why::before_start));
    EXPECT_TRUE(refused(
        discard_pail(bench.book(), pails[0], maths::days_after(first_day, 9), QStringLiteral("leaked"), on_day(2)),
        Why::in_the_future));
    must(discard_pail(bench.book(), pails[0], std::nullopt, QStringLiteral("leaked"), on_day(2)));
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan_with(bench, pails), on_day(3), tank_shared), Why::pail_gone));
    EXPECT_TRUE(refused(discard_pail(bench.book(), pails[0], std::nullopt, QStringLiteral("again"), on_day(3)),
                        Why::pail_gone));
}

TEST(Pails, poured_cold_they_go_in_only_together) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(15), kilograms(12)}, false);
    const auto outcome = plan_mix(bench.book(), plan_with(bench, {pails[0]}), on_day(2), tank_shared);
    EXPECT_TRUE(refused(outcome, Why::pail_set_incomplete, QStringLiteral("pails")));
    EXPECT_EQ(outcome.error().facts.size(), 1);
    EXPECT_TRUE(plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared).has_value());
}

TEST(Pails, out_of_an_unscraped_bin_they_go_in_only_together) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(15), kilograms(12)}, true, false);
    EXPECT_TRUE(refused(reckon_mix(bench.book(), plan_with(bench, {pails[1]}), first_day), Why::pail_set_incomplete));
}

TEST(Pails, a_set_of_which_one_is_gone_goes_into_nothing) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(15), kilograms(12)}, false);
    must(discard_pail(bench.book(), pails[1], std::nullopt, QStringLiteral("leaked"), on_day(2)));
    EXPECT_TRUE(refused(reckon_mix(bench.book(), plan_with(bench, {pails[0]}), first_day), Why::pail_set_incomplete));
    EXPECT_TRUE(mix_start(bench.book(), first_day).pails_that_can.empty());
}

TEST(Pails, by_rule_all_pails_of_a_pour_go_in_together) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(15), kilograms(12)});
    EXPECT_TRUE(reckon_mix(bench.book(), plan_with(bench, {pails[0]}), first_day).has_value());
    must(set_figures(bench.book(), {{Figure::pails_whole, 2, {}}}, on_day(2)));
    EXPECT_TRUE(refused(reckon_mix(bench.book(), plan_with(bench, {pails[0]}), first_day), Why::pail_set_incomplete));
    EXPECT_TRUE(reckon_mix(bench.book(), plan_with(bench, pails), first_day).has_value());
}

TEST(Pails, alone_make_a_batch_of_their_own) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20), kilograms(18)});
    MixPlan plan = plan_with(bench, pails);
    plan.amount.reset();
    plan.acid_lot.reset();
    plan.glycerine_lot.reset();
    const PlannedBatch planned = must(plan_mix(bench.book(), plan, on_day(2), tank_shared));
    EXPECT_EQ(planned.figures.total, kilograms(38));
    EXPECT_EQ(planned.figures.acid.total, maths::Mass{});
    EXPECT_EQ(bench.inputs_of(planned.batch).size(), 2U);
}

TEST(Pails, heavier_than_the_mix_wanted_are_refused) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    MixPlan plan = plan_with(bench, pails);
    plan.amount = kilograms(10);
    const auto outcome = reckon_mix(bench.book(), plan, first_day);
    EXPECT_TRUE(refused(outcome, Why::too_small, QStringLiteral("from_amount")));
    EXPECT_EQ(outcome.error().facts, QStringList{QStringLiteral("m:20000000")});
}

TEST(Pails, too_strong_or_too_weak_for_the_mix_wanted) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    MixPlan plan = plan_with(bench, pails);
    plan.amount = kilograms(21);
    plan.strength = percent(20);
    EXPECT_TRUE(
        refused(reckon_mix(bench.book(), plan, first_day), Why::too_strong_without_water, QStringLiteral("pails")));
    plan.strength = percent(50);
    EXPECT_TRUE(refused(reckon_mix(bench.book(), plan, first_day), Why::strength_off, QStringLiteral("pails")));
}

TEST(Pails, beside_acid_or_glycerine_at_hand) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    MixPlan plan = plan_with(bench, pails);
    plan.from = MixFrom::acid_at_hand;
    plan.amount = kilograms(10);
    EXPECT_EQ(must(reckon_mix(bench.book(), plan, first_day)).glycerine.total, kilograms(15));
    plan.from = MixFrom::glycerine_at_hand;
    plan.amount = kilograms(15);
    EXPECT_EQ(must(reckon_mix(bench.book(), plan, first_day)).acid.total, kilograms(10));
}

TEST(Pails, of_a_batch_that_took_pails_carry_the_day_of_the_oldest_liquid) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20)});
    const BatchId second = bench.clear_batch(30, kilograms(62.5), pails);
    PourEntry pour;
    pour.batch = second;
    pour.pails = {kilograms(10)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    const auto later = must(pour_leftovers(bench.book(), pour, on_day(31, 15))).pails;
    const auto first_pail = *book::fetch(bench.book(), pails[0]);
    const auto pail = *book::fetch(bench.book(), later[0]);
    EXPECT_EQ(first_pail.oldest_on, first_day);
    EXPECT_EQ(first_pail.times_warmed, 1);
    EXPECT_EQ(pail.sealed_on, maths::days_after(first_day, 31));
    EXPECT_EQ(pail.oldest_on, first_day);
    EXPECT_EQ(pail.times_warmed, 2);
}

TEST(Pails, move_and_are_put_right_while_they_stand_whole) {
    Bench bench;
    const auto pails = poured(bench, {kilograms(20), kilograms(10)});
    EXPECT_EQ(must(move_pails(bench.book(), pails, QStringLiteral(" cellar "), on_day(2))), 2);
    EXPECT_TRUE(refused(move_pails(bench.book(), pails, QStringLiteral("cellar"), on_day(2)), Why::nothing_changed));
    EXPECT_TRUE(refused(move_pails(bench.book(), pails, QString(), on_day(2)), Why::missing, QStringLiteral("stands")));
    EXPECT_TRUE(refused(correct_pail(bench.book(), pails[0], kilograms(19), on_day(2)), Why::reason_missing));
    EXPECT_TRUE(refused(correct_pail(bench.book(), pails[0], kilograms(20), because(QStringLiteral("x"), 2)),
                        Why::nothing_changed));
    EXPECT_TRUE(refused(correct_pail(bench.book(), pails[0], kilograms(70), because(QStringLiteral("x"), 2)),
                        Why::more_than_left));
    must(correct_pail(bench.book(), pails[0], kilograms(19), because(QStringLiteral("bucket not tared"), 2)));
    EXPECT_EQ(book::fetch(bench.book(), pails[0])->mass, kilograms(19));
    must(plan_mix(bench.book(), plan_with(bench, pails), on_day(2), tank_shared));
    EXPECT_TRUE(
        refused(correct_pail(bench.book(), pails[0], kilograms(18), because(QStringLiteral("x"), 2)), Why::pail_used));
    EXPECT_TRUE(refused(pail_used_in_part(bench.book(), pails[0], std::nullopt, on_day(2)), Why::pail_used));
}

} // namespace soakbook::tests
