// SPDX-License-Identifier: GPL-3.0-or-later
// A bag put right or made void, and its history.
#include "core/work/papers.h"
#include "tests/ui/store/room.h"

#include <QLineEdit>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class StoreCorrections : public testing::Test {
protected:
    work::BagLine line() { return *work::bag(bench.book(), bag, day_n(5)); }
    QString all_cells(const char* table) {
        QStringList cells;
        const QAbstractItemModel* model = room.find<QTableView>(table)->model();
        for (int row = 0; row < model->rowCount(); ++row) {
            for (int column = 0; column < model->columnCount(); ++column)
                cells << model->index(row, column).data().toString();
        }
        return cells.join(QLatin1Char('\n'));
    }

    YardsBench bench;
    work::BagId bag = bench.bags_of(bench.bagged_batch())[0];
    QString code = line().code;
    StoreRoom room{bench, 5};
};

} // namespace

TEST_F(StoreCorrections, a_label_is_printed_again_after_a_correction) {
    must(work::labels_printed(bench.book(), {bag}, {}, on_day(5)));
    room.choose("store_bags", code);
    EXPECT_EQ(room.cell("store_bags", code, QStringLiteral("Label")), QStringLiteral("printed"));
    room.press("bag_correct");
    ASSERT_TRUE(room.is_seen("correct_bag_form"));
    room.type_into("correct_packed", QStringLiteral("78"));
    room.enter();
    ASSERT_TRUE(room.is_seen("correct_bag_form")) << "it was taken without a reason";
    EXPECT_FALSE(room.beneath("reason").isEmpty());
    EXPECT_EQ(room.line("correct_packed")->text(), QStringLiteral("78"));
    room.type_into("reason", QStringLiteral("mistyped"));
    room.enter();
    EXPECT_EQ(*line().packed, 78);
    EXPECT_EQ(room.cell("store_bags", code, QStringLiteral("Label")), QStringLiteral("print again"));
    EXPECT_EQ(room.cell("store_bags", code, QStringLiteral("Strips left")), QStringLiteral("78 of 78"));
}

TEST_F(StoreCorrections, the_history_says_what_stood_there_who_changed_it_and_why) {
    room.choose("store_bags", code);
    room.press("bag_correct");
    room.type_into("correct_packed", QStringLiteral("78"));
    room.type_into("reason", QStringLiteral("mistyped"));
    room.enter();
    room.press("bag_history");
    ASSERT_TRUE(room.is_seen("history_dialog"));
    const std::string said = all_cells("history_table").toStdString();
    EXPECT_THAT(said, HasSubstr("78"));
    EXPECT_THAT(said, HasSubstr("80"));
    EXPECT_THAT(said, HasSubstr("mistyped"));
    EXPECT_THAT(said, HasSubstr("Ada"));
    room.key(Qt::Key_Escape);
    EXPECT_FALSE(room.is_seen("history_dialog"));
}

TEST_F(StoreCorrections, a_day_sealed_that_was_wrong_moves_the_limit) {
    room.choose("store_bags", code);
    room.press("bag_correct");
    room.type_into("correct_sealed", QStringLiteral("0"));
    room.type_into("reason", QStringLiteral("wrong day"));
    room.enter();
    EXPECT_EQ(line().sealed_on, day_n(5));
    EXPECT_EQ(line().use_by, maths::day(2027, 8, 8));
}

TEST_F(StoreCorrections, a_cleared_number_of_strips_is_asked_for) {
    room.choose("store_bags", code);
    room.press("bag_correct");
    room.line("correct_packed")->clear();
    room.type_into("reason", QStringLiteral("mistyped"));
    room.enter();
    EXPECT_TRUE(room.is_seen("correct_bag_form"));
    EXPECT_FALSE(room.beneath("correct_packed").isEmpty());
}

TEST_F(StoreCorrections, a_burst_bag_is_made_void_with_a_reason_and_counts_no_more) {
    room.choose("store_bags", code);
    room.press("bag_void");
    room.enter();
    ASSERT_TRUE(room.is_seen("void_form")) << "it was taken without a reason";
    room.type(QStringLiteral("burst"));
    room.enter();
    EXPECT_EQ(line().state, work::BagState::made_void);
    EXPECT_FALSE(room.codes("store_bags").contains(code));
    room.press("bags_filter_gone");
    EXPECT_EQ(room.codes("store_bags"), QStringList{code});
    EXPECT_THAT(room.words("bag_card").toStdString(), HasSubstr("burst"));
    for (const char* button :
         {"bag_labels", "bag_move", "bag_discard", "bag_recount", "bag_correct", "bag_void", "bag_opened"})
        EXPECT_FALSE(room.is_seen(button)) << button;
}

} // namespace soakbook::tests
