// SPDX-License-Identifier: GPL-3.0-or-later
// Every step at both window sizes, light and dark, at 100 and 150 % text: no text is cut off. With SOAKBOOK_PICTURES set to
// a folder, each is saved there to be looked at.
#include "tests/ui/shed/stage.h"

#include "core/work/figures.h"
#include "core/work/shed_view.h"
#include "tests/work/priced.h"
#include "ui/parts/theme.h"

#include <QApplication>
#include <QDir>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

struct Wear {
    const char* name;
    ui::Look look;
    int percent;
    QSize size; ///< of the page, without navigation and head
};

const Wear wears[] = {
    {"light", ui::Look::light, 100, {1292, 810}},
    {"dark", ui::Look::dark, 100, {1292, 810}},
    {"small", ui::Look::light, 100, {1132, 630}},
    {"large_text", ui::Look::light, 150, {1218, 800}},
};

class ShedPictures : public testing::TestWithParam<Wear> {
protected:
    ShedPictures() { ui::apply_theme(*qobject_cast<QApplication*>(qApp), GetParam().look, GetParam().percent); }
    ~ShedPictures() override { ui::apply_theme(*qobject_cast<QApplication*>(qApp), ui::Look::light, 100); }

    void look(Stage& stage, const char* name) {
        stage.window().resize(GetParam().size);
        stage.settle();
        const QStringList clipped = clipped_texts(&stage.window());
        EXPECT_TRUE(clipped.isEmpty()) << GetParam().name << " " << name << ": " << clipped.join(QStringLiteral(" | ")).toStdString();
        const QString folder = qEnvironmentVariable("SOAKBOOK_PICTURES");
        if (!folder.isEmpty()) {
            QDir().mkpath(folder);
            stage.window().grab().save(QStringLiteral("%1/%2_%3.png").arg(folder, QLatin1String(name), QLatin1String(GetParam().name)));
        }
    }
    static void open(Stage& stage, const char* task, work::BatchId batch) {
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QLatin1String(task), {batch.value}, {}});
        stage.settle();
    }

    Bench bench;
};

} // namespace

TEST_P(ShedPictures, no_text_is_cut_off_before_and_while_a_batch_is_mixed) {
    Stage stage(bench);
    look(stage, "00_empty");
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    stage.type(QStringLiteral("62.5"));
    look(stage, "01_plan");
    stage.enter();
    look(stage, "02_weigh_in");
    const auto all = work::batches(bench.book(), first_day);
    ASSERT_EQ(all.size(), 1U);
    stage.go_to(QStringLiteral("weigh_in_2"));
    stage.type(QStringLiteral("32.5"));
    look(stage, "03_weigh_in_off");
}

TEST_P(ShedPictures, no_text_is_cut_off_while_it_is_warmed_and_soaked) {
    const work::BatchId batch = bench.mixed_batch();
    Stage stage(bench, 1, 8);
    open(stage, "reading", batch);
    look(stage, "04_heat_empty");
    const double probes[] = {24, 38.5, 49, 55.5, 61};
    for (int i = 0; i < 5; ++i) {
        work::ReadingEntry reading;
        reading.batch = batch;
        reading.probe = maths::celsius(probes[i]);
        reading.dial = maths::celsius(60);
        reading.room = maths::celsius(19);
        reading.jacket_seen = true;
        must(work::log_reading(bench.book(), reading, on_day(1, i + 3)));
    }
    stage.settle();
    open(stage, "reading", batch);
    look(stage, "05_heat_over_ceiling");
    work::ReadingEntry cooler;
    cooler.batch = batch;
    cooler.probe = maths::celsius(56);
    cooler.dial = maths::celsius(58);
    must(work::log_reading(bench.book(), cooler, on_day(1, 8)));
    work::StirEntry stir;
    stir.batch = batch;
    stir.minutes = 5;
    stir.clear = false;
    stage.set_clock(1, 10);
    must(work::log_stir(bench.book(), stir, on_day(1, 9)));
    open(stage, "stir", batch);
    look(stage, "06_heat_stir");
    stir.clear = true;
    stir.outlet_poured_back = true;
    must(work::log_stir(bench.book(), stir, on_day(1, 10)));
    open(stage, "show", batch);
    look(stage, "07_soak");
    const work::BatchId soaking = bench.soaked_batch(1);
    stage.set_clock(3, 5);
    open(stage, "weigh", soaking);
    look(stage, "08_weigh_empty");
    const double weights[] = {180, 245, 292, 318};
    for (int i = 0; i < 4; ++i) {
        for (const work::SoakId soak : bench.soaks_of(soaking)) {
            work::WeighEntry weighing;
            weighing.soak = soak;
            weighing.strips = 10;
            weighing.total = maths::grams(weights[i] + (soak == bench.soaks_of(soaking)[0] ? 0 : 6));
            weighing.drip_minutes = 20;
            must(work::log_weighing(bench.book(), weighing, on_day(2, 12 + 3 * i)));
        }
    }
    open(stage, "weigh", soaking);
    stage.type(QStringLiteral("331"));
    look(stage, "09_weigh");
}

TEST_P(ShedPictures, no_text_is_cut_off_while_strips_are_bagged_and_leftovers_poured) {
    const work::BatchId batch = bench.weighed_batch();
    Stage stage(bench, 2, 12);
    open(stage, "bag", batch);
    look(stage, "10_bag");
    work::BagEntry some;
    some.batch = batch;
    some.bags = 5;
    some.net = maths::kilograms(2.75);
    must(work::fill_bags(bench.book(), some, on_day(2, 12)));
    must(work::reserve_labels(bench.book(), batch, 7, on_day(2, 12)));
    open(stage, "fill_reserved", batch);
    look(stage, "11_fill_labelled");
    open(stage, "leftovers", batch);
    stage.type(QStringLiteral("20"));
    look(stage, "12_pour");
    const work::BatchId done = bench.bagged_batch(3);
    work::PourEntry pour;
    pour.batch = done;
    pour.pails = {maths::kilograms(20), maths::kilograms(19.8)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    must(work::pour_leftovers(bench.book(), pour, on_day(5, 16)));
    must(work::log_loss(bench.book(), done, work::NamedLoss::drips, maths::kilograms(0.2), {}, on_day(5, 17)));
    stage.set_clock(5, 18);
    open(stage, "leftovers", done);
    look(stage, "13_close");
    must(work::close_batch(bench.book(), done, on_day(5, 18)));
    open(stage, "show", done);
    look(stage, "14_closed");
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    stage.type(QStringLiteral("60"));
    look(stage, "15_plan_with_pails");
}

TEST_P(ShedPictures, no_text_is_cut_off_in_what_the_pages_answer) {
    give_costs(bench);
    must(work::set_figures(bench.book(),
                           {{work::Figure::heat_low, 5000, QStringLiteral("ours")},
                            {work::Figure::heat_high, 5600, QStringLiteral("ours")},
                            {work::Figure::room_low, 2200, QStringLiteral("ours")},
                            {work::Figure::unexplained_limit, 20'000, QStringLiteral("ours")}},
                           on_day(-9)));
    const work::BatchId first = bench.bagged_batch();
    work::PourEntry pour;
    pour.batch = first;
    pour.pails = {maths::kilograms(20), maths::kilograms(19.9)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    must(work::pour_leftovers(bench.book(), pour, on_day(2, 16)));
    must(work::close_batch(bench.book(), first, on_day(2, 18), {work::Why::loss_unexplained}));
    Stage stage(bench, 4, 8);
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    stage.type(QStringLiteral("30"));
    stage.go_to(QStringLiteral("suggest_pails"));
    stage.press(Qt::Key_Space);
    look(stage, "16_pails_suggested");
    stage.press(Qt::Key_F3);
    look(stage, "17_pails_suggested_how");
    const work::BatchId second = bench.mixed_batch(4);
    stage.set_clock(5, 8);
    for (const auto& [dial, probe] : {std::pair{55.0, 52.0}, {61.0, 55.5}}) {
        work::ReadingEntry reading;
        reading.batch = second;
        reading.dial = maths::celsius(dial);
        reading.probe = maths::celsius(probe);
        must(work::log_reading(bench.book(), reading, on_day(5, 6)));
    }
    open(stage, "reading", second);
    look(stage, "18_dial");
    const work::BatchId third = bench.soaked_batch(8);
    const work::SoakId soak = bench.soaks_of(third)[0];
    for (const auto& [hours, grams] : {std::pair{2, 177.4}, {5, 247.2}, {8, 291.7}}) {
        work::WeighEntry sample;
        sample.soak = soak;
        sample.strips = 10;
        sample.total = maths::grams(grams);
        must(work::log_weighing(bench.book(), sample, on_day(9, 10 + hours)));
    }
    stage.set_clock(9, 19);
    open(stage, "weigh", third);
    look(stage, "19_hour");
    open(stage, "bag", third);
    stage.go_to(QStringLiteral("bag_net"));
    stage.type(QStringLiteral("2.7"));
    look(stage, "20_counted");
    open(stage, "leftovers", first);
    look(stage, "21_cost");
}

INSTANTIATE_TEST_SUITE_P(worn, ShedPictures, testing::ValuesIn(wears),
                         [](const testing::TestParamInfo<Wear>& worn) { return std::string(worn.param.name); });

} // namespace soakbook::tests
