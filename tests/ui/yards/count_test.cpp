// SPDX-License-Identifier: GPL-3.0-or-later
// Mite counts: the rate as one types, the number of bees used last, and no number nobody said.
#include "room.h"

#include "core/work/count.h"
#include "ui/yards/count_rows.h"

namespace soakbook::tests {
namespace {

using namespace work;

class Counts : public YardsRoom {
protected:
    Counts() : yard(made_yard(4)) { press("yard_count"); }
    YardId yard;
};

TEST_F(Counts, no_number_of_bees_is_invented) {
    EXPECT_EQ(cell("count_grid", QStringLiteral("SC-01"), ui::count_bees), QString());
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("9"));
    ctrl_enter();
    EXPECT_TRUE(counts(bench.book(), {}, yard).empty());
    EXPECT_EQ(find<QTableView>("count_grid")->currentIndex().column(), ui::count_bees);
    EXPECT_TRUE(words("count_complaint").startsWith(QStringLiteral("SC-01: "))) << words("count_complaint").toStdString();
}

// 9 of 300: 3 %, Wilson 0.015862 to 0.056023 (computed; the formula is Newcombe 1998, Stat. Med. 17:857).
TEST_F(Counts, the_rate_and_its_interval_stand_beside_the_typing) {
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("9"));
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_bees, QStringLiteral("300"));
    const QString rate = cell("count_grid", QStringLiteral("SC-01"), ui::count_rate);
    EXPECT_TRUE(rate.startsWith(QStringLiteral("3"))) << rate.toStdString();
    EXPECT_TRUE(rate.contains(QStringLiteral("1.6 to 5.6"))) << rate.toStdString();
    EXPECT_FALSE(rate.contains(QStringLiteral("threshold")));
}

TEST_F(Counts, the_users_threshold_is_said_beside_the_rate) {
    say(Figure::mite_threshold, 20'000);
    settle();
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("9"));
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_bees, QStringLiteral("300"));
    EXPECT_TRUE(cell("count_grid", QStringLiteral("SC-01"), ui::count_rate).contains(QStringLiteral("over your threshold")));
}

TEST_F(Counts, hives_without_mites_typed_are_not_counted_and_the_bees_are_remembered) {
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("9"));
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_bees, QStringLiteral("280"));
    type_cell("count_grid", QStringLiteral("SC-03"), ui::count_mites, QStringLiteral("0"));
    type_cell("count_grid", QStringLiteral("SC-03"), ui::count_bees, QStringLiteral("310"));
    ctrl_enter();
    EXPECT_EQ(counts(bench.book(), {}, yard).size(), 2U);
    press("yard_count");
    EXPECT_EQ(cell("count_grid", QStringLiteral("SC-02"), ui::count_bees), cell("count_grid", QStringLiteral("SC-04"), ui::count_bees));
    EXPECT_TRUE(cell("count_grid", QStringLiteral("SC-02"), ui::count_bees) == QStringLiteral("310") ||
                cell("count_grid", QStringLiteral("SC-02"), ui::count_bees) == QStringLiteral("280"));
}

TEST_F(Counts, a_natural_drop_asks_for_days_instead_of_bees) {
    auto* kind = find<QWidget>("count_kind");
    kind->setFocus();
    key(Qt::Key_End);
    auto* grid = find<QTableView>("count_grid");
    EXPECT_TRUE(grid->isColumnHidden(ui::count_bees));
    EXPECT_FALSE(grid->isColumnHidden(ui::count_days));
    type_cell("count_grid", QStringLiteral("SC-02"), ui::count_mites, QStringLiteral("12"));
    type_cell("count_grid", QStringLiteral("SC-02"), ui::count_days, QStringLiteral("3"));
    EXPECT_EQ(cell("count_grid", QStringLiteral("SC-02"), ui::count_rate), QStringLiteral("4.0 a day"));
    ctrl_enter();
    const auto entered = counts(bench.book(), {}, yard);
    ASSERT_EQ(entered.size(), 1U);
    EXPECT_EQ(entered.front().days, 3);
    EXPECT_FALSE(entered.front().bees);
}

} // namespace
} // namespace soakbook::tests
