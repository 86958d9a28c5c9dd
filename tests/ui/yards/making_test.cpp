// SPDX-License-Identifier: GPL-3.0-or-later
// A yard, its hives, its times and a round, made by the forms alone.
#include "room.h"

#include <QCheckBox>
#include <QDialog>

#include <algorithm>

namespace soakbook::tests {
namespace {

using namespace work;

TEST_F(YardsRoom, an_empty_place_teaches_and_has_one_button) {
    EXPECT_TRUE(is_seen("yards_first"));
    EXPECT_FALSE(is_seen("yards_list"));
}

TEST_F(YardsRoom, a_yard_of_twenty_hives_is_made_with_the_keyboard) {
    press("yards_first");
    type_into("yard_name", QStringLiteral("Sallow Carr"));
    ctrl_enter();
    ASSERT_EQ(yards(bench.book()).size(), 1U);
    EXPECT_EQ(place->title(), QStringLiteral("Sallow Carr"));

    press("yard_add_hives");
    type_into("hives_prefix", QStringLiteral("SC-"));
    type_into("hives_first", QStringLiteral("01"));
    type_into("hives_count", QStringLiteral("20"));
    EXPECT_TRUE(words("hives_form").contains(QStringLiteral("<b>SC-01</b> to <b>SC-20</b>"))) << words("hives_form").toStdString();
    type_into("hives_frames", QStringLiteral("9"));
    ctrl_enter();
    const auto stand = hives(bench.book(), yards(bench.book()).front().id);
    ASSERT_EQ(stand.size(), 20U);
    EXPECT_EQ(stand.front().name, QStringLiteral("SC-01"));
    EXPECT_EQ(stand.back().name, QStringLiteral("SC-20"));
    EXPECT_EQ(stand.back().frames_of_bees, 9);
    EXPECT_EQ(cell("yard_hives", QStringLiteral("SC-20"), 3), QStringLiteral("9"));
}

TEST_F(YardsRoom, the_next_hives_go_on_where_the_last_ended) {
    made_yard();
    press("yard_add_hives");
    EXPECT_EQ(find<QLineEdit>("hives_prefix")->text(), QStringLiteral("SC-"));
    EXPECT_EQ(find<QLineEdit>("hives_first")->text(), QStringLiteral("21"));
}

TEST_F(YardsRoom, a_row_without_numbers_is_one_line) {
    const YardId yard = made_yard(2);
    press("yard_add_hives");
    auto* manner = find<QWidget>("hives_manner");
    manner->setFocus();
    key(Qt::Key_Down);
    type_into("hives_in_row", QStringLiteral("12"));
    type_into("hives_frames", QStringLiteral("96"));
    ctrl_enter();
    const auto stand = hives(bench.book(), yard);
    ASSERT_EQ(stand.size(), 3U);
    EXPECT_EQ(std::count_if(stand.begin(), stand.end(), [](const HiveEntry& hive) { return hive.hives == 12 && hive.frames_of_bees == 96; }), 1);
    EXPECT_EQ(cell("yard_hives", QStringLiteral("row of 12"), 3), QStringLiteral("96"));
}

TEST_F(YardsRoom, what_is_refused_stays_as_it_was_typed) {
    made_yard(2);
    press("yards_new");
    type_into("yard_name", QStringLiteral("Sallow Carr"));
    ctrl_enter();
    ASSERT_NE(dialog(), nullptr) << "a second yard of the same name was taken";
    EXPECT_EQ(find<QLineEdit>("yard_name")->text(), QStringLiteral("Sallow Carr"));
    EXPECT_EQ(yards(bench.book()).size(), 1U);
}

TEST_F(YardsRoom, boxes_and_frames_are_typed_over_in_the_table) {
    const YardId yard = made_yard(3);
    type_cell("yard_hives", QStringLiteral("SC-02"), 3, QStringLiteral("11"));
    EXPECT_EQ(hives(bench.book(), yard)[1].frames_of_bees, 11);
    // A text that does not read stays in its cell and is said.
    type_cell("yard_hives", QStringLiteral("SC-03"), 3, QStringLiteral("1x"));
    EXPECT_EQ(cell("yard_hives", QStringLiteral("SC-03"), 3), QStringLiteral("1x"));
    EXPECT_EQ(hives(bench.book(), yard)[2].frames_of_bees, 8);
    EXPECT_TRUE(words("yard_complaint").startsWith(QStringLiteral("SC-03")));
}

TEST_F(YardsRoom, a_yards_times_are_kept_and_shown_when_a_round_meets_them) {
    const YardId yard = made_yard(3);
    made_round(yard, 3);
    press("yard_times");
    type_into("time_what", QStringLiteral("lime"));
    type_into("time_from", QStringLiteral("2026-08-01"));
    type_into("time_to", QStringLiteral("2026-08-20"));
    ctrl_enter();
    ASSERT_EQ(yard_times(bench.book(), yard).size(), 1U);
    press("yard_strips_in");
    EXPECT_TRUE(words("visit_page").contains(QStringLiteral("lime 1 to 20 Aug"))) << words("visit_page").toStdString();
}

TEST_F(YardsRoom, a_round_asks_for_what_set_up_does_not_say) {
    const YardId yard = made_yard();
    // No round waits here: strips in leads to planning one.
    press("yard_strips_in");
    ASSERT_TRUE(is_seen("round_form"));
    EXPECT_TRUE(find<QCheckBox>("round_yard_1")->isChecked());
    EXPECT_TRUE(words("round_form").contains(QStringLiteral("holds for this round only"))) << words("round_form").toStdString();
    type_into("round_name", QStringLiteral("Late summer"));
    ctrl_enter();
    ASSERT_NE(dialog(), nullptr) << "a round without its pull window was taken";
    type_into("round_pull_from", QStringLiteral("42"));
    type_into("round_pull_by", QStringLiteral("56"));
    type_into("round_withdrawal", QStringLiteral("14"));
    EXPECT_TRUE(words("round_form").contains(QStringLiteral("<b>20</b> hives want <b>80</b> strips"))) << words("round_form").toStdString();
    ctrl_enter();
    const auto planned = rounds(bench.book());
    ASSERT_EQ(planned.size(), 1U);
    EXPECT_EQ(planned.front().strips_planned, 80);
    // Set-up still says nothing, and the visit stands open.
    EXPECT_FALSE(figure(bench.book(), Figure::pull_from_days));
    EXPECT_TRUE(is_seen("visit_grid"));
    EXPECT_EQ(place->title(), QStringLiteral("Sallow Carr: Late summer"));
    EXPECT_EQ(hives(bench.book(), yard).size(), 20U);
}

TEST_F(YardsRoom, hives_move_with_what_hangs_in_them) {
    const YardId yard = made_yard(3);
    YardEntry other;
    other.name = QStringLiteral("Hill top");
    const YardId to = must(save_yard(bench.book(), other, on_day(0)));
    settle();
    place->open({ui::PlaceName::yards, {}, {yard.value}, {}});
    settle();
    find<QTableView>("yard_hives")->setFocus();
    key(Qt::Key_Space);
    EXPECT_EQ(place->title(), QStringLiteral("Sallow Carr"));
    EXPECT_EQ(hives(bench.book(), to).size(), 0U);
    must(move_hives(bench.book(), {hives(bench.book(), yard).front().id}, to, std::nullopt, on_day(3)));
    settle();
    EXPECT_EQ(find<QTableView>("yard_hives")->model()->rowCount(), 2);
}

TEST_F(YardsRoom, intents_open_what_they_name) {
    const YardId yard = made_yard(3);
    made_round(yard);
    const auto wish = [this](const char* task, std::vector<qint64> ids) {
        place->open({ui::PlaceName::yards, QLatin1String(task), std::move(ids), {}});
        settle();
    };
    wish("strips_in", {yard.value});
    EXPECT_TRUE(is_seen("visit_grid"));
    wish("strips_out", {yard.value});
    EXPECT_TRUE(is_seen("pull_grid"));
    wish("count", {yard.value});
    EXPECT_TRUE(is_seen("count_grid"));
    wish("hive", {hives(bench.book(), yard)[1].id.value});
    EXPECT_TRUE(is_seen("hive_story"));
    EXPECT_TRUE(words("hive_story").startsWith(QStringLiteral("SC-02"))) << words("hive_story").toStdString();
    wish("plan_round", {yard.value});
    EXPECT_TRUE(is_seen("round_form"));
    dialog()->reject();
    settle();
    wish("new_yard", {});
    EXPECT_TRUE(is_seen("yard_form"));
}

} // namespace
} // namespace soakbook::tests
