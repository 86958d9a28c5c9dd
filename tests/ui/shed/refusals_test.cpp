// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be right is refused beside its field, and nothing typed is lost; what is odd is asked once.
#include "tests/ui/shed/stage.h"

#include "core/work/shed_view.h"
#include "ui/parts/field.h"
#include "ui/parts/form.h"

#include <QApplication>
#include <QCheckBox>
#include <QDialog>
#include <QLineEdit>
#include <QTest>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;
constexpr int until_seen = 350;

class ShedRefusals : public testing::Test {
protected:
    void open(const char* task, work::BatchId batch) {
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QLatin1String(task), {batch.value}, {}});
        stage.settle();
    }
    std::string beneath(const char* field) { return stage.find<ui::Field>(QLatin1String(field))->line_text().toStdString(); }
    work::BatchView view(work::BatchId batch) { return *work::batch_view(bench.book(), batch, first_day); }

    Bench bench;
    Stage stage{bench};
};

} // namespace

TEST_F(ShedRefusals, more_than_the_tank_holds_is_refused_beside_the_amount_and_stays_typed) {
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    stage.type(QStringLiteral("81"));
    stage.enter();
    EXPECT_THAT(beneath("mix_amount"), HasSubstr("80"));
    EXPECT_EQ(stage.text_of(QStringLiteral("mix_amount")), QStringLiteral("81"));
    EXPECT_EQ(stage.here(), QStringLiteral("mix_amount"));
    EXPECT_TRUE(work::batches(bench.book(), first_day).empty());
}

TEST_F(ShedRefusals, every_form_keeps_what_cannot_be_read_and_says_how_to_write_it) {
    const QStringList bad{QStringLiteral("abc"), QStringLiteral("-5"), QStringLiteral("1e9"), QString(10000, QLatin1Char('7')),
                          QStringLiteral("\u0661\u202e5"), QStringLiteral("999999999")};
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    for (const QString& text : bad) {
        stage.go_to(QStringLiteral("mix_amount"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
        QApplication::focusWidget()->setProperty("text", text);
        Q_EMIT static_cast<QLineEdit*>(QApplication::focusWidget())->textEdited(text);
        stage.enter();
        EXPECT_FALSE(beneath("mix_amount").empty()) << text.left(20).toStdString();
        EXPECT_EQ(stage.text_of(QStringLiteral("mix_amount")), text.left(32767));
    }
    EXPECT_TRUE(work::batches(bench.book(), first_day).empty());
}

TEST_F(ShedRefusals, comma_and_point_mean_the_same) {
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    stage.type(QStringLiteral("62,5"));
    stage.enter();
    ASSERT_EQ(work::batches(bench.book(), first_day).size(), 1U);
    EXPECT_EQ(view(work::batches(bench.book(), first_day)[0].id).planned_total, maths::kilograms(62.5));
}

TEST_F(ShedRefusals, a_strength_that_came_out_wrong_is_asked_once_and_then_put_right) {
    const work::BatchId batch = work::plan_mix(bench.book(), bench.plan(), on_day(0))->batch;
    stage.set_clock(0, 18);
    open("weigh_mix", batch);
    // The line of the glycerine: 5 kg short.
    const bool acid_first = view(batch).inputs[0].is_acid;
    stage.go_to(acid_first ? QStringLiteral("weigh_in_2") : QStringLiteral("weigh_in_1"));
    stage.type(QStringLiteral("32.5"));
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("Too strong"));
    stage.enter();
    EXPECT_FALSE(view(batch).mixed) << "asked first";
    QTest::qWait(until_seen);
    stage.enter();
    ASSERT_TRUE(view(batch).mixed);
    // What brings it right is filled in.
    EXPECT_EQ(stage.here(), QStringLiteral("add_mass"));
    EXPECT_EQ(stage.text_of(QStringLiteral("add_mass")), QStringLiteral("5"));
    stage.enter();
    EXPECT_EQ(*view(batch).strength, maths::percent(40));
    EXPECT_EQ(stage.here(), QStringLiteral("reading_probe"));
}

TEST_F(ShedRefusals, a_reading_over_the_ceiling_warns_at_once_and_goes_when_the_tank_is_cooler) {
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    open("reading", batch);
    stage.type(QStringLiteral("61"));
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("Never cool the tank by adding water"));
    stage.enter();
    ASSERT_EQ(view(batch).readings.size(), 1U);
    QWidget* warning = stage.widget(QStringLiteral("over_ceiling"));
    ASSERT_NE(warning, nullptr);
    EXPECT_THAT(stage.words(warning).toStdString(), HasSubstr("Heat off now"));
    EXPECT_EQ(stage.here(), QStringLiteral("reading_probe")) << "read again";
    stage.set_clock(1, 8, 20);
    stage.type(QStringLiteral("58"));
    stage.enter();
    EXPECT_FALSE(warning->isVisible());
}

TEST_F(ShedRefusals, clear_without_a_reading_is_refused) {
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    open("stir", batch);
    EXPECT_EQ(stage.here(), QStringLiteral("stir_minutes")) << stage.words().toStdString();
    stage.type(QStringLiteral("5"));
    stage.go_to(QStringLiteral("stir_clear"));
    stage.press(Qt::Key_Space);
    stage.go_to(QStringLiteral("stir_outlet"));
    stage.press(Qt::Key_Space);
    stage.enter();
    EXPECT_FALSE(view(batch).clear_at);
    EXPECT_EQ(stage.text_of(QStringLiteral("stir_minutes")), QStringLiteral("5"));
}

TEST_F(ShedRefusals, strips_lighter_than_dry_ones_are_refused_beside_the_weight) {
    const work::BatchId batch = bench.soaked_batch();
    stage.set_clock(2, 10);
    open("weigh", batch);
    stage.go_to(QStringLiteral("weigh_strips"));
    stage.type(QStringLiteral("10"));
    stage.press(Qt::Key_Return);
    stage.type(QStringLiteral("90"));
    stage.enter();
    EXPECT_FALSE(beneath("weigh_total").empty());
    EXPECT_EQ(stage.text_of(QStringLiteral("weigh_total")), QStringLiteral("90"));
    EXPECT_TRUE(view(batch).soaks[0].weighings.empty());
}

TEST_F(ShedRefusals, a_part_of_a_pail_cannot_be_asked_for_and_the_list_says_why) {
    const work::BatchId old = bench.bagged_batch();
    work::PourEntry pour;
    pour.batch = old;
    pour.pails = {maths::kilograms(20), maths::kilograms(10)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    const auto poured = must(work::pour_leftovers(bench.book(), pour, on_day(2, 16)));
    must(work::pail_used_in_part(bench.book(), poured.pails[1], std::nullopt, on_day(3)));
    stage.set_clock(4, 10);
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
    stage.settle();
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("acid settles"));
    auto* whole = stage.find<QCheckBox>(QStringLiteral("mix_pail_") + poured.codes[0]);
    auto* part = stage.find<QCheckBox>(QStringLiteral("mix_pail_") + poured.codes[1]);
    ASSERT_TRUE(whole != nullptr && part != nullptr);
    EXPECT_TRUE(whole->isEnabled());
    EXPECT_FALSE(part->isEnabled());
    stage.go_to(QStringLiteral("mix_amount"));
    stage.type(QStringLiteral("60"));
    stage.go_to(whole->objectName());
    stage.press(Qt::Key_Space);
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("From pails <b>20"));
    stage.enter();
    const work::BatchView made = view(work::batches(bench.book(), first_day)[0].id);
    EXPECT_EQ(made.planned_total, maths::kilograms(60));
    EXPECT_EQ(made.inputs.size(), 3U);
}

TEST_F(ShedRefusals, what_is_typed_stays_while_another_batch_is_looked_at) {
    const work::BatchId first = bench.mixed_batch();
    const work::BatchId second = work::plan_mix(bench.book(), bench.plan(), on_day(0, 19), {work::Why::tank_in_use})->batch;
    stage.set_clock(1, 8);
    open("reading", first);
    stage.type(QStringLiteral("51"));
    open("show", second);
    EXPECT_EQ(stage.here(), QStringLiteral("weigh_in_1"));
    open("show", first);
    EXPECT_EQ(stage.text_of(QStringLiteral("reading_probe")), QStringLiteral("51"));
}

TEST(ShedFromNothing, a_batch_is_started_from_an_empty_store_by_entering_the_deliveries_on_the_way) {
    Bench bench(SetUp::nothing);
    work::FirstSetUp first;
    first.operation.name = QStringLiteral("Bench apiary");
    first.person = QStringLiteral("Ada");
    first.kind.name = QStringLiteral("card 11 g");
    first.kind.dry = maths::grams(11);
    first.kind.target = maths::grams(34);
    first.kind.tolerance = maths::grams(0.5);
    first.kind.strips_per_bag = 80;
    first.tank.name = QStringLiteral("tank");
    first.tank.capacity = maths::kilograms(80);
    first.bin.is_tank = false;
    first.bin.name = QStringLiteral("bin 1");
    first.bin.strips_held = 480;
    must(work::first_set_up(bench.book(), first, on_day(-10)));
    Stage stage(bench);
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("No batch yet"));
    stage.place().take_focus();
    EXPECT_EQ(stage.here(), QStringLiteral("first_batch"));
    stage.press(Qt::Key_Space);
    stage.type(QStringLiteral("62.5"));
    const auto deliver = [&stage](const char* field, const char* name, const char* assay) {
        QWidget* button = stage.widget(QLatin1String(field))->findChild<QWidget*>(QStringLiteral("new_delivery"));
        button->setFocus();
        stage.press(Qt::Key_Space);
        QApplication::setActiveWindow(stage.dialog(QStringLiteral("lot_form")));
        stage.go_to(QStringLiteral("lot_name"));
        stage.type(QLatin1String(name));
        stage.press(Qt::Key_Return);
        stage.type(QStringLiteral("100"));
        stage.press(Qt::Key_Return);
        stage.type(QStringLiteral("25"));
        if (assay != nullptr) {
            stage.press(Qt::Key_Return);
            stage.type(QLatin1String(assay));
            stage.press(Qt::Key_Return);
            stage.press(Qt::Key_A); // as dihydrate
        }
        stage.enter();
        QApplication::setActiveWindow(&stage.window());
        stage.settle();
    };
    deliver("mix_acid_lot", "acid 7", "100");
    deliver("mix_glycerine_lot", "glycerine 3", nullptr);
    stage.go_to(QStringLiteral("mix_amount"));
    stage.enter();
    ASSERT_EQ(work::batches(bench.book(), first_day).size(), 1U) << stage.words().toStdString();
}

} // namespace soakbook::tests
