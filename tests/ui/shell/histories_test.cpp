// SPDX-License-Identifier: GPL-3.0-or-later
// What a record said before, who changed it, when and why: in every place by the same key, for every kind of record.
#include "tests/ui/bad_input/room.h"

#include "core/work/bag.h"
#include "core/work/heat.h"
#include "core/work/leftovers.h"
#include "core/work/record_history.h"
#include "core/work/setup.h"
#include "core/work/visit.h"
#include "ui/papers/record_words.h"
#include "ui/parts/field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/frame.h"
#include "ui/shell/places.h"

#include <QApplication>
#include <QDialog>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

using ui::PlaceName;

class Histories : public testing::Test {
protected:
    Histories() : room(QStringLiteral("en")) { frame = room.show(new ui::Frame(room.desk(), ui::make_places(room.desk(), {QString(), {}, {}, {}}))); }

    void go(PlaceName place, const char* task, std::vector<qint64> ids = {}, QVariantMap prefill = {}) {
        if (QDialog* open = room.dialog())
            delete open;
        frame->go({place, QLatin1String(task), std::move(ids), std::move(prefill)});
        room.settle();
    }
    ui::RecordTable* table(const char* name) {
        for (ui::RecordTable* found : frame->findChildren<ui::RecordTable*>(QLatin1String(name))) {
            if (found->isVisible())
                return found;
        }
        return nullptr;
    }
    /// Puts the keyboard on the first row of that table and asks for its history by the key.
    QStringList history_in(const char* name) {
        ui::RecordTable* shown = table(name);
        if (shown == nullptr || shown->model()->rowCount() == 0)
            return {QStringLiteral("no row in ") + QLatin1String(name)};
        shown->setCurrentIndex(shown->model()->index(0, 0));
        shown->setFocus();
        room.settle();
        return by_key(shown);
    }
    /// What the window says that the key opens: its title, then row by row what was done.
    QStringList by_key(QWidget* from) {
        QTest::keyClick(from, Qt::Key_H, Qt::ControlModifier);
        room.settle();
        QDialog* opened = room.dialog();
        if (opened == nullptr || opened->objectName() != QLatin1String("history_dialog"))
            return {QStringLiteral("no window")};
        QStringList said{opened->windowTitle()};
        auto* lines = opened->findChild<ui::RecordTable*>(QStringLiteral("history_table"));
        for (int row = 0; row < lines->model()->rowCount(); ++row) {
            for (int column = 0; column < lines->model()->columnCount(); ++column)
                said << lines->model()->index(row, column).data().toString();
        }
        delete opened;
        room.settle();
        return said;
    }

    Room room;
    ui::Frame* frame = nullptr;
};

} // namespace

TEST_F(Histories, of_what_was_entered_for_a_batch) {
    using House = FullHouse;
    House& house = full_house();
    const auto entered = [&](const char* task, work::BatchId batch, const char* name, const char* title) {
        go(PlaceName::shed, task, {batch.value});
        const QStringList said = history_in(name);
        EXPECT_FALSE(said.filter(QStringLiteral("entered")).isEmpty()) << name << ": " << said.join(QLatin1Char('|')).toStdString();
        EXPECT_TRUE(said.front().contains(QLatin1String(title))) << said.front().toStdString();
    };
    entered("weigh_mix", house.too_strong, "shed/inputs", "weigh-in");
    entered("reading", house.warm, "shed/readings", "reading");
    entered("reading", house.warm, "shed/stirs", "stir");
    entered("soak", house.soaking, "shed/soaks", "soak");
    entered("weigh", house.weighed, "shed/weighings", "weighing");
    entered("bag", house.ready, "shed/bags", "bag");
    entered("leftovers", house.near, "shed/pails", "pail");
}

TEST_F(Histories, of_a_named_loss) {
    ASSERT_TRUE(work::log_loss(room.book(), full_house().ready, work::NamedLoss::spill, maths::grams(500), {}, room.desk().doing()));
    go(PlaceName::shed, "leftovers", {full_house().ready.value});
    EXPECT_TRUE(history_in("shed/losses").front().contains(QStringLiteral("loss")));
}

TEST_F(Histories, of_a_whole_batch_where_no_row_has_the_keyboard) {
    go(PlaceName::shed, "reading", {full_house().warm.value});
    const QStringList said = by_key(QApplication::focusWidget());
    EXPECT_TRUE(said.front().contains(QStringLiteral("Batch"))) << said.front().toStdString();
    EXPECT_FALSE(said.filter(QStringLiteral("reading")).isEmpty()) << said.join(QLatin1Char('|')).toStdString();
    EXPECT_FALSE(said.filter(QStringLiteral("stir")).isEmpty());
}

TEST_F(Histories, say_what_stood_there_before_who_and_why) {
    const work::BagId bag = full_house().bags_of(full_house().ready).at(3);
    work::BagCorrection correction;
    correction.bag = bag;
    correction.packed = 78;
    ASSERT_TRUE(work::correct_bag(room.book(), correction, room.desk().doing(QStringLiteral("miscounted"))));
    go(PlaceName::store, "bag", {bag.value});
    const QStringList said = by_key(QApplication::focusWidget());
    EXPECT_FALSE(said.filter(QStringLiteral("78, before 80")).isEmpty()) << said.join(QLatin1Char('|')).toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("miscounted")));
    EXPECT_TRUE(said.contains(QStringLiteral("Ada")));
}

TEST_F(Histories, of_pails_and_deliveries) {
    go(PlaceName::store, "pail", {full_house().pails.at(2).value});
    EXPECT_TRUE(by_key(QApplication::focusWidget()).front().contains(QStringLiteral("Pail")));
    go(PlaceName::store, "lot", {full_house().acid.value});
    EXPECT_TRUE(by_key(QApplication::focusWidget()).front().contains(QStringLiteral("acid A2")));
}

TEST_F(Histories, of_yards_hives_strips_counts_and_rounds) {
    go(PlaceName::yards, "show", {full_house().yard.value});
    EXPECT_TRUE(history_in("yard_hives").front().contains(QStringLiteral("hive")));
    frame->findChild<QPushButton*>(QStringLiteral("yard_times"))->setFocus();
    EXPECT_TRUE(by_key(QApplication::focusWidget()).front().contains(QStringLiteral("Mill lane")));
    go(PlaceName::yards, "hive", {full_house().pulled_hive.value});
    ui::RecordTable* story = table("story_table");
    ASSERT_NE(story, nullptr);
    QStringList titles;
    for (int row = 0; row < story->model()->rowCount(); ++row) {
        story->setCurrentIndex(story->model()->index(row, 0));
        story->setFocus();
        room.settle();
        titles << by_key(story).front();
    }
    EXPECT_FALSE(titles.filter(QStringLiteral("strips in a hive")).isEmpty()) << titles.join(QLatin1Char('|')).toStdString();
    EXPECT_FALSE(titles.filter(QStringLiteral("mite count")).isEmpty()) << titles.join(QLatin1Char('|')).toStdString();
    go(PlaceName::yards, "round", {full_house().autumn.value});
    EXPECT_TRUE(history_in("rounds_table").front().contains(QStringLiteral("Autumn")));
}

TEST_F(Histories, of_set_up) {
    go(PlaceName::setup, "people");
    EXPECT_TRUE(history_in("people_table").front().contains(QStringLiteral("person")));
    go(PlaceName::setup, "strip_kinds");
    EXPECT_TRUE(history_in("strip_kinds_table").front().contains(QStringLiteral("strip kind")));
    go(PlaceName::setup, "vessels");
    EXPECT_TRUE(history_in("vessels_table").front().contains(QStringLiteral("tank or bin")));
    go(PlaceName::setup, "operation");
    EXPECT_FALSE(by_key(QApplication::focusWidget()).filter(QStringLiteral("entered")).isEmpty());
    go(PlaceName::setup, "figure", {}, {{QStringLiteral("key"), QStringLiteral("strength")}});
    const QStringList figure = by_key(QApplication::focusWidget());
    EXPECT_FALSE(figure.filter(QStringLiteral("entered")).isEmpty()) << figure.join(QLatin1Char('|')).toStdString();
}

TEST_F(Histories, name_every_kind_of_record) {
    for (const char* kind : {"batch", "batch_input", "reading", "stir", "soak", "weigh_in", "bag", "bag_change", "pour", "pail", "batch_loss", "material_lot", "yard", "hive",
                             "hive_move", "placement", "mite_count", "round", "round_yard", "person", "strip_kind", "vessel", "figure", "operation"})
        EXPECT_NE(ui::record_kind_words(QLatin1String(kind)).size(), 0) << kind;
    EXPECT_EQ(ui::record_kind_words(QStringLiteral("weigh_in")), QStringLiteral("weighing"));
}

} // namespace soakbook::tests
