// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up and deliveries: what is kept and what is refused beside its field.
#include "bench.h"
#include "core/work/figures.h"
#include "core/work/watch.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;
using maths::percent;

namespace {

FirstSetUp first() {
    FirstSetUp entry;
    entry.operation.name = QStringLiteral("Hill apiary");
    entry.person = QStringLiteral("Bo");
    entry.kind.name = QStringLiteral("card");
    entry.kind.dry = grams(11);
    entry.kind.target = grams(34);
    entry.kind.tolerance = grams(1);
    entry.kind.strips_per_bag = 80;
    entry.tank.name = QStringLiteral("tank");
    entry.tank.capacity = kilograms(80);
    entry.bin.name = QStringLiteral("bin");
    entry.bin.strips_held = 480;
    return entry;
}

LotEntry acid() {
    LotEntry lot;
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("lot 7");
    lot.received_on = first_day;
    lot.amount = kilograms(25).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = percent(99.6);
    return lot;
}

} // namespace

TEST(SetUp, the_welcome_writes_everything_at_once_with_the_four_working_figures) {
    Bench bench(SetUp::nothing);
    must(first_set_up(bench.book(), first(), on_day(0)));
    EXPECT_EQ(operation(bench.book()).name, QStringLiteral("Hill apiary"));
    EXPECT_EQ(operation_name(bench.book()), QStringLiteral("Hill apiary"));
    ASSERT_EQ(people(bench.book()).size(), 1U);
    EXPECT_EQ(strip_kinds(bench.book()).at(0).target, grams(34));
    EXPECT_EQ(vessels(bench.book()).size(), 2U);
    EXPECT_EQ(figure(bench.book(), Figure::strength), 400'000);
    EXPECT_EQ(figure(bench.book(), Figure::tank_ceiling), 6'000);
    EXPECT_EQ(figure(bench.book(), Figure::pails_whole), 1);
    EXPECT_EQ(figure(bench.book(), Figure::use_within_months), 12);
    EXPECT_FALSE(figure(bench.book(), Figure::rest_days)); // the user's to say
}

TEST(SetUp, the_welcome_may_leave_out_tank_bin_and_kind) {
    Bench bench(SetUp::nothing);
    FirstSetUp entry = first();
    entry.kind = {};
    entry.tank = {};
    entry.bin = {};
    must(first_set_up(bench.book(), entry, on_day(0)));
    EXPECT_TRUE(strip_kinds(bench.book()).empty());
    EXPECT_TRUE(vessels(bench.book()).empty());
}

TEST(SetUp, the_welcome_writes_nothing_when_one_answer_is_wrong) {
    Bench bench(SetUp::nothing);
    FirstSetUp entry = first();
    entry.bin.strips_held = -1;
    EXPECT_TRUE(
        refused(first_set_up(bench.book(), entry, on_day(0)), Why::not_positive, QStringLiteral("bin/strips_held")));
    EXPECT_TRUE(people(bench.book()).empty());
    EXPECT_TRUE(operation(bench.book()).name.isEmpty());
    entry = first();
    entry.operation.name = QStringLiteral("  ");
    EXPECT_TRUE(refused(first_set_up(bench.book(), entry, on_day(0)), Why::missing, QStringLiteral("operation/name")));
    entry = first();
    entry.person.clear();
    EXPECT_TRUE(refused(first_set_up(bench.book(), entry, on_day(0)), Why::missing, QStringLiteral("person")));
    entry = first();
    entry.kind.dry.reset();
    EXPECT_TRUE(refused(first_set_up(bench.book(), entry, on_day(0)), Why::missing, QStringLiteral("kind/dry")));
    entry = first();
    entry.tank.capacity.reset();
    EXPECT_TRUE(refused(first_set_up(bench.book(), entry, on_day(0)), Why::missing, QStringLiteral("tank/capacity")));
}

TEST(SetUp, texts_are_kept_exactly_or_refused) {
    Bench bench;
    Operation entry{QStringLiteral("Name"), QStringLiteral(u"\u05E9\u05DC\u05D5\u05DD \u202E 12"),
                    QStringLiteral("№ 7")};
    must(set_operation(bench.book(), entry, on_day(0)));
    EXPECT_EQ(operation(bench.book()).maker, entry.maker);
    EXPECT_TRUE(refused(set_operation(bench.book(), entry, on_day(0)), Why::nothing_changed));
    entry.name = QString(10'000, QLatin1Char('x'));
    EXPECT_TRUE(refused(set_operation(bench.book(), entry, on_day(0)), Why::too_long, QStringLiteral("name")));
    entry.name = QStringLiteral("half") + QChar(0xD83D);
    EXPECT_TRUE(refused(set_operation(bench.book(), entry, on_day(0)), Why::unreadable, QStringLiteral("name")));
    entry.name = QStringLiteral("a") + QChar(0) + QStringLiteral("b");
    EXPECT_TRUE(refused(set_operation(bench.book(), entry, on_day(0)), Why::unreadable, QStringLiteral("name")));
    for (const char16_t hidden : {u'\t', u'\n', u'\u0085', u'\u2028', u'\u202E', u'\u202A', u'\u2066', u'\u2069'}) {
        entry.name = QStringLiteral("upper") + QChar(hidden) + QStringLiteral("lower");
        EXPECT_TRUE(refused(set_operation(bench.book(), entry, on_day(0)), Why::hidden_signs, QStringLiteral("name"))) << std::hex << int{hidden};
    }
    entry.name = QStringLiteral(" whole 🐝 \u05E9\u05DC\u05D5\u05DD\n");
    must(set_operation(bench.book(), entry, on_day(0)));
    EXPECT_EQ(operation(bench.book()).name, entry.name.trimmed());
}

TEST(SetUp, names_with_signs_that_nobody_sees_are_refused_wherever_a_thing_is_named) {
    Bench bench;
    const QString name = QStringLiteral("A\u202E1");
    EXPECT_TRUE(refused(save_person(bench.book(), {{}, name, true}, on_day(0)), Why::hidden_signs, QStringLiteral("name")));
    LotEntry lot = acid();
    lot.name = name;
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::hidden_signs, QStringLiteral("name")));
    lot = acid();
    lot.supplier = name;
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::hidden_signs, QStringLiteral("supplier")));
    lot = acid();
    lot.note = QStringLiteral("two\nlines, \u202Eturned");
    must(save_lot(bench.book(), lot, on_day(0))); // a note is read by itself
    FirstSetUp entry = first();
    entry.tank.name = name;
    EXPECT_TRUE(refused(first_set_up(Bench(SetUp::nothing).book(), entry, on_day(0)), Why::hidden_signs, QStringLiteral("tank/name")));
}

TEST(SetUp, people_have_names_of_their_own) {
    Bench bench;
    const PersonId cleo = must(save_person(bench.book(), {{}, QStringLiteral(" Cleo "), true}, on_day(0)));
    const auto again = save_person(bench.book(), {{}, QStringLiteral("cleo"), true}, on_day(0));
    EXPECT_TRUE(refused(again, Why::name_taken, QStringLiteral("name")));
    EXPECT_TRUE(
        refused(save_person(bench.book(), {{}, QString(), true}, on_day(0)), Why::missing, QStringLiteral("name")));
    must(save_person(bench.book(), {cleo, QStringLiteral("Cleo"), false}, on_day(0)));
    EXPECT_FALSE(people(bench.book()).back().active);
    EXPECT_TRUE(
        refused(save_person(bench.book(), {PersonId{99}, QStringLiteral("Dee"), true}, on_day(0)), Why::not_found));
}

TEST(SetUp, a_strip_kind_has_weights_that_make_sense) {
    Bench bench;
    const StripKindEntry good = strip_kinds(bench.book()).at(0);
    const auto with = [&](auto change) {
        StripKindEntry kind = good;
        change(kind);
        return save_strip_kind(bench.book(), kind, on_day(0));
    };
    EXPECT_TRUE(
        refused(with([](StripKindEntry& k) { k.target = grams(11); }), Why::too_small, QStringLiteral("target")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.dry = grams(1001); }), Why::too_large, QStringLiteral("dry")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.dry = -grams(1); }), Why::not_positive, QStringLiteral("dry")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.tolerance = grams(11.5); }), Why::too_large,
                        QStringLiteral("tolerance")));
    EXPECT_TRUE(
        refused(with([](StripKindEntry& k) { k.tolerance = -grams(1); }), Why::too_small, QStringLiteral("tolerance")));
    EXPECT_TRUE(
        refused(with([](StripKindEntry& k) { k.tolerance.reset(); }), Why::missing, QStringLiteral("tolerance")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.strips_per_bag = 0; }), Why::not_positive,
                        QStringLiteral("strips_per_bag")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.dose_frames_tenths.reset(); }), Why::missing,
                        QStringLiteral("dose_frames_tenths")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) { k.dose_rule = DoseRule::fixed; }), Why::missing,
                        QStringLiteral("dose_strips")));
    EXPECT_TRUE(refused(with([](StripKindEntry& k) {
                            k.dose_least = 5;
                            k.dose_most = 4;
                        }),
                        Why::too_large, QStringLiteral("dose_least")));
    EXPECT_TRUE(refused(with([](StripKindEntry&) {}), Why::nothing_changed));
    EXPECT_TRUE(with([](StripKindEntry& k) { k.active = false; }).has_value());
    EXPECT_TRUE(strip_kinds(bench.book()).empty());
    EXPECT_EQ(strip_kinds(bench.book(), true).size(), 1U);
}

TEST(SetUp, a_tank_has_a_capacity_and_a_bin_its_strips) {
    Bench bench;
    VesselEntry vessel;
    vessel.name = QStringLiteral("big tank");
    EXPECT_TRUE(refused(save_vessel(bench.book(), vessel, on_day(0)), Why::missing, QStringLiteral("capacity")));
    vessel.capacity = kilograms(20'000);
    EXPECT_TRUE(refused(save_vessel(bench.book(), vessel, on_day(0)), Why::too_large, QStringLiteral("capacity")));
    vessel.capacity = kilograms(120);
    must(save_vessel(bench.book(), vessel, on_day(0)));
    EXPECT_TRUE(refused(save_vessel(bench.book(), vessel, on_day(0)), Why::name_taken, QStringLiteral("name")));
    vessel = {};
    vessel.is_tank = false;
    vessel.name = QStringLiteral("bin 3");
    EXPECT_TRUE(refused(save_vessel(bench.book(), vessel, on_day(0)), Why::missing, QStringLiteral("strips_held")));
    vessel.strips_held = 480;
    vessel.flood = maths::Mass{};
    EXPECT_TRUE(refused(save_vessel(bench.book(), vessel, on_day(0)), Why::not_positive, QStringLiteral("flood")));
    vessel.flood.reset(); // not measured yet
    EXPECT_TRUE(save_vessel(bench.book(), vessel, on_day(0)).has_value());
}

TEST(Deliveries, acid_has_a_form_and_an_assay_which_is_kept_as_dihydrate) {
    Bench bench;
    LotEntry lot = acid();
    lot.acid_form = FormOfAcid::anhydrous;
    const LotId id = must(save_lot(bench.book(), lot, on_day(0)));
    const LotLine line = lots(bench.book(), first_day).at(0);
    EXPECT_EQ(line.entry.id, id);
    EXPECT_EQ(line.entry.assay, percent(99.6)); // as its label says
    EXPECT_NEAR(maths::as_number(line.assay_as_dihydrate), 0.996 * 126.064 / 90.034, 1e-6);
    lot.name = QStringLiteral("other");
    lot.acid_form.reset();
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::missing, QStringLiteral("acid_form")));
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay.reset();
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::missing, QStringLiteral("assay")));
    lot.assay = percent(100.1);
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::too_large, QStringLiteral("assay")));
    lot.assay = maths::Fraction{};
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(0)), Why::not_positive, QStringLiteral("assay")));
}

TEST(Deliveries, amounts_days_and_dry_weights_make_sense) {
    Bench bench;
    const auto with = [&](auto change) {
        LotEntry lot = acid();
        change(lot);
        return save_lot(bench.book(), lot, on_day(0));
    };
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.name = QString(); }), Why::missing, QStringLiteral("name")));
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.amount.reset(); }), Why::missing, QStringLiteral("amount")));
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.amount = 0; }), Why::not_positive, QStringLiteral("amount")));
    EXPECT_TRUE(
        refused(with([](LotEntry& l) { l.amount = kilograms(1e6).count; }), Why::too_large, QStringLiteral("amount")));
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.container_amount = -1; }), Why::not_positive,
                        QStringLiteral("container_amount")));
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.received_on = maths::days_after(first_day, 1); }), Why::in_the_future,
                        QStringLiteral("received_on")));
    EXPECT_TRUE(refused(with([](LotEntry& l) { l.cost = maths::Money{-1}; }), Why::too_small, QStringLiteral("cost")));
    EXPECT_TRUE(asked(with([](LotEntry& l) { l.best_before = maths::days_after(first_day, -1); }), Why::lot_past_date));
    const auto strips = [](LotEntry& l) {
        l.material = MaterialKind::strips;
        l.amount = 1000;
    };
    EXPECT_TRUE(refused(with(strips), Why::missing, QStringLiteral("strip_kind")));
    EXPECT_TRUE(refused(with([&](LotEntry& l) {
                            strips(l);
                            l.strip_kind = bench.strip_kind;
                            l.dry = grams(40); // heavier than the soaked strip
                        }),
                        Why::too_large, QStringLiteral("dry")));
}

TEST(Deliveries, are_put_right_with_a_reason_and_never_below_what_is_gone) {
    Bench bench;
    bench.mixed_batch();
    LotEntry lot;
    for (const LotLine& line : lots(bench.book(), first_day))
        if (line.entry.id == bench.acid)
            lot = line.entry;
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, because(QStringLiteral("x"), 1)), Why::nothing_changed));
    lot.amount = kilograms(90).count;
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, on_day(1)), Why::reason_missing, QStringLiteral("reason")));
    must(save_lot(bench.book(), lot, because(QStringLiteral("one sack less came"), 1)));
    lot.amount = kilograms(24).count;
    const auto outcome = save_lot(bench.book(), lot, because(QStringLiteral("x"), 1));
    EXPECT_TRUE(refused(outcome, Why::too_small, QStringLiteral("amount")));
    EXPECT_EQ(outcome.error().facts, QStringList{QStringLiteral("m:25000000")});
    lot.material = MaterialKind::glycerine;
    EXPECT_TRUE(refused(save_lot(bench.book(), lot, because(QStringLiteral("x"), 1)), Why::lot_wrong_material,
                        QStringLiteral("material")));
}

TEST(Deliveries, are_counted_anew_and_finished) {
    Bench bench;
    EXPECT_TRUE(refused(recount_lot(bench.book(), bench.bags, 480, QString(), on_day(0)), Why::reason_missing,
                        QStringLiteral("reason")));
    EXPECT_TRUE(refused(recount_lot(bench.book(), bench.bags, -1, QStringLiteral("x"), on_day(0)), Why::too_small,
                        QStringLiteral("left")));
    EXPECT_TRUE(
        refused(recount_lot(bench.book(), bench.bags, 500, QStringLiteral("x"), on_day(0)), Why::nothing_changed));
    must(recount_lot(bench.book(), bench.bags, 480, QStringLiteral("mice"), on_day(0)));
    must(finish_lot(bench.book(), bench.bags, on_day(0)));
    EXPECT_TRUE(refused(finish_lot(bench.book(), bench.bags, on_day(0)), Why::nothing_changed));
    EXPECT_TRUE(refused(finish_lot(bench.book(), LotId{99}, on_day(0)), Why::not_found));
    EXPECT_EQ(lots(bench.book(), first_day).size(), 4U);
    const auto open = lots(bench.book(), first_day, true);
    EXPECT_EQ(open.size(), 3U);
    for (const LotLine& line : lots(bench.book(), first_day))
        EXPECT_EQ(line.left == 480 && line.finished, line.entry.id == bench.bags);
}

} // namespace soakbook::tests
