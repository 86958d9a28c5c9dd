// SPDX-License-Identifier: GPL-3.0-or-later
// The main job from an empty computer to the exported register, by keys, clicks and file picks alone.
#include "story.h"

#include "app/session.h"

#include <QApplication>
#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QTemporaryDir>

#include <iostream>

#include <gtest/gtest.h>

namespace soakbook::tests {
namespace {

/// A program in which Ctrl+Enter does nothing.
class EatsCtrlEnter : public QObject {
public:
    EatsCtrlEnter() { QApplication::instance()->installEventFilter(this); }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride && event->type() != QEvent::Shortcut)
            return false;
        if (event->type() == QEvent::Shortcut)
            return true;
        const auto* key = static_cast<QKeyEvent*>(event);
        return key->modifiers().testFlag(Qt::ControlModifier) && (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter);
    }
};

} // namespace

TEST(MainJob, goes_from_an_empty_computer_to_the_exported_register) {
    Story story(QStringLiteral(SOAKBOOK_LEFT_WORKBOOK));
    story.welcome_and_a_new_workbook();
    ASSERT_FALSE(HasFatalFailure());
    story.set_up();
    story.deliveries();
    story.mix();
    story.heat();
    story.soak();
    story.weigh_and_correct();
    story.bag_and_label();
    story.leftovers();
    story.a_yard_of_twenty();
    story.strips_in();
    story.an_entry_a_day_late();
    story.one_undo();
    story.pull_list_and_strips_out();
    story.a_correction_with_its_reason();
    story.the_register();
    story.close();
    RecordProperty("keys_of_one_batch_from_mix_to_labels", story.batch_keys());
    RecordProperty("keys_and_clicks_of_one_batch_from_mix_to_labels", story.batch_count());
    std::cout << "One batch from mix to labels: " << story.batch_count() << " keys and clicks, of which " << story.batch_keys()
              << " keys; a tank that ran hot and a weighing put right included.\n";
}

TEST(BrokenKey, without_ctrl_enter_the_first_form_is_not_entered) {
    QTemporaryDir folder;
    Story story(folder.path());
    story.fill_in_the_welcome();
    {
        const EatsCtrlEnter broken;
        story.hands().enter();
    }
    EXPECT_FALSE(QFileInfo::exists(story.workbook()));
    story.hands().enter();
    EXPECT_TRUE(QFileInfo::exists(story.workbook())) << "it was the broken key, and nothing else";
    story.close();
}

TEST(SomebodyElse, of_another_workbook_makes_no_entries_in_this_one) {
    QTemporaryDir folder;
    Story story(folder.path());
    story.welcome_and_a_new_workbook();
    story.set_up();
    story.close();
    const QString copies = folder.filePath(QStringLiteral("copies"));
    {
        app::Session example(app::make_clock(std::nullopt), copies);
        ASSERT_TRUE(example.open_example());
        story.hands().settle();
        EXPECT_FALSE(story.hands().sees(QStringLiteral("nobody chosen"))) << "the example has somebody of its own";
    }
    app::Session own(app::make_clock(std::nullopt), copies);
    ASSERT_TRUE(own.open(story.workbook()));
    story.hands().settle();
    EXPECT_TRUE(story.hands().sees(QStringLiteral("Who makes entries today?"))) << story.hands().words().toStdString();
    EXPECT_TRUE(story.hands().sees(QStringLiteral("Entries by: nobody chosen"))) << story.hands().words().toStdString();
}

} // namespace soakbook::tests
