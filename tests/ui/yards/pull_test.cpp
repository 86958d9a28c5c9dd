// SPDX-License-Identifier: GPL-3.0-or-later
// Strips out: all pulled unless typed over, what is missing computed, too early asked about.
#include "room.h"

#include "core/work/pull.h"
#include "core/work/visit.h"
#include "core/work/yards_view.h"
#include "ui/yards/pull_rows.h"

#include <QDialog>

namespace soakbook::tests {
namespace {

using namespace work;

class Pulls : public YardsRoom {
protected:
    Pulls() : yard(made_yard()), round(made_round(yard)) {
        VisitEntry entry;
        entry.round = round;
        entry.yard = yard;
        entry.on = maths::days_after(first_day, 3);
        entry.supers_on = false;
        for (const VisitLine& line : must(plan_visit(bench.book(), round, yard, *entry.on)).lines) {
            entry.rows.push_back({line.hive, line.planned, {}, {}, {}});
        }
        must(enter_visit(bench.book(), entry, on_day(3)));
        settle();
    }
    void open_pull(int n) {
        on(n);
        press("yard_strips_out");
    }
    int hanging_lines() { return static_cast<int>(hanging(bench.book(), yard, desk->today()).size()); }

    YardId yard;
    RoundId round;
};

TEST_F(Pulls, a_whole_yard_comes_out_with_one_key) {
    open_pull(3 + 45);
    EXPECT_EQ(cell("pull_grid", QStringLiteral("SC-01"), ui::pull_day), QStringLiteral("46"));
    EXPECT_EQ(cell("pull_grid", QStringLiteral("SC-01"), ui::pull_pulled), QStringLiteral("4"));
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 0);
    EXPECT_TRUE(words("yard_news").contains(QStringLiteral("80 strips pulled"))) << words("yard_news").toStdString();
}

TEST_F(Pulls, missing_strips_are_what_was_not_pulled) {
    open_pull(3 + 45);
    type_cell("pull_grid", QStringLiteral("SC-05"), ui::pull_pulled, QStringLiteral("3"));
    EXPECT_EQ(cell("pull_grid", QStringLiteral("SC-05"), ui::pull_missing), QStringLiteral("1"));
    EXPECT_TRUE(words("pull_page").contains(QStringLiteral("1 exceptions"))) << words("pull_page").toStdString();
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 0);
    EXPECT_TRUE(words("yard_news").contains(QStringLiteral("79 strips pulled"))) << words("yard_news").toStdString();
    EXPECT_TRUE(words("yard_news").contains(QStringLiteral("missing")));
}

TEST_F(Pulls, counts_that_do_not_add_up_are_refused_at_their_row) {
    open_pull(3 + 45);
    type_cell("pull_grid", QStringLiteral("SC-05"), ui::pull_pulled, QStringLiteral("9"));
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 20);
    EXPECT_TRUE(words("pull_complaint").startsWith(QStringLiteral("SC-05: "))) << words("pull_complaint").toStdString();
    EXPECT_EQ(find<QTableView>("pull_grid")->currentIndex().row(), line_of("pull_grid", QStringLiteral("SC-05")));
    EXPECT_EQ(cell("pull_grid", QStringLiteral("SC-05"), ui::pull_pulled), QStringLiteral("9"));
}

TEST_F(Pulls, an_emptied_cell_leaves_its_strips_in) {
    open_pull(3 + 45);
    auto* grid = find<QTableView>("pull_grid");
    grid->setFocus();
    grid->setCurrentIndex(grid->model()->index(line_of("pull_grid", QStringLiteral("SC-02")), ui::pull_pulled));
    key(Qt::Key_F2);
    key(Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Delete);
    key(Qt::Key_Return);
    EXPECT_EQ(cell("pull_grid", QStringLiteral("SC-02"), ui::pull_pulled), QStringLiteral("stay in"));
    ctrl_enter();
    ASSERT_EQ(hanging_lines(), 1);
    EXPECT_EQ(hanging(bench.book(), yard, desk->today()).front().hive_name, QStringLiteral("SC-02"));
}

TEST_F(Pulls, too_early_is_asked_about_once) {
    open_pull(3 + 20);
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 20);
    QTest::qWait(350);
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 0);
}

TEST_F(Pulls, a_day_gone_by_is_kept) {
    open_pull(3 + 50);
    type_into("pull_on", QStringLiteral("-3"));
    ctrl_enter();
    EXPECT_EQ(hanging_lines(), 0);
    const HiveId hive = hives(bench.book(), yard).front().id;
    EXPECT_EQ(hive_events(bench.book(), hive).front().on, maths::days_after(first_day, 50));
}

} // namespace
} // namespace soakbook::tests
