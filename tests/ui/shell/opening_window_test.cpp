// SPDX-License-Identifier: GPL-3.0-or-later
// The window that says why a workbook is not open, the banner above the pages, and the status line while it is looked through.
#include "core/book/workbook.h"
#include "tests/ui/parts/fixed_clock.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/shell/frame.h"
#include "ui/shell/opening_window.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::ui {

namespace {

OpeningNews news_with(const std::function<void()>& go) {
    return {QStringLiteral("This workbook is damaged"),
            {QStringLiteral("It is damaged."), QStringLiteral("Nothing was changed.")},
            QStringLiteral("/srv/treatments.soakbook"),
            {{QStringLiteral("Look at it"), QStringLiteral("look"), go}, {QStringLiteral("Another"), QStringLiteral("other"), [] {}}}};
}

struct Banners : ::testing::Test {
    QTemporaryDir folder;
    std::unique_ptr<book::Workbook> workbook = std::move(*book::Workbook::create(folder.filePath(QStringLiteral("a.soakbook")), {fixed_clock(), {}, {}, false}));
    Desk desk{*workbook, fixed_clock};
    Frame frame{desk, {}};
    NoticeBar* banner() const { return frame.findChild<NoticeBar*>(QStringLiteral("banner")); }
};

} // namespace

TEST(OpeningWindow, says_everything_and_its_first_way_is_the_one_that_enter_takes) {
    int gone = 0;
    auto* window = new OpeningWindow(news_with([&gone] { ++gone; }));
    window->show();
    QStringList words;
    for (const QLabel* label : window->findChildren<QLabel*>()) {
        words << label->text();
        EXPECT_LE(label->heightForWidth(label->width()), label->height() + 1) << label->text().toStdString();
    }
    EXPECT_TRUE(words.contains(QStringLiteral("It is damaged.")) && words.contains(QStringLiteral("Nothing was changed.")));
    EXPECT_TRUE(window->findChild<QPushButton*>(QStringLiteral("look"))->isDefault());
    QTest::keyClick(window, Qt::Key_Return);
    EXPECT_EQ(gone, 1);
    EXPECT_TRUE(window->isVisible()) << "whoever opened it ends it";
    QSignalSpy left(window, &OpeningWindow::left);
    window->end();
    EXPECT_EQ(left.count(), 0);
}

TEST(OpeningWindow, tells_once_that_it_was_left_without_an_answer) {
    auto* window = new OpeningWindow(news_with([] {}));
    window->show();
    QSignalSpy left(window, &OpeningWindow::left);
    QTest::keyClick(window, Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

TEST_F(Banners, stand_as_long_as_they_are_true_and_have_their_ways_on) {
    frame.show();
    EXPECT_FALSE(banner());
    int gone = 0;
    frame.set_banner(QStringLiteral("Open for looking alone."), {{QStringLiteral("Open it"), QStringLiteral("open_it"), [&gone] { ++gone; }}});
    ASSERT_TRUE(banner());
    EXPECT_TRUE(banner()->isVisible());
    banner()->findChild<QPushButton*>(QStringLiteral("open_it"))->click();
    EXPECT_EQ(gone, 1);
    frame.say(QStringLiteral("Something else."));
    EXPECT_TRUE(banner()->isVisible());
    frame.set_banner(QString());
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(banner());
}

TEST_F(Banners, the_status_line_says_how_far_the_check_has_come_in_place_of_the_copy) {
    StatusFacts facts{QStringLiteral("a.soakbook"), QStringLiteral("Safe copy of today"), {}, 3, QStringLiteral("Being looked through: 40 %")};
    frame.set_status([&facts] { return facts; });
    const auto says = [this](const QString& words) {
        for (const QLabel* label : frame.findChildren<QLabel*>())
            if (label->text() == words && !label->isHidden())
                return true;
        return false;
    };
    EXPECT_TRUE(says(facts.checking));
    EXPECT_FALSE(says(facts.safe_copy));
    const QString checking = std::exchange(facts.checking, {});
    frame.refresh_status();
    EXPECT_TRUE(says(facts.safe_copy));
    EXPECT_FALSE(says(checking));
}

} // namespace soakbook::ui
