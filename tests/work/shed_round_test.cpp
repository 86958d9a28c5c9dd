// SPDX-License-Identifier: GPL-3.0-or-later
// The whole course of a batch with the trade's check values, and every piece of it taken back and done again.
#include "bench.h"
#include "core/work/figures.h"
#include "core/work/undo.h"

#include <QProcess>

#include <functional>

namespace soakbook::tests {

using namespace work;
using maths::celsius;
using maths::grams;
using maths::kilograms;

namespace {

/// Every record of the file as text, read by another program.
QByteArray records_of(const Bench& bench) {
    QProcess sqlite;
    QByteArray script;
    for (const char* table :
         {"operation", "person", "figure", "strip_kind", "material_lot", "lot_change", "vessel", "batch", "batch_input",
          "reading", "stir", "soak", "weigh_in", "weigh_single", "bag", "bag_change", "pour", "pail", "batch_loss"})
        script += QByteArray("SELECT '") + table + "'; SELECT * FROM " + table + " ORDER BY id;\n";
    sqlite.start(QStringLiteral("sqlite3"), {QStringLiteral("-readonly"), QStringLiteral("-quote"), bench.path()});
    sqlite.write(script);
    sqlite.closeWriteChannel();
    if (!sqlite.waitForFinished() || sqlite.exitCode() != 0)
        throw std::runtime_error("sqlite3 did not read the file: " + sqlite.readAllStandardError().toStdString());
    return sqlite.readAllStandardOutput();
}

/// Does one piece of work, takes it back, does it again: the records are as before, and as after.
void there_and_back(Bench& bench, const char* key, const std::function<void()>& work) {
    SCOPED_TRACE(key);
    const QByteArray before = records_of(bench);
    work();
    const QByteArray after = records_of(bench);
    EXPECT_NE(before, after);
    ASSERT_TRUE(next_undo(bench.book()));
    EXPECT_EQ(next_undo(bench.book())->key, QLatin1String(key));
    must(undo(bench.book(), on_day(20)));
    EXPECT_EQ(records_of(bench), before);
    EXPECT_EQ(next_redo(bench.book())->key, QLatin1String(key));
    must(redo(bench.book(), on_day(20)));
    EXPECT_EQ(records_of(bench), after);
}

} // namespace

TEST(ShedRound, from_an_empty_tank_to_a_closed_batch) {
    Bench bench;
    must(set_figures(
        bench.book(),
        {{Figure::rest_days, 7, {}}, {Figure::sample_strips, 10, {}}, {Figure::unexplained_limit, 20'000, {}}},
        on_day(0)));
    const BatchId batch = bench.clear_batch();
    SoakEntry soak;
    soak.batch = batch;
    soak.lot = bench.strips;
    soak.room = celsius(22);
    soak.bins = {{bench.bin, std::nullopt, std::nullopt}, {bench.second_bin, std::nullopt, std::nullopt}};
    EXPECT_EQ(must(reckon_soak(bench.book(), soak)).most_left, kilograms(40.42));
    must(start_soak(bench.book(), soak, on_day(1, 10)));
    for (const SoakId id : bench.soaks_of(batch)) {
        WeighEntry weighing;
        weighing.soak = id;
        weighing.total = grams(339);
        const WeighFigures figures = must(log_weighing(bench.book(), weighing, on_day(2, 10)));
        EXPECT_EQ(figures.verdict, WeighVerdict::on_target);
        EXPECT_EQ(figures.acid_per_strip, grams(9.16));
        must(end_soak(bench.book(), id, std::nullopt, on_day(2, 11)));
    }
    BagEntry bags;
    bags.batch = batch;
    bags.bags = 12;
    bags.bag_lot = bench.bags;
    must(fill_bags(bench.book(), bags, on_day(2, 14)));
    PourEntry pour;
    pour.batch = batch;
    pour.pails = {kilograms(20), kilograms(19.6)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    must(pour_leftovers(bench.book(), pour, on_day(2, 15)));
    must(log_loss(bench.book(), batch, NamedLoss::drips, kilograms(0.5), {}, on_day(2, 16)));
    const Balance account = must(close_batch(bench.book(), batch, on_day(2, 17)));
    EXPECT_EQ(account.unexplained, kilograms(62.5) - grams(22.9 * 960) - kilograms(39.6) - kilograms(0.5));
    EXPECT_FALSE(account.beyond_limit);

    bench.reopen(); // all of it stands in the file
    const BatchView view = bench.view(batch);
    EXPECT_EQ(view.line.state, BatchState::closed);
    EXPECT_EQ(view.line.bags, 12);
    EXPECT_EQ(view.line.strips, 960);
    EXPECT_EQ(batches(bench.book(), maths::days_after(first_day, 8)).at(0).resting, 12);
    EXPECT_EQ(batches(bench.book(), maths::days_after(first_day, 9)).at(0).resting, 0);
    EXPECT_FALSE(next_undo(bench.book())); // undo is of this session only
}

TEST(ShedRound, every_piece_of_work_is_taken_back_and_done_again) {
    Bench bench;
    const auto why = because(QStringLiteral("looked again"), 19);
    there_and_back(bench, "person", [&] {
        must(save_person(bench.book(), {{}, QStringLiteral("Cleo"), true}, on_day(0)));
    });
    there_and_back(bench, "set_up", [&] {
        must(set_operation(bench.book(), {QStringLiteral("Other"), {}, {}}, on_day(0)));
    });
    there_and_back(bench, "figure", [&] { must(set_figures(bench.book(), {{Figure::rest_days, 7, {}}}, on_day(0))); });
    there_and_back(bench, "lot_recounted",
                   [&] { must(recount_lot(bench.book(), bench.bags, 490, QStringLiteral("counted"), on_day(0))); });
    BatchId batch;
    there_and_back(bench, "mix_planned",
                   [&] { batch = must(plan_mix(bench.book(), bench.plan(), on_day(0, 17))).batch; });
    there_and_back(bench, "mix_weighed", [&] {
        WeighedMix weighed{batch, {}, std::nullopt, true};
        for (const InputLine& input : bench.inputs_of(batch))
            weighed.masses.push_back({input.id, input.planned});
        must(weigh_mix(bench.book(), weighed, on_day(0, 18)));
    });
    there_and_back(bench, "mix_corrected", [&] {
        must(add_to_mix(bench.book(), {batch, bench.glycerine, kilograms(0.01)}, on_day(0, 19)));
    });
    there_and_back(bench, "reading", [&] {
        ReadingEntry reading;
        reading.batch = batch;
        reading.probe = celsius(52);
        must(log_reading(bench.book(), reading, on_day(1, 8)));
    });
    there_and_back(bench, "stir", [&] {
        StirEntry stir;
        stir.batch = batch;
        stir.clear = true;
        stir.outlet_poured_back = true;
        must(log_stir(bench.book(), stir, on_day(1, 9)));
    });
    there_and_back(bench, "soak", [&] {
        SoakEntry soak;
        soak.batch = batch;
        soak.lot = bench.strips;
        soak.bins = {{bench.bin, 480, std::nullopt}};
        must(start_soak(bench.book(), soak, on_day(1, 10)));
    });
    const SoakId soak = bench.soaks_of(batch).at(0);
    there_and_back(bench, "weighing", [&] {
        WeighEntry weighing;
        weighing.soak = soak;
        weighing.singles = {grams(33.9), grams(34.1), grams(33.8)};
        must(log_weighing(bench.book(), weighing, on_day(2, 10)));
    });
    there_and_back(bench, "soak_ended", [&] { must(end_soak(bench.book(), soak, std::nullopt, on_day(2, 11))); });
    const Confirmed yes{Why::light_strips};
    there_and_back(bench, "bags_filled", [&] {
        BagEntry bags;
        bags.batch = batch;
        bags.bags = 5;
        must(fill_bags(bench.book(), bags, on_day(2, 14), yes));
    });
    there_and_back(bench, "labels_reserved", [&] { must(reserve_labels(bench.book(), batch, 1, on_day(2, 14))); });
    there_and_back(bench, "label_filled", [&] {
        FillReserved fill;
        fill.batch = batch;
        fill.rows = {{bench.bags_of(batch).back(), 60, std::nullopt}};
        must(fill_reserved(bench.book(), fill, on_day(2, 15), yes));
    });
    std::vector<PailId> pails;
    there_and_back(bench, "poured", [&] {
        PourEntry pour;
        pour.batch = batch;
        pour.pails = {kilograms(20), kilograms(20)};
        pour.warm_and_clear = true;
        pour.scraped = true;
        pails = must(pour_leftovers(bench.book(), pour, on_day(2, 15))).pails;
    });
    there_and_back(bench, "loss",
                   [&] { must(log_loss(bench.book(), batch, NamedLoss::drips, kilograms(1), {}, on_day(2, 16))); });
    there_and_back(bench, "batch_closed", [&] { must(close_batch(bench.book(), batch, on_day(2, 17))); });
    there_and_back(bench, "corrected",
                   [&] { must(correct_weighed(bench.book(), bench.inputs_of(batch).at(0).id, kilograms(24.9), why)); });
    there_and_back(bench, "corrected", [&] { must(correct_pail(bench.book(), pails[0], kilograms(19), why)); });
    there_and_back(bench, "made_void", [&] { must(void_bag(bench.book(), bench.bags_of(batch).at(0), why)); });
    there_and_back(bench, "batch_reopened", [&] { must(reopen_batch(bench.book(), batch, why)); });
    there_and_back(bench, "pails_moved",
                   [&] { must(move_pails(bench.book(), pails, QStringLiteral("cellar"), on_day(3))); });
    there_and_back(bench, "pail_used_in_part",
                   [&] { must(pail_used_in_part(bench.book(), pails[0], std::nullopt, on_day(3))); });
    there_and_back(bench, "pail_discarded", [&] {
        must(discard_pail(bench.book(), pails[1], std::nullopt, QStringLiteral("leaked"), on_day(3)));
    });
}

TEST(ShedRound, codes_that_were_undone_are_not_given_again) {
    Bench bench;
    const QString first = must(plan_mix(bench.book(), bench.plan(), on_day(0))).code;
    must(undo(bench.book(), on_day(0)));
    const QString second = must(plan_mix(bench.book(), bench.plan(), on_day(0))).code;
    EXPECT_NE(first, second);
}

} // namespace soakbook::tests
