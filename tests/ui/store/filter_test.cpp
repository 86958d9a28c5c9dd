// SPDX-License-Identifier: GPL-3.0-or-later
// Each choice over the table shows its bags and no others, and its number is that of its rows.
#include "tests/ui/store/full_store.h"
#include "tests/ui/store/room.h"

#include <QPushButton>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using work::BagFilter;
using work::BagState;

struct Choice {
    const char* button;
    BagFilter filter;
    std::size_t rows;
};

// Four batches: 6 bags past their limit, 12 near it less one thrown away and one void, 6 ready, 6 resting, 3 labels.
// The round of 104 strips emptied one bag of the first batch and opened the next.
const Choice choices[] = {
    {"bags_filter_in_stock", BagFilter::in_stock, 27},
    {"bags_filter_resting", BagFilter::resting, 6},
    {"bags_filter_ready", BagFilter::ready, 16},
    {"bags_filter_near_limit", BagFilter::near_limit, 10},
    {"bags_filter_past_limit", BagFilter::past_limit, 5},
    {"bags_filter_reserved", BagFilter::reserved, 3},
    {"bags_filter_gone", BagFilter::gone, 3},
    {"bags_filter_all", BagFilter::all, 33},
};

class StoreFilter : public testing::Test {
protected:
    FullStore bench;
    StoreRoom room{bench, FullStore::last_day};
};

} // namespace

TEST_F(StoreFilter, shows_only_its_rows) {
    for (const Choice& choice : choices) {
        room.press(choice.button);
        QStringList wanted;
        for (const work::BagLine& bag : work::bags(bench.book(), day_n(FullStore::last_day), choice.filter))
            wanted << bag.code;
        EXPECT_EQ(wanted.size(), static_cast<qsizetype>(choice.rows)) << choice.button;
        EXPECT_EQ(room.codes("store_bags"), wanted) << choice.button;
    }
}

TEST_F(StoreFilter, the_number_on_a_choice_is_that_of_its_rows) {
    for (QPushButton* button : room.find<QWidget>("bags_filter")->findChildren<QPushButton*>()) {
        room.press(button->objectName().toLatin1().constData());
        const QString number = button->text().section(QChar(0x2002), 1);
        EXPECT_EQ(number, QString::number(room.codes("store_bags").size())) << button->objectName().toStdString();
    }
}

TEST_F(StoreFilter, the_arrow_keys_go_from_one_choice_to_the_next) {
    room.press("bags_filter_resting");
    room.key(Qt::Key_Right);
    EXPECT_TRUE(room.find<QPushButton>("bags_filter_ready")->isChecked());
    EXPECT_EQ(room.codes("store_bags").size(), 16);
}

TEST_F(StoreFilter, bags_stand_in_order_of_their_limit) {
    maths::Day last{};
    for (const work::BagLine& bag : work::bags(bench.book(), day_n(FullStore::last_day))) {
        EXPECT_GE(*bag.use_by, last);
        last = *bag.use_by;
    }
    EXPECT_EQ(room.cell("store_bags", room.codes("store_bags").first(), QStringLiteral("Days")),
              QStringLiteral("\u22125"));
}

TEST_F(StoreFilter, the_sentence_says_what_the_work_counts) {
    const work::StockFigures figures = work::stock_figures(bench.book(), day_n(FullStore::last_day));
    const std::string said = room.words("store_sentence").toStdString();
    EXPECT_THAT(said, testing::HasSubstr(std::to_string(figures.ready)));
    EXPECT_EQ(figures.resting, 480);
    EXPECT_EQ(figures.near_limit, 800);
}

} // namespace soakbook::tests
