// SPDX-License-Identifier: GPL-3.0-or-later
// What Due, Find and links ask of the Store, what it asks of others, and its empty pages.
#include "tests/ui/store/full_store.h"
#include "tests/ui/store/room.h"

#include <QApplication>
#include <QLineEdit>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;

class StoreWishes : public testing::Test {
protected:
    work::BagLine line(work::BagId id) { return *work::bag(bench.book(), id, day_n(FullStore::last_day)); }

    FullStore bench;
    StoreRoom room{bench, FullStore::last_day};
};

} // namespace

TEST_F(StoreWishes, a_bag_found_by_its_code_is_shown_though_it_is_gone) {
    const work::BagId gone = bench.bags_of(bench.near)[4];
    room.wish("bag", {gone.value});
    EXPECT_THAT(room.words("bag_card").toStdString(), HasSubstr(line(gone).code.toStdString()));
    EXPECT_EQ(room.codes("store_bags").size(), 33) << "all bags, since it is not in stock";
}

TEST_F(StoreWishes, bags_past_their_limit_come_with_their_reason_filled_in) {
    std::vector<qint64> ids;
    for (const work::BagLine& bag : work::bags(bench.book(), day_n(FullStore::last_day), work::BagFilter::past_limit))
        ids.push_back(bag.id.value);
    room.wish("discard", ids);
    ASSERT_TRUE(room.is_seen("discard_form"));
    EXPECT_EQ(room.line("reason")->text(), QStringLiteral("past their limit"));
    room.enter();
    EXPECT_EQ(work::stock_figures(bench.book(), day_n(FullStore::last_day)).past_limit, 0);
}

TEST_F(StoreWishes, bags_whose_rest_ends_come_with_the_form_that_moves_them) {
    const auto ids = bench.bags_of(bench.resting);
    room.wish("move", {ids[0].value, ids[1].value});
    ASSERT_TRUE(room.is_seen("move_form"));
    EXPECT_TRUE(room.line("move_stands")->text().isEmpty());
    room.type_into("move_stands", QStringLiteral("shelf 3"));
    room.enter();
    EXPECT_EQ(line(ids[1]).stands, QStringLiteral("shelf 3"));
    EXPECT_EQ(line(ids[2]).stands, QStringLiteral("shelf 1"));
}

TEST_F(StoreWishes, bags_asked_for_together_are_chosen_together) {
    const auto ids = bench.bags_of(bench.near);
    room.wish("bags", {ids[0].value, ids[2].value, ids[3].value});
    EXPECT_THAT(room.words("bag_card").toStdString(), HasSubstr("240"));
}

TEST_F(StoreWishes, a_pail_that_is_gone_is_shown_all_the_same) {
    room.wish("pail", {bench.pails[2].value});
    const auto pail = *work::pail(bench.book(), bench.pails[2], day_n(FullStore::last_day));
    EXPECT_THAT(room.words("pail_card").toStdString(), HasSubstr(pail.code.toStdString()));
}

TEST_F(StoreWishes, a_new_delivery_opens_its_form) {
    room.wish("new_lot");
    EXPECT_TRUE(room.is_seen("lot_form"));
}

TEST_F(StoreWishes, an_id_that_is_not_there_opens_nothing) {
    room.wish("discard", {99'999});
    EXPECT_FALSE(room.is_seen("discard_form"));
    room.wish("move", {});
    EXPECT_FALSE(room.is_seen("move_form"));
}

TEST_F(StoreWishes, a_label_without_a_bag_leads_to_where_it_is_filled) {
    room.press("bags_filter_reserved");
    room.press("bag_fill");
    ASSERT_EQ(room.wished().size(), 1U);
    EXPECT_EQ(room.wished()[0].place, ui::PlaceName::shed);
    EXPECT_EQ(room.wished()[0].task, QStringLiteral("fill_reserved"));
    EXPECT_EQ(room.wished()[0].ids, std::vector<qint64>{bench.resting.value});
}

TEST_F(StoreWishes, the_three_pages_are_reached_by_arrow_keys) {
    room.find<QWidget>("store_pages")->setFocus();
    room.key(Qt::Key_Down);
    EXPECT_TRUE(room.is_seen("store_pails"));
    EXPECT_EQ(room.place().title(), QStringLiteral("Pails"));
    room.key(Qt::Key_Down);
    EXPECT_TRUE(room.is_seen("store_lots"));
    room.key(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("store_lots"));
}

TEST_F(StoreWishes, other_units_are_shown_at_once) {
    room.wish("pails");
    ui::Preferences pounds = room.desk().preferences();
    const ui::Preferences before = pounds;
    pounds.large_mass = exchange::MassUnit::pound;
    room.desk().set_preferences(pounds);
    room.settle();
    const QAbstractItemModel* model = room.find<QTableView>("store_pails")->model();
    EXPECT_EQ(model->headerData(2, Qt::Horizontal).toString(), QStringLiteral("Mass, lb"));
    room.desk().set_preferences(before);
}

TEST(StoreEmpty, pages_teach_and_have_one_button) {
    Bench bench;
    StoreRoom room(bench, 0);
    EXPECT_FALSE(room.is_seen("store_bags"));
    room.press("bags_start");
    ASSERT_EQ(room.wished().size(), 1U);
    EXPECT_EQ(room.wished()[0].task, QStringLiteral("new_batch"));
    room.wish("pails");
    room.press("pails_start");
    EXPECT_EQ(room.wished().back().place, ui::PlaceName::shed);
    Bench bare(SetUp::nothing);
    StoreRoom empty(bare, 0);
    empty.wish("lots");
    empty.press("lots_start");
    EXPECT_TRUE(empty.is_seen("lot_form"));
}

} // namespace soakbook::tests
