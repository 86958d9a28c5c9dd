// SPDX-License-Identifier: GPL-3.0-or-later
// Mix: each reason why a plan or a weight is not taken.
#include "bench.h"
#include "core/work/figures.h"

namespace soakbook::tests {

using namespace work;
using maths::kilograms;
using maths::percent;

namespace {
template <class T> QStringList facts_of(const Outcome<T>& outcome) {
    return outcome ? QStringList() : outcome.error().facts;
}
} // namespace

TEST(MixRefused, what_is_needed_and_empty) {
    Bench bench;
    const auto without = [&](auto clear) {
        MixPlan plan = bench.plan();
        clear(plan);
        return reckon_mix(bench.book(), plan, first_day);
    };
    EXPECT_TRUE(refused(without([](MixPlan& p) { p.amount.reset(); }), Why::missing, QStringLiteral("from_amount")));
    EXPECT_TRUE(refused(without([](MixPlan& p) { p.tank.reset(); }), Why::missing, QStringLiteral("tank")));
    EXPECT_TRUE(refused(without([](MixPlan& p) { p.strip_kind.reset(); }), Why::missing, QStringLiteral("strip_kind")));
    EXPECT_TRUE(refused(without([](MixPlan& p) { p.acid_lot.reset(); }), Why::missing, QStringLiteral("acid_lot")));
    EXPECT_TRUE(
        refused(without([](MixPlan& p) { p.glycerine_lot.reset(); }), Why::missing, QStringLiteral("glycerine_lot")));
    EXPECT_TRUE(
        refused(without([](MixPlan& p) { p.from = MixFrom::strips_wanted; }), Why::missing, QStringLiteral("strips")));
}

TEST(MixRefused, amounts_that_make_no_sense) {
    Bench bench;
    const auto with = [&](std::optional<maths::Mass> amount, std::optional<maths::Fraction> strength = std::nullopt) {
        MixPlan plan = bench.plan();
        plan.amount = amount;
        plan.strength = strength;
        return reckon_mix(bench.book(), plan, first_day);
    };
    EXPECT_TRUE(refused(with(maths::Mass{}), Why::not_positive, QStringLiteral("from_amount")));
    EXPECT_TRUE(refused(with(-kilograms(1)), Why::not_positive, QStringLiteral("from_amount")));
    EXPECT_TRUE(refused(with(kilograms(1e6)), Why::too_large, QStringLiteral("from_amount")));
    EXPECT_TRUE(refused(with(kilograms(10), maths::Fraction{}), Why::not_positive, QStringLiteral("strength")));
    EXPECT_TRUE(refused(with(kilograms(10), percent(99)), Why::too_large, QStringLiteral("strength")));
    EXPECT_TRUE(refused(with(kilograms(10), percent(0.1)), Why::too_small, QStringLiteral("strength")));
}

TEST(MixRefused, a_strength_that_set_up_does_not_say) {
    Bench bench(SetUp::nothing);
    const auto outcome = reckon_mix(bench.book(), {}, first_day);
    EXPECT_TRUE(refused(outcome, Why::figure_missing, QStringLiteral("strength")));
    EXPECT_EQ(facts_of(outcome), QStringList{QStringLiteral("strength")});
}

TEST(MixRefused, acid_weaker_than_the_strength_wanted) {
    Bench bench;
    LotEntry lot;
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("weak");
    lot.received_on = first_day;
    lot.amount = kilograms(50).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = percent(30);
    MixPlan plan = bench.plan();
    plan.acid_lot = must(save_lot(bench.book(), lot, on_day(0)));
    const auto outcome = plan_mix(bench.book(), plan, on_day(0));
    EXPECT_TRUE(refused(outcome, Why::assay_below_strength, QStringLiteral("acid_lot")));
    EXPECT_EQ(facts_of(outcome), (QStringList{QStringLiteral("f:300000"), QStringLiteral("f:400000")}));
}

TEST(MixRefused, more_than_the_tank_holds) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.amount = kilograms(80.5);
    const auto outcome = plan_mix(bench.book(), plan, on_day(0));
    EXPECT_TRUE(refused(outcome, Why::overfills_tank, QStringLiteral("from_amount")));
    EXPECT_EQ(facts_of(outcome), (QStringList{QStringLiteral("m:80500000"), QStringLiteral("m:80000000")}));
}

TEST(MixRefused, a_lot_that_is_short_finished_or_of_another_material) {
    Bench bench;
    must(recount_lot(bench.book(), bench.acid, kilograms(20).count, QStringLiteral("weighed"), on_day(0)));
    auto outcome = plan_mix(bench.book(), bench.plan(), on_day(0));
    EXPECT_TRUE(refused(outcome, Why::lot_short, QStringLiteral("acid_lot")));
    EXPECT_EQ(facts_of(outcome),
              (QStringList{QStringLiteral("acid A1"), QStringLiteral("m:20000000"), QStringLiteral("m:25000000")}));
    must(finish_lot(bench.book(), bench.acid, on_day(0)));
    EXPECT_TRUE(
        refused(plan_mix(bench.book(), bench.plan(), on_day(0)), Why::lot_finished, QStringLiteral("acid_lot")));
    MixPlan plan = bench.plan();
    plan.acid_lot = bench.glycerine;
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan, on_day(0)), Why::lot_wrong_material, QStringLiteral("acid_lot")));
    plan.acid_lot = LotId{999};
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan, on_day(0)), Why::not_found, QStringLiteral("acid_lot")));
}

TEST(MixRefused, a_lot_past_its_date_is_asked_about) {
    Bench bench;
    LotEntry lot;
    lot.material = MaterialKind::glycerine;
    lot.name = QStringLiteral("old can");
    lot.received_on = first_day;
    lot.amount = kilograms(50).count;
    lot.best_before = maths::days_after(first_day, 3);
    MixPlan plan = bench.plan();
    plan.glycerine_lot = must(save_lot(bench.book(), lot, on_day(0)));
    EXPECT_TRUE(asked(plan_mix(bench.book(), plan, on_day(4)), Why::lot_past_date));
    EXPECT_TRUE(plan_mix(bench.book(), plan, on_day(4), {Why::lot_past_date}).has_value());
}

TEST(MixRefused, a_tank_that_still_holds_another_batch_is_asked_about) {
    Bench bench;
    bench.mixed_batch();
    EXPECT_TRUE(asked(plan_mix(bench.book(), bench.plan(), on_day(0, 20)), Why::tank_in_use));
    EXPECT_TRUE(plan_mix(bench.book(), bench.plan(), on_day(0, 20), {Why::tank_in_use}).has_value());
}

TEST(MixRefused, a_tank_or_kind_that_is_no_longer_in_use) {
    Bench bench;
    VesselEntry tank = vessels(bench.book()).at(0);
    tank.active = false;
    must(save_vessel(bench.book(), tank, on_day(0)));
    EXPECT_TRUE(refused(plan_mix(bench.book(), bench.plan(), on_day(0)), Why::not_found, QStringLiteral("tank")));
    MixPlan plan = bench.plan();
    plan.tank = bench.bin;
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan, on_day(0)), Why::not_found, QStringLiteral("tank")));
}

TEST(MixRefused, days_out_of_reach) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.planned_on = maths::days_after(first_day, 1000);
    EXPECT_TRUE(refused(plan_mix(bench.book(), plan, on_day(0)), Why::too_large, QStringLiteral("planned_on")));
    plan.planned_on = maths::days_after(first_day, -400);
    EXPECT_TRUE(asked(plan_mix(bench.book(), plan, on_day(0)), Why::long_ago));
    plan.planned_on = maths::days_after(first_day, 7);
    EXPECT_TRUE(plan_mix(bench.book(), plan, on_day(0)).has_value());
}

TEST(WeighedRefused, weights_that_are_missing_absurd_or_more_than_there_is) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    const auto inputs = bench.inputs_of(planned.batch);
    const auto weigh = [&](std::optional<maths::Mass> acid, std::optional<maths::Mass> glycerine) {
        return weigh_mix(bench.book(),
                         {planned.batch, {{inputs[0].id, acid}, {inputs[1].id, glycerine}}, std::nullopt, true},
                         on_day(0, 18));
    };
    EXPECT_TRUE(refused(weigh(kilograms(25), std::nullopt), Why::missing, QStringLiteral("inputs/1/mass")));
    EXPECT_TRUE(refused(weigh(maths::Mass{}, kilograms(37.5)), Why::not_positive, QStringLiteral("inputs/0/mass")));
    EXPECT_TRUE(refused(weigh(-kilograms(25), kilograms(37.5)), Why::not_positive, QStringLiteral("inputs/0/mass")));
    EXPECT_TRUE(refused(weigh(kilograms(101), kilograms(37.5)), Why::lot_short, QStringLiteral("inputs/0/mass")));
    EXPECT_TRUE(refused(weigh(kilograms(25), kilograms(60)), Why::overfills_tank));
    EXPECT_TRUE(asked(weigh(kilograms(20), kilograms(37.5)), Why::strength_off));
}

TEST(WeighedRefused, twice_or_at_a_time_that_cannot_be) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    WeighedMix weighed{planned.batch, {}, std::nullopt, true};
    for (const InputLine& input : bench.inputs_of(planned.batch))
        weighed.masses.push_back({input.id, input.planned});
    weighed.at = moment(0, 19);
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(0, 18)), Why::in_the_future, QStringLiteral("at")));
    weighed.at = moment(-11, 18); // the day before the materials came
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(0, 18)), Why::before_start, QStringLiteral("at")));
    weighed.at.reset();
    must(weigh_mix(bench.book(), weighed, on_day(0, 18)));
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(0, 18)), Why::nothing_changed));
    weighed.masses[0].second = kilograms(24.9);
    EXPECT_TRUE(refused(weigh_mix(bench.book(), weighed, on_day(0, 18)), Why::reason_missing));
}

TEST(WeighedRefused, of_a_batch_that_is_not_there_void_or_closed) {
    Bench bench;
    EXPECT_TRUE(refused(weigh_mix(bench.book(), {BatchId{77}, {}, std::nullopt, true}, on_day(0)), Why::not_found));
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(
        refused(add_to_mix(bench.book(), {planned.batch, bench.acid, kilograms(1)}, on_day(0)), Why::batch_not_mixed));
    must(void_batch(bench.book(), planned.batch, because(QStringLiteral("dropped"), 0)));
    EXPECT_TRUE(refused(weigh_mix(bench.book(), {planned.batch, {}, std::nullopt, true}, on_day(0)), Why::not_found));
    const BatchId batch = bench.bagged_batch(1);
    must(close_batch(bench.book(), batch, on_day(4)));
    EXPECT_TRUE(refused(add_to_mix(bench.book(), {batch, bench.acid, kilograms(1)}, on_day(4)), Why::batch_closed));
}

TEST(WeighedRefused, more_acid_once_strips_stand_in_the_liquid) {
    Bench bench;
    const BatchId batch = bench.soaked_batch();
    EXPECT_TRUE(refused(add_to_mix(bench.book(), {batch, bench.acid, kilograms(1)}, on_day(1, 12)), Why::undo_blocked));
}

TEST(WeighedRefused, voiding_a_batch_whose_bags_stand_in_the_store) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    EXPECT_TRUE(refused(void_batch(bench.book(), batch, because(QStringLiteral("no"), 3)), Why::undo_blocked));
}

} // namespace soakbook::tests
