// SPDX-License-Identifier: GPL-3.0-or-later
// Deliveries entered, put right, weighed anew and finished.
#include "core/work/materials.h"
#include "tests/ui/store/room.h"

#include <QLineEdit>

#include <algorithm>
#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class StoreLots : public testing::Test {
protected:
    StoreLots() { room.wish("lots"); }
    work::LotLine line(work::LotId id) {
        const auto all = work::lots(bench.book(), day_n(5));
        return *std::find_if(all.begin(), all.end(), [id](const work::LotLine& lot) { return lot.entry.id == id; });
    }
    /// What the table says of the delivery of that name.
    QString cell(const QString& lot, const QString& header) {
        const QAbstractItemModel* model = room.find<QTableView>("store_lots")->model();
        int row = -1;
        int column = -1;
        for (int i = 0; i < model->rowCount(); ++i)
            row = model->index(i, 1).data().toString() == lot ? i : row;
        for (int i = 0; i < model->columnCount(); ++i)
            column = model->headerData(i, Qt::Horizontal).toString() == header ? i : column;
        return row < 0 || column < 0 ? QStringLiteral("no such cell") : model->index(row, column).data().toString();
    }

    Bench bench;
    StoreRoom room{bench, 5};
};

} // namespace

TEST_F(StoreLots, what_is_left_stands_in_its_own_unit) {
    EXPECT_EQ(cell(QStringLiteral("acid A1"), QStringLiteral("Left")), QStringLiteral("100\u202fkg"));
    EXPECT_EQ(cell(QStringLiteral("acid A1"), QStringLiteral("Containers")), QStringLiteral("4 of 25\u202fkg"));
    EXPECT_EQ(cell(QStringLiteral("strips C1"), QStringLiteral("Left")), QStringLiteral("5000"));
}

TEST_F(StoreLots, a_delivery_is_entered_by_keys_and_chosen_then) {
    room.press("new_delivery");
    ASSERT_TRUE(room.is_seen("lot_form"));
    room.type(QStringLiteral("g"));
    room.type_into("lot_name", QStringLiteral("glycerine G2"));
    room.type_into("lot_amount", QStringLiteral("50"));
    room.enter();
    EXPECT_FALSE(room.is_seen("lot_form"));
    EXPECT_EQ(cell(QStringLiteral("glycerine G2"), QStringLiteral("Left")), QStringLiteral("50\u202fkg"));
    const auto* table = room.find<QTableView>("store_lots");
    EXPECT_EQ(table->model()->index(table->currentIndex().row(), 1).data().toString(), QStringLiteral("glycerine G2"));
}

TEST_F(StoreLots, one_weighed_anew_needs_an_amount_and_a_reason) {
    room.wish("lot", {bench.acid.value});
    room.press("lot_recount");
    room.enter();
    EXPECT_FALSE(room.beneath("recount_lot_left").isEmpty());
    room.type_into("recount_lot_left", QStringLiteral("98.5"));
    room.enter();
    ASSERT_TRUE(room.is_seen("recount_lot_form")) << "it was taken without a reason";
    EXPECT_FALSE(room.beneath("reason").isEmpty());
    room.type_into("reason", QStringLiteral("spilt"));
    room.enter();
    EXPECT_EQ(line(bench.acid).left, maths::kilograms(98.5).count);
}

TEST_F(StoreLots, a_finished_one_is_seen_only_among_all) {
    room.wish("lot", {bench.bags.value});
    room.press("lot_finished");
    room.enter();
    EXPECT_TRUE(line(bench.bags).finished);
    EXPECT_EQ(cell(QStringLiteral("bags Z1"), QStringLiteral("Left")), QStringLiteral("no such cell"));
    room.press("lots_filter_all");
    EXPECT_EQ(cell(QStringLiteral("bags Z1"), QStringLiteral("Left")), QStringLiteral("finished"));
}

TEST_F(StoreLots, a_correction_stands_in_the_history_in_kilograms) {
    room.wish("lot", {bench.glycerine.value});
    room.press("lot_correct");
    room.type_into("lot_amount", QStringLiteral("175"));
    room.type_into("reason", QStringLiteral("one can was missing"));
    room.enter();
    ASSERT_EQ(line(bench.glycerine).left, maths::kilograms(175).count);
    room.press("lot_history");
    const QAbstractItemModel* model = room.find<QTableView>("history_table")->model();
    ASSERT_EQ(model->rowCount(), 2);
    const QString said = model->index(0, 2).data().toString();
    EXPECT_THAT(said.toStdString(), HasSubstr("175\u202fkg"));
    EXPECT_THAT(said.toStdString(), HasSubstr("200\u202fkg"));
    EXPECT_EQ(model->index(0, 3).data().toString(), QStringLiteral("one can was missing"));
}

} // namespace soakbook::tests
