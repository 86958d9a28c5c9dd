// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to bags on the shelf, by keys.
#include "core/work/stock.h"
#include "tests/ui/store/room.h"

#include <QApplication>
#include <QLineEdit>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class StoreBags : public testing::Test {
protected:
    work::BagLine line(std::size_t i) { return *work::bag(bench.book(), ids[i], day_n(5)); }
    QString code(std::size_t i) { return line(i).code; }

    YardsBench bench;
    std::vector<work::BagId> ids = bench.bags_of(bench.bagged_batch());
    StoreRoom room{bench, 5};
};

} // namespace

TEST_F(StoreBags, more_strips_than_are_left_are_refused_beside_the_field_and_the_text_stays) {
    room.choose("store_bags", code(2));
    room.press("bag_discard");
    ASSERT_TRUE(room.is_seen("discard_form"));
    EXPECT_EQ(room.line("discard_strips")->text(), QStringLiteral("80")) << "what is left is in the form already";
    room.type_into("discard_strips", QStringLiteral("81"));
    room.type_into("reason", QStringLiteral("mouldy"));
    room.enter();
    ASSERT_TRUE(room.is_seen("discard_form")) << "it was taken";
    EXPECT_THAT(room.beneath("discard_strips").toStdString(), HasSubstr("80"));
    EXPECT_EQ(room.line("discard_strips")->text(), QStringLiteral("81"));
    EXPECT_EQ(room.line("reason")->text(), QStringLiteral("mouldy"));
    EXPECT_EQ(line(2).left, 80);

    room.type_into("discard_strips", QStringLiteral("6"));
    room.enter();
    EXPECT_FALSE(room.is_seen("discard_form"));
    EXPECT_EQ(line(2).left, 74);
    EXPECT_EQ(room.cell("store_bags", code(2), QStringLiteral("Strips left")), QStringLiteral("74 of 80"));
}

TEST_F(StoreBags, what_cannot_be_a_number_of_strips_is_refused_where_it_stands) {
    room.choose("store_bags", code(0));
    room.press("bag_discard");
    room.type_into("reason", QStringLiteral("mouldy"));
    for (const QString& text : {QStringLiteral("0"), QStringLiteral("-3"), QStringLiteral("2,5"), QStringLiteral("2.5"),
                                QStringLiteral("999999999999"), QString(10'000, QLatin1Char('9')),
                                QStringLiteral("\u05e9\u05dc\u05d5\u05dd")}) {
        room.type_into("discard_strips", text);
        room.enter();
        ASSERT_TRUE(room.is_seen("discard_form")) << text.left(20).toStdString();
        EXPECT_EQ(room.line("discard_strips")->text(), text);
        EXPECT_FALSE(room.beneath("discard_strips").isEmpty()) << text.left(20).toStdString();
    }
    EXPECT_EQ(line(0).left, 80);
}

TEST_F(StoreBags, a_recount_needs_a_reason) {
    room.choose("store_bags", code(1));
    room.press("bag_recount");
    ASSERT_TRUE(room.is_seen("recount_form"));
    EXPECT_TRUE(room.line("recount_left")->text().isEmpty()) << "what is counted is not said beforehand";
    room.type_into("recount_left", QStringLiteral("77"));
    EXPECT_THAT(room.words("recount_form").toStdString(), HasSubstr("\u22123"));
    room.enter();
    ASSERT_TRUE(room.is_seen("recount_form")) << "it was taken without a reason";
    EXPECT_FALSE(room.beneath("reason").isEmpty());
    EXPECT_EQ(room.line("recount_left")->text(), QStringLiteral("77"));
    EXPECT_EQ(line(1).left, 80);
    room.type_into("reason", QStringLiteral("counted by hand"));
    room.enter();
    EXPECT_FALSE(room.is_seen("recount_form"));
    EXPECT_EQ(line(1).left, 77);
    EXPECT_EQ(line(1).recounted, -3);
}

TEST_F(StoreBags, a_bag_is_opened_and_sealed_again) {
    room.choose("store_bags", code(0));
    EXPECT_FALSE(room.is_seen("bag_resealed"));
    room.press("bag_opened");
    room.enter();
    EXPECT_EQ(line(0).opened_on, day_n(5));
    EXPECT_FALSE(room.is_seen("bag_opened"));
    room.press("bag_resealed");
    room.type_into("on_day", QStringLiteral("-1"));
    room.enter();
    EXPECT_TRUE(room.is_seen("resealed_form")) << "sealed before it was opened";
    room.type_into("on_day", QStringLiteral("0"));
    room.enter();
    EXPECT_EQ(line(0).resealed_on, day_n(5));
}

TEST_F(StoreBags, several_are_moved_at_once_with_shift_and_the_arrow_keys) {
    room.choose("store_bags", code(0));
    room.key(Qt::Key_Down, Qt::ShiftModifier);
    room.key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_THAT(room.words("bag_card").toStdString(), HasSubstr("240"));
    EXPECT_FALSE(room.is_seen("bag_recount")) << "of one bag only";
    room.press("bag_move");
    room.type_into("move_stands", QStringLiteral("barn"));
    room.enter();
    EXPECT_EQ(line(0).stands, QStringLiteral("barn"));
    EXPECT_EQ(line(2).stands, QStringLiteral("barn"));
    EXPECT_EQ(line(3).stands, QStringLiteral("shelf 1"));
    EXPECT_EQ(room.cell("store_bags", code(2), QStringLiteral("Stands")), QStringLiteral("barn"));
}

TEST_F(StoreBags, the_place_of_one_bag_is_in_the_form_already) {
    room.choose("store_bags", code(0));
    room.press("bag_move");
    EXPECT_EQ(room.line("move_stands")->text(), QStringLiteral("shelf 1"));
    room.enter();
    EXPECT_TRUE(room.is_seen("move_form")) << "it stands there already";
}

TEST_F(StoreBags, several_are_thrown_away_whole_with_one_reason) {
    room.choose("store_bags", code(0));
    room.key(Qt::Key_Down, Qt::ShiftModifier);
    room.find<QTableView>("store_bags")->setFocus();
    room.key(Qt::Key_Delete);
    ASSERT_TRUE(room.is_seen("discard_form"));
    EXPECT_FALSE(room.is_seen("discard_strips"));
    EXPECT_THAT(room.words("discard_form").toStdString(), HasSubstr("not down a drain"));
    EXPECT_THAT(room.words("discard_form").toStdString(), HasSubstr("not burned"));
    room.enter();
    EXPECT_FALSE(room.beneath("reason").isEmpty());
    EXPECT_EQ(line(0).left, 80);
    room.type_into("reason", QStringLiteral("bag not tight"));
    room.enter();
    EXPECT_EQ(line(0).left, 0);
    EXPECT_EQ(line(1).left, 0);
    EXPECT_EQ(room.codes("store_bags").size(), 10) << "they are not in stock any more";
    EXPECT_TRUE(room.is_seen("bag_recount")) << "another bag is chosen, though Ctrl is still held";
}

TEST_F(StoreBags, enter_goes_into_the_card_and_esc_back_to_the_table) {
    room.choose("store_bags", code(4));
    room.key(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("bag_labels"));
    room.key(Qt::Key_Escape);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("store_bags"));
    EXPECT_THAT(room.words("bag_card").toStdString(), HasSubstr(code(4).toStdString())) << "it is still chosen";
}

TEST_F(StoreBags, an_undone_entry_shows_at_once_and_the_bag_stays_chosen) {
    room.choose("store_bags", code(3));
    must(work::discard_strips(bench.book(), ids[3], 5, {}, QStringLiteral("torn"), on_day(5)));
    room.settle();
    EXPECT_EQ(room.cell("store_bags", code(3), QStringLiteral("Strips left")), QStringLiteral("75 of 80"));
    EXPECT_EQ(room.find<QTableView>("store_bags")->currentIndex().row(), 3);
    EXPECT_THAT(room.words("bag_story").toStdString(), HasSubstr("5 thrown away: torn"));
}

} // namespace soakbook::tests
