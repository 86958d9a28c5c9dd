// SPDX-License-Identifier: GPL-3.0-or-later
// Every wish of Due opens its form with the keyboard in it; labels may come before bags; undo is followed.
#include "tests/ui/shed/stage.h"

#include "core/work/shed_view.h"
#include "core/work/undo.h"

#include <QApplication>
#include <QDialog>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class ShedWishes : public testing::Test {
protected:
    QString after(const char* task, work::BatchId batch, std::int64_t soak = 0) {
        std::vector<qint64> ids{batch.value};
        if (soak != 0)
            ids.push_back(soak);
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QLatin1String(task), ids, {}});
        stage.settle();
        return stage.here();
    }
    void close_dialog() {
        if (auto* dialog = stage.find<QDialog>(QStringLiteral("label_dialog")))
            dialog->reject();
        stage.settle();
        QApplication::setActiveWindow(&stage.window());
        stage.settle();
    }

    Bench bench;
    Stage stage{bench};
};

} // namespace

TEST_F(ShedWishes, each_opens_the_form_that_is_wished_for) {
    const work::BatchId planned = work::plan_mix(bench.book(), bench.plan(), on_day(0))->batch;
    EXPECT_EQ(after("weigh_mix", planned), QStringLiteral("weigh_in_1"));
    EXPECT_EQ(stage.place().title(), QStringLiteral("Batch ") + work::batch_view(bench.book(), planned, first_day)->line.code);
    const work::BatchId soaking = bench.soaked_batch();
    stage.set_clock(2, 10);
    EXPECT_EQ(after("reading", soaking), QStringLiteral("reading_probe"));
    // How long it is stirred is filled in as it was the last time.
    EXPECT_EQ(after("stir", soaking), QStringLiteral("stir_clear"));
    EXPECT_EQ(stage.text_of(QStringLiteral("stir_minutes")), QStringLiteral("5"));
    EXPECT_EQ(after("bag", soaking), QStringLiteral("bag_count"));
    EXPECT_EQ(after("leftovers", soaking), QStringLiteral("pour_pail_1"));
    after("weigh", soaking, bench.soaks_of(soaking)[1].value);
    EXPECT_THAT(stage.text_of(QStringLiteral("weigh_soak")).toStdString(), HasSubstr("bin 2"));
}

TEST_F(ShedWishes, a_wish_for_a_new_batch_brings_its_strips_along) {
    stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {{QStringLiteral("strips"), 960}}});
    stage.settle();
    EXPECT_EQ(stage.text_of(QStringLiteral("mix_strips")), QStringLiteral("960"));
    // 960 strips of 23 g are 22.08 kg (common practice, no source).
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("22.08"));
}

TEST_F(ShedWishes, labels_are_given_out_first_and_their_bags_filled_later) {
    const work::BatchId batch = bench.weighed_batch(0, 1);
    stage.set_clock(2, 11);
    after("bag", batch);
    stage.go_to(QStringLiteral("bag_reserve"));
    stage.press(Qt::Key_Space);
    EXPECT_EQ(stage.text_of(QStringLiteral("reserve_count")), QStringLiteral("6"));
    stage.enter();
    close_dialog();
    EXPECT_EQ(work::batch_view(bench.book(), batch, first_day)->labels_reserved, 6);
    EXPECT_EQ(after("fill_reserved", batch), QStringLiteral("fill_strips_1"));
    EXPECT_EQ(stage.text_of(QStringLiteral("fill_strips_6")), QStringLiteral("80"));
    stage.go_to(QStringLiteral("fill_count"));
    stage.type(QStringLiteral("2"));
    EXPECT_EQ(stage.text_of(QStringLiteral("fill_strips_3")), QString());
    stage.enter();
    const work::BatchView view = *work::batch_view(bench.book(), batch, first_day);
    EXPECT_EQ(view.strips_bagged, 160);
    EXPECT_EQ(view.labels_reserved, 4);
}

TEST_F(ShedWishes, undo_takes_the_course_back_to_the_step_before) {
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    EXPECT_EQ(after("show", batch), QStringLiteral("reading_probe"));
    must(work::undo(bench.book(), on_day(1, 8)));
    stage.place().refresh();
    stage.settle();
    EXPECT_THAT(stage.words().toStdString(), HasSubstr("It is weighed in"));
}

} // namespace soakbook::tests
