// SPDX-License-Identifier: GPL-3.0-or-later
// Any selection of bags and pails is offered for labels, and what was saved is noted as printed.
#include "tests/ui/store/full_store.h"
#include "tests/ui/store/room.h"
#include "ui/print/ask_file.h"

#include <QDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

namespace soakbook::tests {
namespace {

class StoreLabels : public testing::Test {
protected:
    StoreLabels() {
        ui::let_answer(
            [path = folder.filePath(QStringLiteral("labels.pdf"))](const ui::FileQuestion&) { return path; });
    }
    ~StoreLabels() override { ui::let_answer({}); }

    void save_pdf() {
        auto* dialog = room.find<QDialog>("label_dialog");
        for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
            if (button->text().contains(QStringLiteral("PDF"))) {
                button->setFocus();
                QTest::keyClick(button, Qt::Key_Space);
                break;
            }
        }
        room.settle();
        EXPECT_GT(QFileInfo(folder.filePath(QStringLiteral("labels.pdf"))).size(), 1000);
    }
    QString label_of(work::BagId bag) { return work::bag(bench.book(), bag, day_n(FullStore::last_day))->label; }

    FullStore bench;
    QTemporaryDir folder;
    StoreRoom room{bench, FullStore::last_day};
};

} // namespace

TEST_F(StoreLabels, of_several_bags_are_noted_as_printed_once_they_are_saved) {
    const auto ids = bench.bags_of(bench.resting);
    room.press("bags_filter_resting");
    room.choose("store_bags", room.codes("store_bags").first());
    room.key(Qt::Key_Down, Qt::ShiftModifier);
    room.press("bag_labels");
    EXPECT_EQ(label_of(ids[0]), QStringLiteral("none")) << "looking at them prints nothing";
    save_pdf();
    EXPECT_EQ(label_of(ids[0]), QStringLiteral("printed"));
    EXPECT_EQ(label_of(ids[1]), QStringLiteral("printed"));
    EXPECT_EQ(label_of(ids[2]), QStringLiteral("none"));
    room.find<QDialog>("label_dialog")->reject();
    room.settle();
    EXPECT_EQ(room.cell("store_bags", room.codes("store_bags").first(), QStringLiteral("Label")),
              QStringLiteral("printed"));
}

TEST_F(StoreLabels, of_void_bags_are_neither_offered_nor_noted) {
    const auto ids = bench.bags_of(bench.near);
    room.wish("labels", {ids[5].value, ids[6].value});
    save_pdf();
    EXPECT_EQ(label_of(ids[5]), QStringLiteral("none")) << "it burst";
    EXPECT_EQ(label_of(ids[6]), QStringLiteral("printed"));
}

TEST_F(StoreLabels, of_pails_are_asked_for_by_name) {
    const work::PailId pail = bench.pails[0];
    room.wish("labels", {pail.value}, {{QStringLiteral("pails"), true}});
    save_pdf();
    EXPECT_EQ(work::pail(bench.book(), pail, day_n(FullStore::last_day))->label, QStringLiteral("printed"));
}

} // namespace soakbook::tests
