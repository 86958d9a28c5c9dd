// SPDX-License-Identifier: GPL-3.0-or-later
// What Due knows from the window: forms that were begun, and what other programs changed; each row leads there, and goes when
// it is done.
#include "tests/ui/bad_input/room.h"

#include "core/work/watch.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/drafts.h"
#include "ui/parts/form.h"
#include "ui/parts/looked_at.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/frame.h"
#include "ui/shell/places.h"

#include <QApplication>
#include <QCheckBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace soakbook::tests {

namespace {

class Waiting : public testing::Test {
protected:
    Waiting() : room(QStringLiteral("en")), drafts(new ui::Drafts(folder.path(), work::workbook_uid(room.book()), &room.desk())) {
        ui::set_outside_looked_at(work::workbook_uid(room.book()), 0);
        frame = room.show(new ui::Frame(room.desk(), ui::make_places(room.desk(), {QString(), {}, {}, {}})));
    }
    /// The button of the row whose words begin so, read aloud.
    QPushButton* row(const QString& begins) {
        frame->go_to(ui::PlaceName::due);
        frame->refresh();
        room.settle();
        for (QPushButton* button : frame->findChildren<QPushButton*>()) {
            if (button->objectName().startsWith(QLatin1String("due_")) && button->accessibleName().startsWith(begins))
                return button;
        }
        return nullptr;
    }
    void press(QPushButton* button) {
        button->setFocus(Qt::TabFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
        room.settle();
        room.settle();
    }
    ui::FormFrame* form_with(const char* field) {
        for (ui::FormFrame* form : frame->findChildren<ui::FormFrame*>()) {
            if (form->isVisible() && form->findChild<QWidget*>(QLatin1String(field)) != nullptr)
                return form;
        }
        return nullptr;
    }

    QTemporaryDir folder;
    Room room;
    ui::Drafts* drafts;
    ui::Frame* frame = nullptr;
};

void another_program_moves_a_bag(const QString& path, const char* where) {
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path.toUtf8().constData(), &file), SQLITE_OK);
    const QByteArray sql = QByteArray("UPDATE bag SET stands = '") + where + "' WHERE id = 1";
    EXPECT_EQ(sqlite3_exec(file, sql.constData(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(file);
    sqlite3_close(file);
}

} // namespace

TEST_F(Waiting, a_form_that_was_begun_stands_in_due_until_it_is_entered) {
    EXPECT_EQ(row(QStringLiteral("Go on")), nullptr);
    frame->go({ui::PlaceName::shed, QStringLiteral("reading"), {full_house().warm.value}, {}});
    room.settle();
    ui::FormFrame* form = form_with("reading_probe");
    ASSERT_NE(form, nullptr);
    auto* probe = qobject_cast<QLineEdit*>(form->field(QStringLiteral("probe"))->editor());
    probe->setFocus();
    QTest::keyClicks(probe, QStringLiteral("51"));
    room.settle();
    form->drafts().keep_now();
    QPushButton* going_on = row(QStringLiteral("Go on"));
    ASSERT_NE(going_on, nullptr);
    EXPECT_TRUE(going_on->accessibleName().contains(QStringLiteral("read the tank"))) << going_on->accessibleName().toStdString();
    EXPECT_TRUE(going_on->accessibleName().contains(QStringLiteral("12:00, not entered"))) << going_on->accessibleName().toStdString();
    press(going_on);
    ASSERT_NE(form_with("reading_probe"), nullptr);
    EXPECT_EQ(qobject_cast<QLineEdit*>(form_with("reading_probe")->field(QStringLiteral("probe"))->editor())->text(), QStringLiteral("51")) << "it stands there still";
    form_with("reading_probe")->commit();
    room.settle();
    EXPECT_EQ(row(QStringLiteral("Go on")), nullptr);
}

TEST_F(Waiting, a_form_in_its_page_that_is_left_twice_shows_the_workbook_again) {
    frame->go({ui::PlaceName::shed, QStringLiteral("reading"), {full_house().warm.value}, {}});
    room.settle();
    auto* probe = qobject_cast<QLineEdit*>(form_with("reading_probe")->field(QStringLiteral("probe"))->editor());
    probe->setFocus();
    QTest::keyClicks(probe, QStringLiteral("51"));
    room.settle();
    form_with("reading_probe")->drafts().keep_now();
    QTest::keyClick(probe, Qt::Key_Escape);
    room.settle();
    EXPECT_EQ(probe->text(), QStringLiteral("51"));
    EXPECT_NE(row(QStringLiteral("Go on")), nullptr);
    frame->go_to(ui::PlaceName::shed);
    form_with("reading_probe")->cancel();
    room.settle();
    EXPECT_EQ(probe->text(), QString());
    EXPECT_EQ(row(QStringLiteral("Go on")), nullptr);
}

TEST_F(Waiting, a_form_about_something_that_is_gone_can_be_read_and_thrown_away) {
    ui::Draft draft{{QStringLiteral("reading"), 9999, QStringLiteral("Batch B99: read the tank"), {ui::PlaceName::shed, QStringLiteral("reading"), {9999}, {}}},
                    1, room.desk().now(), {{ui::DraftPart::Kind::text, QStringLiteral("x"), QStringLiteral("12,5 or so"), QStringLiteral("Probe in the liquid"), {}}}};
    ASSERT_TRUE(drafts->keep(draft));
    press(row(QStringLiteral("Go on")));
    QDialog* left = room.dialog();
    ASSERT_NE(left, nullptr);
    ASSERT_EQ(left->objectName(), QStringLiteral("left_draft"));
    EXPECT_EQ(left->findChild<QPlainTextEdit*>(QStringLiteral("left_draft_text"))->toPlainText(), QStringLiteral("Probe in the liquid: 12,5 or so"));
    QTest::keyClick(left, Qt::Key_Return);
    room.settle();
    EXPECT_EQ(drafts->all().size(), 1U) << "it is kept unless somebody says otherwise";
    press(row(QStringLiteral("Go on")));
    room.dialog()->findChild<QPushButton*>(QStringLiteral("left_draft_away"))->click();
    room.settle();
    EXPECT_TRUE(drafts->all().empty());
    EXPECT_EQ(row(QStringLiteral("Go on")), nullptr);
}

TEST_F(Waiting, changes_of_another_program_stand_in_due_until_they_were_looked_at) {
    EXPECT_EQ(row(QStringLiteral("Look at")), nullptr);
    another_program_moves_a_bag(room.path(), "attic");
    another_program_moves_a_bag(room.path(), "barn");
    QPushButton* look = row(QStringLiteral("Look at"));
    ASSERT_NE(look, nullptr);
    EXPECT_TRUE(look->accessibleName().contains(QStringLiteral("2 change"))) << look->accessibleName().toStdString();
    press(look);
    EXPECT_EQ(frame->current_place()->place(), ui::PlaceName::register_);
    EXPECT_TRUE(frame->findChild<QCheckBox*>(QStringLiteral("register_outside"))->isChecked());
    EXPECT_EQ(row(QStringLiteral("Look at")), nullptr);
    another_program_moves_a_bag(room.path(), "shed");
    EXPECT_NE(row(QStringLiteral("Look at")), nullptr) << "a new one";
}

} // namespace soakbook::tests
