// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/find_box.h"

#include "ui/parts/side_list.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

class Finding : public testing::Test {
protected:
    Finding() : box(new FindBox(&window)) {
        window.resize(600, 400);
        box->resize(300, 36);
        box->set_find([this](const QString& text) {
            asked << text;
            FindAnswer answer;
            if (text.startsWith(QStringLiteral("S5"))) {
                answer.hits.push_back({QStringLiteral("S52E"), QStringLiteral("bag"), Intent{PlaceName::store, QStringLiteral("bag"), {52}, {}}});
                answer.hits.push_back({QStringLiteral("S53A"), QStringLiteral("bag"), Intent{PlaceName::store, QStringLiteral("bag"), {53}, {}}});
            } else if (text == QStringLiteral("S9")) {
                answer.hits.push_back({QStringLiteral("S9"), QStringLiteral("undone"), std::nullopt});
            } else {
                answer.why_none = QStringLiteral("Nothing has this code or name.");
            }
            return answer;
        });
        window.show();
        QApplication::setActiveWindow(&window);
        box->take_focus();
        QObject::connect(box, &FindBox::found, box, [this](const Intent& intent) { found.push_back(intent); });
    }

    QWidget window;
    FindBox* box;
    QStringList asked;
    std::vector<Intent> found;
};

TEST_F(Finding, a_scanned_code_with_its_enter_goes_there) {
    QTest::keyClicks(box, QStringLiteral("S52E"));
    QTest::keyClick(box, Qt::Key_Return);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().ids, std::vector<qint64>{52});
    EXPECT_TRUE(box->text().isEmpty());
}

TEST_F(Finding, down_chooses_another) {
    QTest::keyClicks(box, QStringLiteral("S5"));
    QTest::keyClick(box, Qt::Key_Down);
    QTest::keyClick(box, Qt::Key_Down);
    QTest::keyClick(box, Qt::Key_Return);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().ids, std::vector<qint64>{53});
}

TEST_F(Finding, nothing_found_is_said_and_the_text_stays) {
    QTest::keyClicks(box, QStringLiteral("zzz"));
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_TRUE(found.empty());
    EXPECT_EQ(box->text(), QStringLiteral("zzz"));
    EXPECT_EQ(box->accessibleDescription(), QStringLiteral("Nothing has this code or name."));
    EXPECT_TRUE(window.findChild<SideList*>()->isVisible());
    QTest::keyClick(box, Qt::Key_Escape);
    EXPECT_FALSE(window.findChild<SideList*>()->isVisible());
}

TEST_F(Finding, what_leads_nowhere_is_shown_and_not_left) {
    QTest::keyClicks(box, QStringLiteral("S9"));
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_TRUE(found.empty());
    EXPECT_EQ(box->text(), QStringLiteral("S9"));
}

TEST_F(Finding, an_empty_box_asks_nothing) {
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_TRUE(found.empty());
}

TEST_F(Finding, a_click_in_the_list_goes_there) {
    QTest::keyClicks(box, QStringLiteral("S5"));
    auto* list = window.findChild<SideList*>();
    ASSERT_NE(list, nullptr);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(1, 0)).center());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().ids, std::vector<qint64>{53});
}

} // namespace
} // namespace soakbook::ui
