// SPDX-License-Identifier: GPL-3.0-or-later
// A hive's story: strips without a round, corrections with a reason, what is made void.
#include "room.h"

#include "core/work/pull.h"
#include "core/work/store_view.h"
#include "core/work/yards_view.h"

#include <QDialog>
#include <QPlainTextEdit>

namespace soakbook::tests {
namespace {

using namespace work;

class Stories : public YardsRoom {
protected:
    Stories() : yard(made_yard(3)) {
        say(Figure::pull_from_days, 42);
        say(Figure::pull_by_days, 56);
        settle();
        hive = hives(bench.book(), yard)[1].id;
        place->open({ui::PlaceName::yards, QStringLiteral("hive"), {hive.value}, {}});
        settle();
    }
    void hang_strips() {
        press("story_place");
        type_into("place_strips", QStringLiteral("4"));
        press("place_supers_on_no");
        ctrl_enter();
    }
    void type_reason(const QString& text) {
        QPlainTextEdit* reason = nullptr;
        for (auto* found : dialog()->findChildren<QPlainTextEdit*>()) {
            reason = found->isVisible() ? found : reason;
        }
        ASSERT_NE(reason, nullptr);
        reason->setFocus();
        QTest::keyClicks(reason, text);
        settle();
    }
    YardId yard;
    HiveId hive;
};

TEST_F(Stories, strips_are_hung_in_one_hive_without_a_round) {
    hang_strips();
    const auto lines = hanging(bench.book(), yard, desk->today());
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines.front().hive, hive);
    EXPECT_TRUE(lines.front().round_name.isEmpty());
    EXPECT_EQ(cell("story_table", QStringLiteral("strips in"), 2), QStringLiteral("4"));
}

TEST_F(Stories, a_correction_wants_its_reason) {
    hang_strips();
    press("story_correct");
    type_into("correction_strips", QStringLiteral("3"));
    ctrl_enter();
    ASSERT_NE(dialog(), nullptr) << "a correction without a reason was taken";
    EXPECT_EQ(hanging(bench.book(), yard, desk->today()).front().strips, 4);
    type_into("correction_why", QStringLiteral("counted again"));
    ctrl_enter();
    EXPECT_EQ(hanging(bench.book(), yard, desk->today()).front().strips, 3);
    EXPECT_EQ(cell("story_table", QStringLiteral("strips in"), 2), QStringLiteral("3"));
}

TEST_F(Stories, strips_made_void_go_back_into_the_bag_and_stay_in_the_story) {
    const auto before = bags(bench.book(), desk->today()).front();
    hang_strips();
    press("story_void");
    type_reason(QStringLiteral("wrong hive"));
    ctrl_enter();
    EXPECT_TRUE(hanging(bench.book(), yard, desk->today()).empty());
    EXPECT_EQ(bag(bench.book(), before.id, desk->today())->left, before.left);
    ASSERT_FALSE(hive_events(bench.book(), hive).empty());
    EXPECT_TRUE(hive_events(bench.book(), hive).front().made_void);
    EXPECT_TRUE(cell("story_table", QStringLiteral("strips in"), 5).contains(QStringLiteral("void")));
}

TEST_F(Stories, pulled_strips_can_be_weighed) {
    hang_strips();
    on(3 + 45);
    press("yard_strips_out");
    ctrl_enter();
    place->open({ui::PlaceName::yards, QStringLiteral("hive"), {hive.value}, {}});
    settle();
    press("story_weigh");
    type_into("pulled_total", QStringLiteral("80"));
    EXPECT_TRUE(words("pulled_weighing_form").contains(QStringLiteral("a strip"))) << words("pulled_weighing_form").toStdString();
    ctrl_enter();
    EXPECT_EQ(dialog(), nullptr);
}

} // namespace
} // namespace soakbook::tests
