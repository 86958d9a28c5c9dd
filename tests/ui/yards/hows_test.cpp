// SPDX-License-Identifier: GPL-3.0-or-later
// Each figure of the yards is asked "How?" where it stands, and says its sum with this case's numbers.
#include "room.h"

#include "core/work/count.h"
#include "core/work/pull.h"
#include "core/work/visit.h"
#include "core/work/yards_view.h"
#include "ui/parts/how_button.h"
#include "ui/yards/count_rows.h"
#include "ui/yards/visit_rows.h"

#include <QCheckBox>
#include <QDialog>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using namespace work;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class Hows : public YardsRoom {
protected:
    /// F3 with the keyboard where it is, what is told then, and F3 again.
    std::string how() {
        key(Qt::Key_F3);
        QStringList told;
        for (QWidget* top : QApplication::topLevelWidgets()) {
            for (const ui::HowButton* button : top->findChildren<ui::HowButton*>()) {
                if (button->isVisible() && button->is_open()) {
                    told += button->plain_text();
                }
            }
        }
        key(Qt::Key_F3);
        // Numbers and units are joined by narrow spaces; these tests look at the words.
        return told.join(QLatin1Char('\n')).replace(QChar(0x202f), QLatin1Char(' ')).replace(QChar(0x00a0), QLatin1Char(' ')).toStdString();
    }
    void count(RoundId round, HiveId hive, int mites, int n) {
        CountEntry entry;
        entry.round = round;
        entry.kind = MiteCountKind::wash;
        entry.rows.push_back({hive, mites, 1000, {}, {}});
        must(enter_counts(bench.book(), entry, on_day(n)));
    }
    /// Four strips in each hive of the yard on day 10, out again on day 60.
    void treat(RoundId round, YardId yard) {
        VisitEntry visit;
        visit.round = round;
        visit.yard = yard;
        visit.on = maths::days_after(first_day, 10);
        visit.supers_on = false;
        for (const HiveEntry& hive : hives(bench.book(), yard)) {
            visit.rows.push_back({hive.id, hive.untreated ? 0 : 4, {}, {}, {}});
        }
        must(enter_visit(bench.book(), visit, on_day(10)));
    }
    void pull(YardId yard) {
        PullEntry out;
        for (const PullLine& line : hanging(bench.book(), yard, maths::days_after(first_day, 60))) {
            out.rows.push_back({line.placement, {}, {}, {}});
        }
        must(enter_pull(bench.book(), out, on_day(60)));
    }
    void leave_untreated(HiveId id) {
        HiveEntry hive = *work::hive(bench.book(), id);
        hive.untreated = true;
        must(save_hive(bench.book(), hive, on_day(1)));
    }
    void show_rounds(RoundId round) {
        place->open({ui::PlaceName::yards, QStringLiteral("round"), {round.value}, {}});
        settle();
    }
};

TEST_F(Hows, a_round_that_is_planned_tells_its_doses_and_its_days) {
    // A strip for 2.5 frames: 8 frames get 4, so twenty hives 80. Common practice, no source.
    const YardId yard = made_yard();
    say(Figure::pull_from_days, 42);
    say(Figure::pull_by_days, 56);
    say(Figure::withdrawal_days, 14);
    place->open({ui::PlaceName::yards, QStringLiteral("plan_round"), {yard.value}, {}});
    settle();
    QApplication::setActiveWindow(dialog());
    settle();
    type_into("round_name", QStringLiteral("Late summer"));
    EXPECT_THAT(how(), AllOf(HasSubstr("(160 ÷ 20) ÷ 2.5, rounded up, × 20 = 80"), HasSubstr("+ 42 (days)"), HasSubstr("+ 56 (days)"),
                             HasSubstr("the label or the vet decides")));
}

TEST_F(Hows, strips_in_tell_the_dose_of_the_hive_with_the_keyboard) {
    const YardId yard = made_yard(3);
    const HiveEntry other = hives(bench.book(), yard)[1];
    HiveEntry strong = other;
    strong.frames_of_bees = 11;
    must(save_hive(bench.book(), strong, on_day(1)));
    made_round(yard);
    press("yard_strips_in");
    auto* grid = find<QTableView>("visit_grid");
    ASSERT_TRUE(grid->hasFocus());
    EXPECT_THAT(how(), AllOf(HasSubstr("SC-01"), HasSubstr("(8 ÷ 1) ÷ 2.5, rounded up, × 1 = 4"), HasSubstr("+ 42 (days)")));
    key(Qt::Key_Down);
    EXPECT_THAT(how(), AllOf(HasSubstr("SC-02"), HasSubstr("(11 ÷ 1) ÷ 2.5, rounded up, × 1 = 5"), Not(HasSubstr("SC-01"))));
    // An open panel goes on with the keyboard.
    key(Qt::Key_F3);
    key(Qt::Key_Up);
    EXPECT_THAT(words("visit_page").toStdString(), HasSubstr("(8 ÷ 1)"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(is_seen("visit_grid")) << "Esc goes back as ever";
}

TEST_F(Hows, a_count_tells_its_rate_its_range_and_the_threshold) {
    // 9 of 300: 3 %, Wilson 1.6 to 5.6 %: Newcombe 1998, Stat. Med. 17:857.
    made_yard(2);
    say(Figure::mite_threshold, 20'000);
    settle();
    press("yard_count");
    EXPECT_FALSE(is_seen("count_how")) << "nothing was counted yet";
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("9"));
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_bees, QStringLiteral("300"));
    EXPECT_THAT(cell("count_grid", QStringLiteral("SC-01"), ui::count_rate).toStdString(), HasSubstr("perhaps over your threshold"));
    auto* grid = find<QTableView>("count_grid");
    grid->setCurrentIndex(grid->model()->index(0, ui::count_mites));
    EXPECT_THAT(how(), AllOf(HasSubstr("9 ÷ 300 = 3"), HasSubstr("From 1.6 % to 5.6 %"), HasSubstr("Your threshold: 2 %"), HasSubstr("Wilson")));
    type_cell("count_grid", QStringLiteral("SC-01"), ui::count_mites, QStringLiteral("30"));
    EXPECT_THAT(cell("count_grid", QStringLiteral("SC-01"), ui::count_rate).toStdString(),
                AllOf(HasSubstr(", over your threshold"), Not(HasSubstr("perhaps"))));
    ctrl_enter();
    // Entered, it stands in the hive's story, and is asked there.
    place->open({ui::PlaceName::yards, QStringLiteral("hive"), {hives(bench.book(), {})[0].id.value}, {}});
    settle();
    EXPECT_THAT(words("hive_story").toStdString(), HasSubstr("over your threshold"));
    find<QTableView>("story_table")->setFocus();
    EXPECT_THAT(how(), AllOf(HasSubstr("SC-01"), HasSubstr("30 ÷ 300 = 10")));
}

TEST_F(Hows, the_pull_window_is_told_for_the_hive_that_is_chosen) {
    const YardId yard = made_yard(2);
    treat(made_round(yard, 10), yard);
    on(12);
    place->open({ui::PlaceName::yards, QStringLiteral("hive"), {hives(bench.book(), yard)[1].id.value}, {}});
    settle();
    find<QTableView>("yard_hives")->setFocus();
    EXPECT_THAT(how(), AllOf(HasSubstr("SC-02"), HasSubstr("13 Aug 2026 + 42 (days) = 24 Sep 2026"), HasSubstr("+ 56 (days) = 8 Oct 2026")));
    press("yard_strips_out");
    find<QTableView>("pull_grid")->setFocus();
    EXPECT_THAT(how(), AllOf(HasSubstr("SC-01"), HasSubstr("13 Aug 2026 + 42 (days)")));
}

// Treated 300 to 30, untreated 500 to 550 is 90.9091 %: Henderson & Tilton 1955, J. Econ. Entomol. 48:157, by its formula.
TEST_F(Hows, a_round_tells_its_change_of_mites_against_untreated_hives) {
    const YardId yard = made_yard(2);
    const auto both = hives(bench.book(), yard);
    leave_untreated(both[1].id);
    const RoundId round = made_round(yard, 10);
    show_rounds(round);
    EXPECT_FALSE(is_seen("round_mites")) << "before strips went in there is nothing to say";
    count(round, both[0].id, 300, 9);
    count(round, both[1].id, 500, 9);
    treat(round, yard);
    on(12);
    show_rounds(round);
    EXPECT_THAT(words("round_mites").toStdString(), HasSubstr("cannot be computed"));
    EXPECT_FALSE(is_seen("round_mites_how"));
    pull(yard);
    count(round, both[0].id, 30, 65);
    on(66);
    show_rounds(round);
    EXPECT_THAT(words("round_mites").toStdString(), AllOf(HasSubstr("90"), HasSubstr("fewer mites in 1 treated"), HasSubstr("says nothing of how well")));
    count(round, both[1].id, 550, 65);
    on(66);
    EXPECT_THAT(words("round_mites").toStdString(), AllOf(HasSubstr("91"), HasSubstr("than without strips")));
    find<QTableView>("rounds_yards")->setFocus();
    EXPECT_THAT(how(), AllOf(HasSubstr("1 − (3 % × 50 %) ÷ (30 % × 55 %) = 90.9 %"), HasSubstr("Henderson & Tilton 1955")));
}

TEST_F(Hows, no_mites_before_leave_no_change_to_compute) {
    const YardId yard = made_yard(1);
    const HiveId hive = hives(bench.book(), yard)[0].id;
    const RoundId round = made_round(yard, 10);
    count(round, hive, 0, 9);
    treat(round, yard);
    pull(yard);
    count(round, hive, 4, 65);
    on(66);
    show_rounds(round);
    EXPECT_THAT(words("round_mites").toStdString(), AllOf(HasSubstr("cannot be computed"), HasSubstr("had none before")));
}

TEST_F(Hows, a_round_without_a_yard_leads_to_the_first_one) {
    place->open({ui::PlaceName::yards, QStringLiteral("plan_round"), {}, {}});
    settle();
    QDialog* plan = dialog();
    ASSERT_NE(plan, nullptr);
    QApplication::setActiveWindow(plan);
    type_into("round_name", QStringLiteral("Late summer"));
    press("round_first_yard");
    QApplication::setActiveWindow(find<QDialog>("yard_form"));
    settle();
    type_into("yard_name", QStringLiteral("Sallow Carr"));
    key(Qt::Key_Return, Qt::ControlModifier);
    settle();
    ASSERT_EQ(yards(bench.book()).size(), 1U);
    EXPECT_FALSE(is_seen("yard_form"));
    EXPECT_FALSE(is_seen("round_first_yard"));
    EXPECT_EQ(find<QLineEdit>("round_name")->text(), QStringLiteral("Late summer")) << "what was typed still stands";
    const QByteArray box = QByteArrayLiteral("round_yard_") + QByteArray::number(yards(bench.book()).front().id.value);
    EXPECT_TRUE(find<QCheckBox>(box.constData())->isChecked());
}

} // namespace
} // namespace soakbook::tests
