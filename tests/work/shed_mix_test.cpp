// SPDX-License-Identifier: GPL-3.0-or-later
// Mix: amounts for a strength, what was weighed in, and how it is put right. The check values of 25 kg and 37.5 kg are
// common practice, no source.
#include "bench.h"

namespace soakbook::tests {

using namespace work;
using maths::kilograms;
using maths::percent;

TEST(Mix, twenty_five_kilograms_of_acid_and_thirty_seven_and_a_half_of_glycerine_are_forty_percent) {
    Bench bench;
    const MixFigures figures = must(reckon_mix(bench.book(), bench.plan(), first_day));
    EXPECT_EQ(figures.acid.total, kilograms(25));
    EXPECT_EQ(figures.glycerine.total, kilograms(37.5));
    EXPECT_EQ(figures.total, kilograms(62.5));
    EXPECT_EQ(figures.strength, percent(40));
    EXPECT_EQ(figures.strength_anhydrous, maths::ppm(285'677)); // 28.5677 %, handbook table of molar masses
    EXPECT_EQ(figures.tank_room, kilograms(17.5));
}

TEST(Mix, glycerine_comes_as_a_can_and_a_half) {
    Bench bench;
    const MixFigures figures = must(reckon_mix(bench.book(), bench.plan(), first_day));
    EXPECT_EQ(figures.glycerine.container, kilograms(25));
    EXPECT_EQ(figures.glycerine.whole, 1);
    EXPECT_EQ(figures.glycerine.rest, kilograms(12.5));
    EXPECT_EQ(figures.acid.whole, 1);
    EXPECT_EQ(figures.acid.rest, maths::Mass{});
}

TEST(Mix, starts_from_the_acid_or_the_glycerine_at_hand) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.from = MixFrom::acid_at_hand;
    plan.amount = kilograms(25);
    EXPECT_EQ(must(reckon_mix(bench.book(), plan, first_day)).glycerine.total, kilograms(37.5));
    plan.from = MixFrom::glycerine_at_hand;
    plan.amount = kilograms(37.5);
    EXPECT_EQ(must(reckon_mix(bench.book(), plan, first_day)).acid.total, kilograms(25));
}

TEST(Mix, nine_hundred_and_sixty_strips_want_twenty_two_kilograms_and_eighty_grams) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.from = MixFrom::strips_wanted;
    plan.amount.reset();
    plan.strips = 960;
    const MixFigures figures = must(reckon_mix(bench.book(), plan, first_day));
    EXPECT_EQ(figures.total, kilograms(22.08));
    EXPECT_EQ(figures.strips, 960);
    EXPECT_EQ(figures.most_left, maths::Mass{});
}

TEST(Mix, weaker_acid_is_taken_in_more) {
    Bench bench;
    LotEntry lot;
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("damp acid");
    lot.received_on = first_day;
    lot.amount = kilograms(50).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = percent(80);
    MixPlan plan = bench.plan();
    plan.acid_lot = must(save_lot(bench.book(), lot, on_day(0)));
    const MixFigures figures = must(reckon_mix(bench.book(), plan, first_day));
    EXPECT_EQ(figures.acid.total, kilograms(31.25));
    EXPECT_EQ(figures.glycerine.total, kilograms(31.25));
}

TEST(Mix, anhydrous_acid_counts_for_more_than_its_mass) {
    Bench bench;
    LotEntry lot;
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("anhydrous acid");
    lot.received_on = first_day;
    lot.amount = kilograms(50).count;
    lot.acid_form = FormOfAcid::anhydrous;
    lot.assay = percent(100);
    MixPlan plan = bench.plan();
    plan.acid_lot = must(save_lot(bench.book(), lot, on_day(0)));
    const MixFigures figures = must(reckon_mix(bench.book(), plan, first_day));
    // 25 kg of dihydrate are 17.8548 kg of anhydrous acid: molar masses 126.064 and 90.034 (IUPAC abridged weights).
    EXPECT_NEAR(maths::in_kilograms(figures.acid.total), 25 * 90.034 / 126.064, 0.0001);
    const PlannedBatch batch = must(plan_mix(bench.book(), plan, on_day(0)));
    WeighedMix weighed{batch.batch, {}, std::nullopt, true};
    for (const InputLine& input : bench.inputs_of(batch.batch))
        weighed.masses.push_back({input.id, input.planned});
    const MixResult result = must(weigh_mix(bench.book(), weighed, on_day(0, 18)));
    EXPECT_EQ(result.strength, percent(40));
    EXPECT_EQ(result.acid, kilograms(25));
}

TEST(Mix, a_plan_is_a_batch_with_a_code_and_its_planned_amounts) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(planned.code.startsWith(QLatin1Char('B')));
    const BatchView view = bench.view(planned.batch);
    EXPECT_EQ(view.line.state, BatchState::planned);
    EXPECT_EQ(view.line.code, planned.code);
    EXPECT_EQ(view.planned_total, kilograms(62.5));
    ASSERT_EQ(view.inputs.size(), 2U);
    EXPECT_TRUE(view.inputs[0].is_acid);
    EXPECT_EQ(view.inputs[0].planned, kilograms(25));
    EXPECT_FALSE(view.inputs[0].mass);
    EXPECT_EQ(view.ceiling, maths::celsius(60));
    EXPECT_FALSE(view.strength);
}

TEST(Mix, what_was_weighed_in_gives_the_strength) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    const BatchView view = bench.view(batch);
    EXPECT_EQ(view.line.state, BatchState::warming);
    EXPECT_EQ(view.strength, percent(40));
    EXPECT_EQ(view.total, kilograms(62.5));
    ASSERT_TRUE(view.mix);
    EXPECT_FALSE(view.mix->add_acid);
    EXPECT_FALSE(view.mix->add_glycerine);
}

TEST(Mix, too_much_glycerine_says_how_much_acid_brings_it_back) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    const auto inputs = bench.inputs_of(planned.batch);
    WeighedMix weighed{
        planned.batch, {{inputs[0].id, kilograms(25)}, {inputs[1].id, kilograms(39)}}, std::nullopt, true};
    EXPECT_TRUE(asked(weigh_mix(bench.book(), weighed, on_day(0, 18)), Why::strength_off));
    const MixResult result = must(weigh_mix(bench.book(), weighed, on_day(0, 18), {Why::strength_off}));
    // (0.4 x 64 - 25) / (1 - 0.4) = 1 kg
    EXPECT_EQ(result.add_acid, kilograms(1));
    EXPECT_TRUE(result.correction_fits);
    const MixResult after = must(add_to_mix(bench.book(), {planned.batch, bench.acid, kilograms(1)}, on_day(0, 19)));
    EXPECT_EQ(after.strength, percent(40));
    EXPECT_EQ(after.total, kilograms(65));
    EXPECT_FALSE(after.add_acid);
}

TEST(Mix, a_correction_that_the_tank_does_not_hold_says_so) {
    Bench bench;
    MixPlan plan = bench.plan();
    plan.amount = kilograms(79);
    const PlannedBatch planned = must(plan_mix(bench.book(), plan, on_day(0)));
    const auto inputs = bench.inputs_of(planned.batch);
    const WeighedMix weighed{
        planned.batch, {{inputs[0].id, kilograms(32.5)}, {inputs[1].id, inputs[1].planned}}, std::nullopt, true};
    const MixResult result = must(weigh_mix(bench.book(), weighed, on_day(0, 18), {Why::strength_off}));
    ASSERT_TRUE(result.add_glycerine);
    EXPECT_FALSE(result.correction_fits);
    EXPECT_TRUE(
        refused(add_to_mix(bench.book(), {planned.batch, bench.glycerine, *result.add_glycerine}, on_day(0, 19)),
                Why::overfills_tank, QStringLiteral("glycerine")));
}

TEST(Mix, acid_added_later_has_to_dissolve_before_the_liquid_counts_as_clear_again) {
    Bench bench;
    const BatchId batch = bench.clear_batch();
    EXPECT_EQ(bench.view(batch).line.state, BatchState::clear);
    must(add_to_mix(bench.book(), {batch, bench.acid, kilograms(0.1)}, on_day(1, 10)));
    EXPECT_EQ(bench.view(batch).line.state, BatchState::warming);
}

TEST(Mix, lots_count_down_by_what_was_planned_and_then_by_what_was_weighed) {
    Bench bench;
    const auto left = [&](LotId id) {
        for (const LotLine& lot : lots(bench.book(), first_day))
            if (lot.entry.id == id)
                return lot.left;
        return qint64{-1};
    };
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_EQ(left(bench.acid), kilograms(75).count);
    const auto inputs = bench.inputs_of(planned.batch);
    const WeighedMix weighed{
        planned.batch, {{inputs[0].id, kilograms(24.9)}, {inputs[1].id, kilograms(37.4)}}, std::nullopt, true};
    must(weigh_mix(bench.book(), weighed, on_day(0, 18)));
    EXPECT_EQ(left(bench.acid), kilograms(75.1).count);
    EXPECT_EQ(left(bench.glycerine), kilograms(162.6).count);
}

TEST(Mix, a_planned_batch_that_is_dropped_gives_everything_back) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(
        refused(void_batch(bench.book(), planned.batch, on_day(0)), Why::reason_missing, QStringLiteral("reason")));
    must(void_batch(bench.book(), planned.batch, because(QStringLiteral("rain"), 0)));
    const BatchView view = bench.view(planned.batch);
    EXPECT_EQ(view.line.state, BatchState::made_void);
    EXPECT_EQ(view.void_reason, QStringLiteral("rain"));
    EXPECT_TRUE(batches(bench.book(), first_day).empty());
    EXPECT_EQ(batches(bench.book(), first_day, true).size(), 1U);
    for (const LotLine& lot : lots(bench.book(), first_day))
        EXPECT_EQ(lot.used, 0) << lot.entry.name.toStdString();
}

TEST(Mix, a_new_form_is_filled_with_what_was_used_last) {
    Bench bench;
    bench.mixed_batch();
    const MixStart start = mix_start(bench.book(), first_day);
    EXPECT_EQ(start.plan.tank, bench.tank);
    EXPECT_EQ(start.plan.strip_kind, bench.strip_kind);
    EXPECT_EQ(start.plan.acid_lot, bench.acid);
    EXPECT_EQ(start.plan.glycerine_lot, bench.glycerine);
    EXPECT_EQ(start.plan.strength, percent(40));
    EXPECT_TRUE(start.pails_that_can.empty());
}

TEST(Mix, a_form_of_an_empty_workbook_offers_nothing_it_does_not_have) {
    Bench bench(SetUp::nothing);
    const MixStart start = mix_start(bench.book(), first_day);
    EXPECT_FALSE(start.plan.tank);
    EXPECT_FALSE(start.plan.strip_kind);
    EXPECT_FALSE(start.plan.strength);
    EXPECT_FALSE(start.plan.acid_lot);
}

} // namespace soakbook::tests
