// SPDX-License-Identifier: GPL-3.0-or-later
// A wrong entry is put right with a reason; without one, or without a change, it is refused.
#include "tests/ui/shed/stage.h"

#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "ui/parts/field.h"
#include "ui/parts/record_table.h"

#include <QApplication>
#include <QDialog>
#include <QTableView>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class ShedCorrections : public testing::Test {
protected:
    void show(work::BatchId batch, const char* task) {
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QLatin1String(task), {batch.value}, {}});
        stage.settle();
    }
    /// Enter on the first row of the table of that kind; the dialog has the keyboard then.
    void open_first_row(const QString& table) {
        for (ui::RecordTable* found : stage.window().findChildren<ui::RecordTable*>()) {
            if (!found->isVisible() || !found->accessibleName().contains(table))
                continue;
            found->setFocus();
            found->setCurrentIndex(found->model()->index(0, 0));
            stage.press(Qt::Key_Return);
            QApplication::setActiveWindow(stage.dialog(QStringLiteral("correction")));
            stage.settle();
            return;
        }
        FAIL() << "no table " << table.toStdString();
    }
    work::BatchView view(work::BatchId batch) { return *work::batch_view(bench.book(), batch, first_day); }

    Bench bench;
    Stage stage{bench};
};

} // namespace

TEST_F(ShedCorrections, a_weighing_is_put_right_with_a_reason_and_says_so) {
    const work::BatchId batch = bench.soaked_batch();
    work::WeighEntry weighing;
    weighing.soak = bench.soaks_of(batch)[0];
    weighing.strips = 10;
    weighing.total = maths::grams(393);
    must(work::log_weighing(bench.book(), weighing, on_day(2, 10)));
    stage.set_clock(2, 11);
    show(batch, "weigh");
    open_first_row(QStringLiteral("Weighings"));
    stage.go_to(QStringLiteral("correct_total"));
    stage.type(QStringLiteral("339"));
    stage.enter();
    EXPECT_EQ(view(batch).soaks[0].weighings[0].total, maths::grams(393)) << "no reason was given yet";
    EXPECT_EQ(stage.here(), QStringLiteral("correct_reason"));
    stage.type(QStringLiteral("read upside down"));
    stage.enter();
    const work::WeighLine line = view(batch).soaks[0].weighings[0];
    EXPECT_EQ(line.total, maths::grams(339));
    EXPECT_TRUE(line.corrected);
}

TEST_F(ShedCorrections, a_reading_is_made_void_and_goes_from_the_course) {
    const work::BatchId batch = bench.mixed_batch();
    work::ReadingEntry reading;
    reading.batch = batch;
    reading.probe = maths::celsius(25);
    must(work::log_reading(bench.book(), reading, on_day(1, 8)));
    stage.set_clock(1, 9);
    show(batch, "reading");
    open_first_row(QStringLiteral("Readings"));
    stage.go_to(QStringLiteral("correct_reason"));
    stage.type(QStringLiteral("probe hung in the air"));
    stage.go_to(QStringLiteral("make_void"));
    stage.press(Qt::Key_Space);
    EXPECT_TRUE(view(batch).readings.empty()) << stage.words(QApplication::activeWindow()).toStdString();
}

TEST_F(ShedCorrections, a_weighed_amount_is_put_right_and_the_strength_follows) {
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    show(batch, "weigh_mix");
    open_first_row(QStringLiteral("What went in"));
    const bool acid = view(batch).inputs[0].is_acid;
    stage.go_to(QStringLiteral("correct_mass"));
    stage.type(acid ? QStringLiteral("24") : QStringLiteral("36.5"));
    stage.go_to(QStringLiteral("correct_reason"));
    stage.type(QStringLiteral("mistyped"));
    stage.enter();
    EXPECT_NE(*view(batch).strength, maths::percent(40));
}

TEST_F(ShedCorrections, a_bag_is_put_right_and_its_label_is_to_be_printed_again) {
    const work::BatchId batch = bench.bagged_batch();
    must(work::labels_printed(bench.book(), bench.bags_of(batch), {}, on_day(2, 15)));
    stage.set_clock(2, 16);
    show(batch, "bag");
    open_first_row(QStringLiteral("Bags of this batch"));
    stage.go_to(QStringLiteral("correct_packed"));
    stage.type(QStringLiteral("79"));
    stage.go_to(QStringLiteral("correct_reason"));
    stage.type(QStringLiteral("one tore"));
    stage.enter();
    EXPECT_EQ(*view(batch).bags[0].packed, 79);
    EXPECT_EQ(view(batch).bags[0].label, QStringLiteral("stale"));
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("Print"));
}

TEST_F(ShedCorrections, a_batch_is_made_void_with_its_reason_and_still_shown) {
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    show(batch, "weigh_mix");
    stage.go_to(QStringLiteral("void_batch"));
    stage.press(Qt::Key_Space);
    QApplication::setActiveWindow(stage.dialog(QStringLiteral("correction")));
    stage.go_to(QStringLiteral("correct_reason"));
    stage.type(QStringLiteral("wrong sack"));
    stage.enter();
    EXPECT_EQ(view(batch).line.state, work::BatchState::made_void);
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("This batch is void: wrong sack"));
}

} // namespace soakbook::tests
