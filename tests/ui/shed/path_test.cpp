// SPDX-License-Identifier: GPL-3.0-or-later
// One batch from "New batch" to its printed labels, by keys alone, with the trade's check values (common practice, no
// source): 25 kg of acid and 37.5 kg of glycerine are 62.5 kg at 40 %; strips of 11 g dry and 34 g wet hold 9.2 g of acid.
#include "tests/ui/shed/stage.h"

#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "ui/print/ask_file.h"

#include <QApplication>
#include <QDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

work::BatchView only_batch(Bench& bench) {
    const auto all = work::batches(bench.book(), first_day);
    EXPECT_EQ(all.size(), 1U);
    return *work::batch_view(bench.book(), all.at(0).id, first_day);
}

class ShedPath : public testing::Test {
protected:
    void plan() {
        stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
        stage.settle();
        EXPECT_EQ(stage.here(), QStringLiteral("mix_amount"));
        stage.type(QStringLiteral("62.5"));
        EXPECT_THAT(stage.words().toStdString(), HasSubstr("25"));
        stage.enter();
    }
    void weigh_in() {
        stage.set_clock(0, 18);
        EXPECT_EQ(stage.here(), QStringLiteral("weigh_in_1"));
        stage.enter();
    }
    void heat() {
        stage.set_clock(1, 8);
        EXPECT_EQ(stage.here(), QStringLiteral("reading_probe"));
        stage.type(QStringLiteral("52"));
        stage.press(Qt::Key_Return);
        stage.type(QStringLiteral("55"));
        stage.enter();
        stage.set_clock(1, 9);
        EXPECT_EQ(stage.here(), QStringLiteral("stir_minutes"));
        stage.type(QStringLiteral("5"));
        stage.press(Qt::Key_Return);
        stage.press(Qt::Key_Space); // clear: yes
        stage.press(Qt::Key_Return);
        stage.press(Qt::Key_Space); // outlet poured back: yes
        stage.enter();
    }
    void soak() {
        stage.set_clock(1, 10);
        EXPECT_EQ(stage.here(), QStringLiteral("soak_strips_1"));
        stage.enter();
    }
    void weigh_bin() {
        EXPECT_EQ(stage.here(), QStringLiteral("weigh_total"));
        stage.type(QStringLiteral("339"));
        stage.enter();
        EXPECT_EQ(stage.here(), QStringLiteral("end_soak"));
        stage.press(Qt::Key_Space);
    }
    void weigh() {
        stage.set_clock(2, 10);
        stage.go_to(QStringLiteral("weigh_strips"));
        stage.type(QStringLiteral("10"));
        stage.press(Qt::Key_Return);
        weigh_bin();
        weigh_bin();
    }

    Bench bench;
    Stage stage{bench};
};

} // namespace

TEST_F(ShedPath, a_batch_goes_from_mix_to_printed_labels_by_keys_alone) {
    QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("labels.pdf"));
    ui::let_answer([pdf](const ui::FileQuestion&) { return pdf; });

    plan();
    work::BatchView batch = only_batch(bench);
    EXPECT_EQ(batch.planned_total, maths::kilograms(62.5));
    EXPECT_FALSE(batch.mixed);
    weigh_in();
    batch = only_batch(bench);
    ASSERT_TRUE(batch.mixed);
    EXPECT_EQ(*batch.strength, maths::percent(40));
    heat();
    ASSERT_TRUE(only_batch(bench).clear_at);
    soak();
    EXPECT_EQ(only_batch(bench).strips_soaked, 960);
    weigh();
    batch = only_batch(bench);
    for (const work::SoakLine& line : batch.soaks) {
        ASSERT_EQ(line.weighings.size(), 1U);
        EXPECT_EQ(line.weighings[0].figures.verdict, work::WeighVerdict::on_target);
        EXPECT_EQ(line.weighings[0].figures.acid_per_strip, maths::grams(9.16));
        EXPECT_TRUE(line.ended);
    }
    stage.set_clock(2, 14);
    EXPECT_EQ(stage.here(), QStringLiteral("bag_count"));
    EXPECT_EQ(stage.text_of(QStringLiteral("bag_count")), QStringLiteral("12"));
    EXPECT_EQ(stage.text_of(QStringLiteral("bag_strips")), QStringLiteral("80"));
    stage.enter();
    batch = only_batch(bench);
    EXPECT_EQ(batch.strips_bagged, 960);
    ASSERT_EQ(batch.bags.size(), 12U);
    EXPECT_EQ(*batch.bags[0].use_by, maths::day(2027, 8, 5));
    EXPECT_NE(batch.bags[0].label, QStringLiteral("printed"));

    auto* dialog = stage.find<QDialog>(QStringLiteral("label_dialog"));
    ASSERT_NE(dialog, nullptr);
    for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("PDF"))) {
            button->setFocus();
            QTest::keyClick(button, Qt::Key_Space);
        }
    }
    stage.settle();
    EXPECT_GT(QFileInfo(pdf).size(), 1000);
    for (const work::BatchBag& bag : only_batch(bench).bags)
        EXPECT_EQ(bag.label, QStringLiteral("printed"));
    ui::let_answer({});
    RecordProperty("key_presses_from_new_batch_to_labels", stage.keys());
    EXPECT_LE(stage.keys(), 50);
}

TEST_F(ShedPath, after_each_entry_the_keyboard_stands_in_the_first_field_of_what_comes_next) {
    plan();
    EXPECT_EQ(stage.here(), QStringLiteral("weigh_in_1"));
    weigh_in();
    EXPECT_EQ(stage.here(), QStringLiteral("reading_probe"));
    heat();
    EXPECT_EQ(stage.here(), QStringLiteral("soak_strips_1"));
    soak();
    // How many strips lie on the scale was never said, so it is asked first.
    EXPECT_EQ(stage.here(), QStringLiteral("weigh_strips"));
    weigh();
    EXPECT_EQ(stage.here(), QStringLiteral("bag_count"));
}

TEST_F(ShedPath, leftovers_go_into_pails_and_the_batch_is_closed) {
    const work::BatchId batch = bench.bagged_batch();
    stage.set_clock(2, 16);
    stage.place().refresh();
    stage.place().open({ui::PlaceName::shed, QStringLiteral("leftovers"), {batch.value}, {}});
    stage.settle();
    EXPECT_EQ(stage.here(), QStringLiteral("pour_pail_1"));
    stage.type(QStringLiteral("20"));
    stage.press(Qt::Key_Return);
    EXPECT_EQ(stage.here(), QStringLiteral("pour_pail_2"));
    stage.type(QStringLiteral("20.42"));
    stage.press(Qt::Key_Return);
    EXPECT_EQ(stage.here(), QStringLiteral("pour_pail_3"));
    stage.press(Qt::Key_Return);
    EXPECT_EQ(stage.here(), QStringLiteral("pour_clear"));
    stage.press(Qt::Key_Space);
    stage.go_to(QStringLiteral("pour_scraped"));
    stage.press(Qt::Key_Space);
    stage.enter();
    work::BatchView view = *work::batch_view(bench.book(), batch, first_day);
    ASSERT_EQ(view.pails.size(), 2U);
    EXPECT_EQ(view.pails[1].mass, maths::kilograms(20.42));
    EXPECT_EQ(*view.pails[0].strength, maths::percent(40));
    if (auto* dialog = stage.find<QDialog>(QStringLiteral("label_dialog")))
        dialog->reject();
    stage.settle();
    QApplication::setActiveWindow(&stage.window());
    stage.go_to(QStringLiteral("close_batch"));
    stage.press(Qt::Key_Return);
    view = *work::batch_view(bench.book(), batch, first_day);
    EXPECT_TRUE(view.closed) << stage.words().toStdString();
}

} // namespace soakbook::tests
