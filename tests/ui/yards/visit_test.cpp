// SPDX-License-Identifier: GPL-3.0-or-later
// Strips in: the grid as planned, typed over, refused, asked about, left and come back to.
#include "room.h"

#include "core/work/pull.h"
#include "core/work/store_view.h"
#include "core/work/visit.h"
#include "core/work/yards_view.h"
#include "ui/yards/visit_rows.h"

namespace soakbook::tests {
namespace {

using namespace work;

class Visits : public YardsRoom {
protected:
    Visits() : yard(made_yard()), round(made_round(yard)) {
        press("yard_strips_in");
        settle();
    }
    int hanging_strips() {
        int strips = 0;
        for (const PullLine& line : hanging(bench.book(), yard, desk->today())) {
            strips += line.strips;
        }
        return strips;
    }
    void say_supers_off() { press("visit_supers_on_no"); }

    YardId yard;
    RoundId round;
};

TEST_F(Visits, a_yard_done_as_planned_is_one_key) {
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-07"), ui::visit_strips), QStringLiteral("4"));
    say_supers_off();
    find<QTableView>("visit_grid")->setFocus();
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 80);
    EXPECT_FALSE(is_seen("visit_grid"));
    EXPECT_TRUE(words("yard_news").contains(QStringLiteral("80 strips in"))) << words("yard_news").toStdString();
    EXPECT_EQ(cell("yard_hives", QStringLiteral("SC-07"), 4), QStringLiteral("4"));
}

TEST_F(Visits, exceptions_are_typed_over_with_digits_and_enter_goes_down) {
    auto* grid = find<QTableView>("visit_grid");
    ASSERT_TRUE(grid->hasFocus());
    ASSERT_EQ(grid->currentIndex().column(), ui::visit_strips);
    key(Qt::Key_Down);
    keys(QStringLiteral("3"));
    key(Qt::Key_Return);
    EXPECT_EQ(grid->currentIndex().row(), 2);
    keys(QStringLiteral("5"));
    key(Qt::Key_Return);
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-02"), ui::visit_strips), QStringLiteral("3"));
    EXPECT_TRUE(words("visit_page").contains(QStringLiteral("2 exceptions"))) << words("visit_page").toStdString();
    // What was typed over stands out; what was not does not.
    EXPECT_TRUE(grid->model()->index(1, ui::visit_strips).data(Qt::BackgroundRole).isValid());
    EXPECT_FALSE(grid->model()->index(0, ui::visit_strips).data(Qt::BackgroundRole).isValid());
    say_supers_off();
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 80 - 1 + 1);
    EXPECT_EQ(hive_lines(bench.book(), yard, desk->today())[1].strips, 3);
    EXPECT_EQ(hive_lines(bench.book(), yard, desk->today())[2].strips, 5);
}

TEST_F(Visits, ctrl_enter_in_an_open_cell_takes_what_is_being_typed) {
    say_supers_off();
    auto* grid = find<QTableView>("visit_grid");
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(0, ui::visit_strips));
    keys(QStringLiteral("2"));
    ctrl_enter();
    EXPECT_EQ(hive_lines(bench.book(), yard, desk->today())[0].strips, 2);
    EXPECT_EQ(hanging_strips(), 78);
}

TEST_F(Visits, a_dead_hive_gets_no_strips_and_is_dead_afterwards) {
    say_supers_off();
    auto* grid = find<QTableView>("visit_grid");
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(3, ui::visit_state));
    key(Qt::Key_D);
    key(Qt::Key_Return);
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-04"), ui::visit_state), QStringLiteral("dead"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-04"), ui::visit_strips), QStringLiteral("0"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-04"), ui::visit_bag), QString());
    type_cell("visit_grid", QStringLiteral("SC-04"), ui::visit_note, QStringLiteral("robbed"));
    ctrl_enter();
    const auto dead = hives(bench.book(), yard, true);
    int found = 0;
    for (const HiveEntry& hive : dead) {
        found += hive.state == StateOfHive::dead ? 1 : 0;
    }
    EXPECT_EQ(found, 1);
    EXPECT_EQ(hanging_strips(), 76);
}

TEST_F(Visits, a_day_gone_by_is_an_entry_made_late) {
    on(8);
    say_supers_off();
    type_into("visit_on", QStringLiteral("-2"));
    find<QTableView>("visit_grid")->setFocus();
    ctrl_enter();
    const auto lines = hanging(bench.book(), yard, desk->today());
    ASSERT_EQ(lines.size(), 20U);
    EXPECT_EQ(lines.front().placed_on, maths::days_after(first_day, 6));
    EXPECT_TRUE(hive_events(bench.book(), lines.front().hive).front().written_late);
}

TEST_F(Visits, what_the_store_cannot_give_is_refused_at_its_row) {
    say_supers_off();
    type_cell("visit_grid", QStringLiteral("SC-06"), ui::visit_strips, QStringLiteral("2000"));
    type_cell("visit_grid", QStringLiteral("SC-02"), ui::visit_strips, QStringLiteral("3"));
    ctrl_enter();
    EXPECT_TRUE(words("visit_complaint").startsWith(QStringLiteral("SC-06: "))) << words("visit_complaint").toStdString();
    auto* grid = find<QTableView>("visit_grid");
    EXPECT_EQ(grid->currentIndex().row(), 5);
    EXPECT_EQ(grid->currentIndex().column(), ui::visit_strips);
    EXPECT_TRUE(grid->hasFocus());
    // Nothing is lost, nothing was written.
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-06"), ui::visit_strips), QStringLiteral("2000"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-02"), ui::visit_strips), QStringLiteral("3"));
    EXPECT_EQ(hanging_strips(), 0);
    type_cell("visit_grid", QStringLiteral("SC-06"), ui::visit_strips, QStringLiteral("4"));
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 79);
}

TEST_F(Visits, a_text_that_does_not_read_stays_in_its_cell_and_enters_nothing) {
    say_supers_off();
    type_cell("visit_grid", QStringLiteral("SC-05"), ui::visit_strips, QStringLiteral("four"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-05"), ui::visit_strips), QStringLiteral("four"));
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 0);
    EXPECT_TRUE(words("visit_complaint").startsWith(QStringLiteral("SC-05: "))) << words("visit_complaint").toStdString();
    // Emptied, the cell goes back to what was planned.
    auto* grid = find<QTableView>("visit_grid");
    grid->setCurrentIndex(grid->model()->index(4, ui::visit_strips));
    key(Qt::Key_F2);
    QApplication::focusWidget()->setFocus();
    key(Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Delete);
    key(Qt::Key_Return);
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-05"), ui::visit_strips), QStringLiteral("4"));
}

TEST_F(Visits, supers_nobody_spoke_of_are_asked_for) {
    find<QTableView>("visit_grid")->setFocus();
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 0);
    EXPECT_TRUE(is_seen("visit_grid"));
    say_supers_off();
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 80);
}

TEST_F(Visits, supers_on_are_asked_about_once_and_kept_with_the_answer) {
    press("visit_supers_on_yes");
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 0);
    QTest::qWait(350);
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 80);
}

TEST_F(Visits, what_is_typed_after_a_question_is_not_left_out_of_the_answer) {
    press("visit_supers_on_yes");
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 0) << "asked first";
    QTest::qWait(350);
    auto* grid = find<QTableView>("visit_grid");
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(0, ui::visit_strips));
    keys(QStringLiteral("2"));
    for (int i = 0; i < 2 && hanging_strips() == 0; ++i) {
        ctrl_enter();
        QTest::qWait(350);
    }
    EXPECT_EQ(hanging_strips(), 78);
}

TEST_F(Visits, a_cell_that_is_refused_while_it_is_open_says_why) {
    say_supers_off();
    auto* grid = find<QTableView>("visit_grid");
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(1, ui::visit_strips));
    keys(QStringLiteral("x"));
    ctrl_enter();
    EXPECT_EQ(hanging_strips(), 0);
    EXPECT_TRUE(words("visit_complaint").startsWith(QStringLiteral("SC-02: "))) << words("visit_complaint").toStdString();
}

TEST_F(Visits, what_was_typed_is_there_again_after_going_back) {
    type_cell("visit_grid", QStringLiteral("SC-03"), ui::visit_strips, QStringLiteral("1"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(is_seen("visit_grid"));
    press("yard_strips_in");
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-03"), ui::visit_strips), QStringLiteral("1"));
    // And after other work was done meanwhile.
    must(save_yard(bench.book(), {{}, QStringLiteral("Hill top"), {}, {}, true}, on_day(3)));
    settle();
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-03"), ui::visit_strips), QStringLiteral("1"));
}

TEST_F(Visits, frames_of_bees_change_what_is_planned_at_once) {
    type_cell("visit_grid", QStringLiteral("SC-09"), ui::visit_figure, QStringLiteral("12"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-09"), ui::visit_planned), QStringLiteral("5"));
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-09"), ui::visit_strips), QStringLiteral("5"));
    EXPECT_EQ(hives(bench.book(), yard)[8].frames_of_bees, 12);
    EXPECT_FALSE(words("visit_page").contains(QStringLiteral("exceptions")));
}

TEST_F(Visits, a_bag_can_be_chosen_for_one_hive) {
    const auto stock = bags(bench.book(), desk->today());
    ASSERT_GE(stock.size(), 2U);
    auto* grid = find<QTableView>("visit_grid");
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-01"), ui::visit_bag), stock[0].code);
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(0, ui::visit_bag));
    // The list opens at the bag that the cell shows, so that one step down is the next bag.
    key(Qt::Key_F2);
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(cell("visit_grid", QStringLiteral("SC-01"), ui::visit_bag), stock[1].code);
    say_supers_off();
    ctrl_enter();
    // Once that bag is open the others take from it too: no more bags are opened than need be.
    EXPECT_EQ(bag(bench.book(), stock[0].id, desk->today())->placed, 0);
    EXPECT_EQ(bag(bench.book(), stock[1].id, desk->today())->placed, 80);
}

TEST_F(Visits, a_list_of_bags_that_was_only_looked_at_chooses_none) {
    auto* grid = find<QTableView>("visit_grid");
    grid->setFocus();
    const QModelIndex here = grid->model()->index(0, ui::visit_bag);
    grid->setCurrentIndex(here);
    key(Qt::Key_F2);
    key(Qt::Key_Return);
    EXPECT_FALSE(here.data(Qt::BackgroundRole).isValid()) << "stands out as if it had been chosen";
    // A choice goes back to the nearest limit by the list's first entry.
    grid->setCurrentIndex(here);
    key(Qt::Key_F2);
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_TRUE(here.data(Qt::BackgroundRole).isValid());
    grid->setCurrentIndex(here);
    key(Qt::Key_F2);
    key(Qt::Key_Home);
    key(Qt::Key_Return);
    EXPECT_FALSE(here.data(Qt::BackgroundRole).isValid());
}

} // namespace
} // namespace soakbook::tests
