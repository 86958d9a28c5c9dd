// SPDX-License-Identifier: GPL-3.0-or-later
// How a figure comes about: each explanation carries this case's numbers in the order that its kind names.
#include "core/work/facts.h"
#include "core/work/how_keeping.h"
#include "core/work/how_liquid.h"
#include "core/work/how_strips.h"
#include "core/work/how_yards.h"
#include "priced.h"
#include "yards_bench.h"

namespace soakbook::tests {

using namespace work;
using maths::celsius;
using maths::grams;
using maths::kilograms;

namespace {

QStringList list(std::initializer_list<const char*> facts) {
    QStringList texts;
    for (const char* text : facts)
        texts << QLatin1String(text);
    return texts;
}

} // namespace

TEST(How, facts_say_what_they_are) {
    EXPECT_EQ(fact(maths::litres(9.8898)), QStringLiteral("v:9889800"));
    EXPECT_EQ(fact(maths::Money{42'500}), QStringLiteral("c:42500"));
    EXPECT_EQ(hours_fact(36.5), QStringLiteral("h:2190"));
    EXPECT_EQ(number_fact(0.04531, 4), QStringLiteral("x:0.0453"));
    EXPECT_EQ(fact(QStringLiteral("x:1")), QStringLiteral("s:x:1")); // a name is not read as a number
    EXPECT_EQ(fact(QStringLiteral("yard: old")), QStringLiteral("yard: old"));
}

TEST(How, the_mix_is_told_with_its_amounts) {
    Bench bench;
    const MixFigures figures = must(reckon_mix(bench.book(), bench.plan(), first_day));
    const How how = how_mix_amounts(bench.book(), bench.plan(), figures);
    EXPECT_EQ(how.kind, HowKind::mix_amounts);
    EXPECT_EQ(how.facts, list({"m:62500000", "f:400000", "f:1000000", "m:25000000", "m:37500000", "m:0", "f:285677"}));
    EXPECT_EQ(how_yield(figures, grams(23)).facts.mid(0, 3), list({"m:62500000", "m:23000", "n:2717"}));
}

TEST(How, a_correction_is_told_with_what_to_add) {
    // 62.5 kg at 38 % instead of 40: 2.0833 kg of acid, common practice, no source.
    Bench bench;
    const BatchId batch = must(plan_mix(bench.book(), bench.plan(), on_day(0))).batch;
    WeighedMix weighed{batch, {}, std::nullopt, true};
    for (const InputLine& input : bench.inputs_of(batch))
        weighed.masses.push_back({input.id, kilograms(input.is_acid ? 23.75 : 38.75)});
    const MixResult result = must(weigh_mix(bench.book(), weighed, on_day(0, 18), {Why::strength_off}));
    const How how = how_mix_correction(result);
    EXPECT_EQ(how.kind, HowKind::mix_correction);
    EXPECT_EQ(how.facts, list({"m:62500000", "m:23750000", "f:380000", "f:400000", "f:1000000", "m:2083333", ""}));
}

TEST(How, too_strong_a_mix_is_told_with_its_glycerine) {
    // 62.5 kg at 42 %: 3.125 kg of glycerine, common practice, no source.
    Bench bench;
    const BatchId batch = must(plan_mix(bench.book(), bench.plan(), on_day(0))).batch;
    WeighedMix weighed{batch, {}, std::nullopt, true};
    for (const InputLine& input : bench.inputs_of(batch))
        weighed.masses.push_back({input.id, kilograms(input.is_acid ? 26.25 : 36.25)});
    const MixResult result = must(weigh_mix(bench.book(), weighed, on_day(0, 18), {Why::strength_off}));
    EXPECT_EQ(how_mix_correction(result).facts.mid(5), list({"", "m:3125000"}));
}

TEST(How, level_marks_and_pails_and_the_dial) {
    Bench bench;
    const How mark = how_level_mark(glycerine_marks(kilograms(12.5)).at(1));
    EXPECT_EQ(mark.kind, HowKind::level_mark);
    EXPECT_EQ(mark.facts.mid(0, 3), list({"m:12500000", "t:2000", "x:1263.92"}));
    const How estimate = how_level_mark(*liquid_mark(kilograms(62.5), maths::percent(40), celsius(52)));
    EXPECT_EQ(estimate.kind, HowKind::level_mark_estimate);
    EXPECT_EQ(estimate.facts.size(), 5);
    const How pails = how_pails_chosen(must(pail_advice(bench.book(), bench.plan())));
    EXPECT_EQ(pails.kind, HowKind::pails_chosen);
    EXPECT_EQ(pails.facts,
              list({"n:0", "n:0", "m:0", "m:62500000", "f:400000", "m:25000000", "m:37500000", "n:1", "m:0"}));
    bench.clear_batch(); // read at 55/52
    const How dial = how_dial(dial_advice(bench.book(), bench.tank, celsius(50)));
    EXPECT_EQ(dial.kind, HowKind::dial_by_range);
    // 50 + 3 is 53, but no advice goes below 54, a step under the only dial seen.
    EXPECT_EQ(dial.facts, list({"t:5000", "n:1", "t:300", "t:300", "t:5400", "t:5100", "t:5100", "t:6000", "t:5600"}));
    EXPECT_EQ(how_dial(DialAdvice{}).facts.size(), 9);
}

TEST(How, a_weighing_is_told_from_mean_to_acid) {
    Bench bench;
    const BatchId batch = bench.soaked_batch(0, 1);
    WeighEntry entry;
    entry.soak = bench.soaks_of(batch).at(0);
    entry.strips = 10;
    entry.total = grams(339);
    const WeighFigures figures = must(log_weighing(bench.book(), entry, on_day(2, 10)));
    EXPECT_EQ(how_taken_up(figures).facts, list({"m:33900", "m:11000", "m:22900", "n:10"}));
    EXPECT_EQ(how_acid_in_strip(figures, maths::percent(40)).facts,
              list({"m:33900", "m:11000", "f:400000", "m:9160", "m:6542"}));
    MoreToWeigh sample = must(more_to_weigh(bench.book(), entry));
    EXPECT_EQ(how_sample_interval(sample).facts, list({"n:10", "m:33900", "", "", "", "", ""}));
    entry.singles = {grams(34.33), grams(34.46), grams(34.29), grams(34.52), grams(34.40)};
    sample = must(more_to_weigh(bench.book(), entry));
    // t of 4 degrees: NIST/SEMATECH e-Handbook 1.3.6.7.2.
    EXPECT_EQ(how_sample_interval(sample).facts.mid(0, 5), list({"n:5", "m:34400", "m:94", "n:4", "x:2.7764"}));
    EXPECT_EQ(how_more_to_weigh(sample).facts, list({"n:1", "n:5", "m:34400", "m:33500", "m:34500", "m:94", "n:5"}));
    const SoakCurve curve = soak_curve(bench.view(batch).soaks.at(0));
    EXPECT_EQ(how_soak_curve(curve).facts, list({"m:11000", "", "", "", "", "n:1", "", ""}));
    EXPECT_EQ(how_target_hour(curve).facts, list({"m:34000", "m:11000", "", "", "", "", ""}));
    EXPECT_EQ(how_cold_room({celsius(15), celsius(22), 1.93548}).facts, list({"t:1500", "t:2200", "x:1.94"}));
}

TEST(How, acid_in_strips_that_are_not_bagged_yet_is_told_by_the_bins_together) {
    Bench bench;
    const BatchId batch = bench.weighed_batch(0, 2);
    // Both bins at 33.9 g; then one weighs 35.9 g: the mean of both is 34.9 g, (34.9 - 11) x 40 % = 9.56 g, by hand.
    WeighEntry later;
    later.soak = bench.soaks_of(batch).at(1);
    later.strips = 10;
    later.total = grams(359);
    must(log_weighing(bench.book(), later, on_day(3, 20)));
    BagEntry bags;
    bags.batch = batch;
    bags.bags = 1;
    const BagFigures figures = must(reckon_bags(bench.book(), bags, on_day(3, 20).today()));
    EXPECT_EQ(figures.acid_per_strip, grams(9.56));
    const auto how = how_acid_in_strip(figures);
    ASSERT_TRUE(how);
    EXPECT_EQ(how->facts.mid(0, 4), list({"m:34900", "m:11000", "f:400000", "m:9560"}));
    EXPECT_FALSE(how_acid_in_strip(BagFigures{}));
}

TEST(How, bags_and_accounts) {
    YardsBench bench;
    bench.say(Figure::rest_days, 7);
    const BatchId batch = bench.bagged_batch();
    const BagId bag = bench.bags_of(batch).at(0);
    ASSERT_TRUE(how_use_by(bench.book(), bag));
    EXPECT_EQ(how_use_by(bench.book(), bag)->facts, list({"d:2026-08-05", "n:12", "d:2027-08-05"}));
    EXPECT_EQ(how_rest(bench.book(), bag)->facts, list({"d:2026-08-05", "n:7", "d:2026-08-12"}));
    EXPECT_FALSE(how_use_by(bench.book(), BagId{999}));
    // 33.9 g a strip, 11 g dry, 40 %: 9.16 g, 6.542 as anhydrous acid. Common practice, no source.
    ASSERT_TRUE(how_acid_in_strip(bench.book(), bag));
    EXPECT_EQ(how_acid_in_strip(bench.book(), bag)->facts, list({"m:33900", "m:11000", "f:400000", "m:9160", "m:6542"}));
    EXPECT_FALSE(how_acid_in_strip(bench.book(), BagId{999}));
    EXPECT_EQ(how_balance(must(balance(bench.book(), batch))).facts.mid(0, 2), list({"m:62500000", "m:21984000"}));
    EXPECT_EQ(how_strip_cost(must(batch_cost(bench.book(), batch))).facts, list({"", "", "c:0", "", "", "n:960", ""}));
    give_costs(bench);
    EXPECT_EQ(how_strip_cost(must(batch_cost(bench.book(), batch))).facts.mid(3, 3),
              list({"c:480000", "c:24000", "n:960"}));
    EXPECT_FALSE(how_batch_limits(batch_chart(bench.book(), BatchMeasure::taken_up, bench.strip_kind)));
    const CountCheck count =
        must(count_check(bench.book(), CountWish{batch, std::nullopt, kilograms(2.686), 80, std::nullopt}));
    EXPECT_EQ(how_count_by_weight(count).facts, list({"m:2686000", "m:33900", "n:20", "", "", "", "", "", ""}));
    // Oral estimate of 40 % by the rat's 375 mg/kg: 937.5; dermal by 1100: 2750 (UN GHS 3.1.3.6).
    EXPECT_EQ(how_hazard_class(maths::percent(40)).facts, list({"f:400000", "x:937.5", "x:2750.0"}));
}

TEST(How, doses_windows_and_mites) {
    YardsBench bench;
    bench.bagged_batch();
    const RoundId round = bench.round(20);
    const VisitPlan plan = must(plan_visit(bench.book(), round, bench.yard, day_n(20)));
    const RoundEntry rule = round_entry(bench.book(), round);
    const auto dose = how_dose(rule, plan.lines.at(0));
    ASSERT_TRUE(dose);
    EXPECT_EQ(dose->kind, HowKind::dose_frames);
    EXPECT_EQ(dose->facts, list({"x:2.5", "n:8", "n:1", "", "", "n:4"}));
    bench.visit(round, 20, {Why::bag_resting});
    const auto window = how_pull_window(bench.book(), bench.placement(bench.hive(QStringLiteral("A1"))));
    ASSERT_TRUE(window);
    EXPECT_EQ(window->facts.mid(1, 2), list({"n:42", "n:56"}));
    EXPECT_FALSE(how_pull_window(bench.book(), PlacementId{999}));

    // 15 of 148: Wilson 0.062386 to 0.160487, Newcombe 1998, Stat. Med. 17:857.
    CountLine wash;
    wash.mites = 15;
    wash.bees = 148;
    wash.figures = mite_figures(bench.book(), MiteCountKind::wash, 15, 148, std::nullopt);
    EXPECT_EQ(how_mite_rate(wash).facts, list({"n:15", "n:148", "f:101351", "f:62386", "f:160487"}));
    must(set_figures(bench.book(), {{Figure::mite_threshold, 30'000, {}}}, on_day(1)));
    wash.figures = mite_figures(bench.book(), MiteCountKind::wash, 15, 148, std::nullopt);
    EXPECT_EQ(how_mite_rate(wash).facts.value(5), QStringLiteral("f:30000"));
    CountLine drop;
    drop.kind = MiteCountKind::drop;
    drop.mites = 9;
    drop.days = 3;
    drop.figures = mite_figures(bench.book(), MiteCountKind::drop, 9, std::nullopt, 3);
    EXPECT_EQ(how_mite_rate(drop).kind, HowKind::mite_drop);
    EXPECT_EQ(how_mite_rate(drop).facts, list({"n:9", "n:3", "x:3.0"}));
}

TEST(How, doses_of_a_round_that_is_planned) {
    // Twenty hives of 8 frames and a row of 6 with 60: a strip for 2.5 frames makes 4 each, rounded up. Common practice,
    // no source.
    YardsBench bench;
    bench.bagged_batch();
    RoundEntry rule = round_entry(bench.book(), bench.round(20));
    const auto reckoned = [&] { return must(reckon_round(bench.book(), rule, day_n(20))); };
    auto hows = how_dose(rule, reckoned());
    ASSERT_EQ(hows.size(), 2u);
    EXPECT_EQ(hows[0].facts, list({"x:2.5", "n:160", "n:20", "", "", "n:80"}));
    EXPECT_EQ(hows[1].facts, list({"x:2.5", "n:60", "n:6", "", "", "n:24"}));

    rule.dose_rule = DoseRule::fixed;
    rule.dose_frames_tenths.reset();
    rule.dose_strips = 3;
    hows = how_dose(rule, reckoned());
    ASSERT_EQ(hows.size(), 1u) << "the same for every hive";
    EXPECT_EQ(hows[0].facts, list({"n:3", "n:26", "", "", "n:78"}));

    rule.dose_rule = DoseRule::brood_boxes;
    hows = how_dose(rule, reckoned());
    ASSERT_EQ(hows.size(), 1u) << "no boxes are said of any";
    EXPECT_EQ(hows[0].facts, list({"n:3", "", "n:26", "", "", ""}));

    const How window = how_pull_window(day_n(20), reckoned().pull_from, reckoned().pull_by);
    EXPECT_EQ(window.facts.mid(1, 2), list({"n:42", "n:56"}));
}

} // namespace soakbook::tests
