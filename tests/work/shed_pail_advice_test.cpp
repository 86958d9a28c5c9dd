// SPDX-License-Identifier: GPL-3.0-or-later
// Which whole pails go into a mix. Amounts follow from conservation of mass; 62.5 kg at 40 % is common practice, no
// source.
#include "bench.h"
#include "core/work/figures.h"
#include "core/work/pail_advice.h"
#include "priced.h"

namespace soakbook::tests {

using namespace work;
using maths::kilograms;
using maths::percent;

namespace {

/// A batch of 62.5 kg of which pails were poured.
struct Shelf {
    Bench bench;
    std::vector<PailId> pails;

    explicit Shelf(const std::vector<maths::Mass>& masses, bool clear = true) {
        PourEntry pour;
        pour.batch = bench.clear_batch();
        pour.pails = masses;
        pour.warm_and_clear = clear;
        pour.scraped = true;
        pails = must(pour_leftovers(bench.book(), pour, on_day(1, 15))).pails;
    }
    MixPlan plan(double total, double strength = 40) const {
        MixPlan plan = bench.plan();
        plan.amount = kilograms(total);
        plan.strength = percent(strength);
        return plan;
    }
    PailAdvice advice(double total, double strength = 40) {
        return must(pail_advice(bench.book(), plan(total, strength)));
    }
};

} // namespace

TEST(PailAdvice, uses_the_old_liquid_and_says_what_it_saves) {
    Shelf shelf({kilograms(20), kilograms(10)});
    const PailAdvice advice = shelf.advice(62.5);
    ASSERT_EQ(advice.says, PailAdviceSays::advised);
    EXPECT_EQ(advice.used(), shelf.pails);
    EXPECT_EQ(advice.old_liquid, kilograms(30));
    EXPECT_EQ(advice.acid, kilograms(13));
    EXPECT_EQ(advice.glycerine, kilograms(19.5));
    EXPECT_EQ(advice.saves_acid, kilograms(12));
    EXPECT_EQ(advice.saves_glycerine, kilograms(18));
    EXPECT_EQ(advice.strength, percent(40));
    EXPECT_TRUE(advice.proved);
    EXPECT_FALSE(advice.saves_money); // no lot has a cost
}

TEST(PailAdvice, the_mix_with_those_pails_wants_just_what_the_advice_says) {
    Shelf shelf({kilograms(20), kilograms(10)});
    const PailAdvice advice = shelf.advice(62.5);
    MixPlan plan = shelf.plan(62.5);
    plan.pails = advice.used();
    const MixFigures figures = must(reckon_mix(shelf.bench.book(), plan, maths::days_after(first_day, 2)));
    EXPECT_EQ(figures.acid.total, advice.acid);
    EXPECT_EQ(figures.glycerine.total, advice.glycerine);
    EXPECT_EQ(figures.from_pails, advice.old_liquid);
    // Pails that the plan holds already are chosen anew.
    EXPECT_EQ(must(pail_advice(shelf.bench.book(), plan)).old_liquid, advice.old_liquid);
}

TEST(PailAdvice, tells_what_it_saves_in_money_when_the_lots_have_a_cost) {
    Shelf shelf({kilograms(20), kilograms(10)});
    give_costs(shelf.bench); // 3 a kilogram of acid, 2 of glycerine
    EXPECT_EQ(shelf.advice(62.5).saves_money, maths::Money{12 * 30'000 + 18 * 20'000});
}

TEST(PailAdvice, why_a_pail_stays_out) {
    Shelf shelf({kilograms(20), kilograms(10), kilograms(5)});
    must(pail_used_in_part(shelf.bench.book(), shelf.pails.at(2), std::nullopt, on_day(2)));
    const auto places = [&](double total, double strength) {
        std::vector<PailIs> is;
        for (const PailAdviceLine& line : shelf.advice(total, strength).lines)
            is.push_back(line.is);
        return is;
    };
    const auto unknown = PailIs::strength_unknown;
    EXPECT_EQ(places(25, 40), (std::vector{PailIs::used, PailIs::left_over, unknown}));
    EXPECT_EQ(places(15, 40), (std::vector{PailIs::too_heavy, PailIs::used, unknown}));
    EXPECT_EQ(places(22, 10), (std::vector{PailIs::too_strong, PailIs::too_strong, unknown}));
    // 12 kg at 60 % may hold 4.8 kg of glycerine; 10 kg at 40 % bring 6 kg.
    EXPECT_EQ(places(12, 60), (std::vector{PailIs::too_heavy, PailIs::too_weak, unknown}));
    EXPECT_EQ(shelf.advice(12, 60).says, PailAdviceSays::none_fits);
}

TEST(PailAdvice, pails_of_settled_liquid_go_in_together_or_not_at_all) {
    Shelf shelf({kilograms(20), kilograms(20)}, false);
    PailAdvice advice = shelf.advice(30);
    EXPECT_EQ(advice.says, PailAdviceSays::none_fits);
    ASSERT_EQ(advice.lines.size(), 2U);
    EXPECT_EQ(advice.lines[0].is, PailIs::too_heavy); // both are 40 kg
    EXPECT_EQ(advice.lines[0].set, QStringList{advice.lines[1].code});
    EXPECT_EQ(shelf.advice(50).old_liquid, kilograms(40));
    must(discard_pail(shelf.bench.book(), shelf.pails.at(0), std::nullopt, QStringLiteral("leaked"), on_day(2)));
    advice = shelf.advice(50);
    ASSERT_EQ(advice.lines.size(), 1U);
    EXPECT_EQ(advice.lines[0].is, PailIs::set_not_whole);
    EXPECT_EQ(advice.says, PailAdviceSays::none_fits);
}

TEST(PailAdvice, with_whole_pours_only_the_pails_of_a_pour_go_together) {
    Shelf shelf({kilograms(20), kilograms(10)});
    must(set_figures(shelf.bench.book(), {{Figure::pails_whole, 2, {}}}, on_day(2)));
    EXPECT_EQ(shelf.advice(25).says, PailAdviceSays::none_fits);
    EXPECT_EQ(shelf.advice(31).old_liquid, kilograms(30));
}

TEST(PailAdvice, starts_from_the_strips_wanted_too) {
    Shelf shelf({kilograms(20), kilograms(10)});
    MixPlan plan = shelf.bench.plan();
    plan.from = MixFrom::strips_wanted;
    plan.amount.reset();
    plan.strips = 960; // 22.08 kg
    const PailAdvice advice = must(pail_advice(shelf.bench.book(), plan));
    EXPECT_EQ(advice.total, kilograms(22.08));
    EXPECT_EQ(advice.old_liquid, kilograms(20));
    plan.from = MixFrom::acid_at_hand;
    EXPECT_EQ(must(pail_advice(shelf.bench.book(), plan)).says, PailAdviceSays::not_applicable);
}

TEST(PailAdvice, with_none_on_the_shelf_there_is_none) {
    Bench bench;
    const PailAdvice advice = must(pail_advice(bench.book(), bench.plan()));
    EXPECT_EQ(advice.says, PailAdviceSays::no_pails);
    EXPECT_EQ(advice.acid, kilograms(25));
    EXPECT_EQ(must(pails_only_advice(bench.book(), bench.tank)).says, PailAdviceSays::no_pails);
}

TEST(PailAdvice, refuses_what_the_mix_would_refuse) {
    Shelf shelf({kilograms(20), kilograms(10)});
    const auto advise = [&](const MixPlan& plan) { return pail_advice(shelf.bench.book(), plan); };
    EXPECT_TRUE(refused(advise(shelf.plan(81)), Why::overfills_tank, QStringLiteral("from_amount")));
    MixPlan plan = shelf.plan(62.5);
    plan.amount.reset();
    EXPECT_TRUE(refused(advise(plan), Why::missing, QStringLiteral("from_amount")));
    plan = shelf.plan(62.5);
    plan.tank.reset();
    EXPECT_TRUE(refused(advise(plan), Why::missing, QStringLiteral("tank")));
    LotEntry lot;
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("last of it");
    lot.received_on = first_day;
    lot.amount = kilograms(5).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = percent(100);
    plan = shelf.plan(62.5);
    plan.acid_lot = must(save_lot(shelf.bench.book(), lot, on_day(2)));
    EXPECT_TRUE(refused(advise(plan), Why::lot_short, QStringLiteral("acid_lot"))); // 13 kg even with all pails
    plan.amount = kilograms(40); // 4 kg with both pails, 8 kg with one
    EXPECT_EQ(must(advise(plan)).acid, kilograms(4));
}

TEST(PailAdvice, pails_only_come_as_near_to_the_tank_as_whole_pails_do) {
    Shelf shelf({kilograms(20), kilograms(10)});
    const PailAdvice advice = must(pails_only_advice(shelf.bench.book(), shelf.bench.tank));
    EXPECT_EQ(advice.says, PailAdviceSays::advised);
    EXPECT_EQ(advice.total, kilograms(30));
    EXPECT_EQ(advice.strength, percent(40));
    EXPECT_EQ(advice.acid, maths::Mass{});
    EXPECT_TRUE(
        refused(pails_only_advice(shelf.bench.book(), shelf.bench.bin), Why::not_found, QStringLiteral("tank")));
}

} // namespace soakbook::tests
