// SPDX-License-Identifier: GPL-3.0-or-later
// Another copy of the workbook beside this one, by keys.
#include "tests/ui/bad_input/room.h"

#include "core/work/bag.h"
#include "core/work/setup.h"
#include "core/work/watch.h"
#include "ui/safekeeping/comparison_window.h"
#include "ui/safekeeping/entry_list.h"
#include "ui/safekeeping/record_differences.h"
#include "ui/parts/form.h"

#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

class Comparisons : public testing::Test {
protected:
    Comparisons() : room(QStringLiteral("en")), stick(room.new_path()) { EXPECT_TRUE(QFile::copy(room.path(), stick)); }

    template <class F> void in_the_other(F&& f) {
        auto book = book::Workbook::open(stick);
        ASSERT_TRUE(book);
        f(**book);
    }
    static void enter_person(book::Workbook& book, const char* name, int minute = 0) {
        must(work::save_person(book, {{}, QLatin1String(name), true}, on_day(FullHouse::today, 9, minute)));
    }
    QDialog* open() {
        ui::open_comparison(room.desk(), stick, &room.window());
        room.settle();
        return room.dialog();
    }
    template <class W> W* part(const char* name) const { return room.dialog()->findChild<W*>(QLatin1String(name)); }
    QString text(const char* label) const { return part<QLabel>(label)->text(); }
    ui::FormFrame* form() const { return part<ui::FormFrame>("take_over_form"); }
    void type_reason(const QString& words) {
        QWidget* editor = form()->field(QStringLiteral("reason"))->editor();
        editor->setFocus();
        QTest::keyClicks(editor, words);
        room.settle();
    }
    void enter() {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
        room.settle();
    }
    bool holds(const char* name) {
        const auto people = work::people(room.book());
        return std::any_of(people.begin(), people.end(), [name](const work::PersonLine& person) { return person.name == QLatin1String(name); });
    }
    Room room;
    QString stick;
};

} // namespace

TEST_F(Comparisons, of_the_same_entries_say_so_and_offer_nothing) {
    open();
    EXPECT_EQ(text("comparison_sentence"), QStringLiteral("Both hold the same entries."));
    EXPECT_EQ(form(), nullptr);
    EXPECT_FALSE(part<ui::EntryList>("entries_there")->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    room.settle();
    EXPECT_EQ(room.dialog(), nullptr);
}

TEST_F(Comparisons, with_an_older_copy_name_what_is_missing_there) {
    enter_person(room.book(), "Bea");
    enter_person(room.book(), "Cid", 5);
    open();
    EXPECT_TRUE(text("comparison_sentence").contains(QStringLiteral("2 entries are missing there"))) << text("comparison_sentence").toStdString();
    EXPECT_EQ(part<ui::EntryList>("entries_here")->topLevelItemCount(), 2);
    EXPECT_EQ(form(), nullptr);
    EXPECT_GT(part<ui::RecordDifferences>("record_differences")->topLevelItemCount(), 0);
}

TEST_F(Comparisons, take_over_what_stands_only_there_with_a_reason) {
    in_the_other([](book::Workbook& book) {
        enter_person(book, "Bea");
        enter_person(book, "Cid", 5);
    });
    enter_person(room.book(), "Dan");
    open();
    EXPECT_EQ(form()->primary()->text(), QStringLiteral("Take over 2 entries"));
    // The second one is left out with the space bar.
    auto* list = part<ui::EntryList>("entries_there");
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Space);
    room.settle();
    EXPECT_EQ(list->ticked().size(), 1U);
    // Without a reason nothing is written, and the keyboard goes where it is missing.
    enter();
    EXPECT_FALSE(holds("Bea"));
    EXPECT_FALSE(form()->field(QStringLiteral("reason"))->complaint().isEmpty());
    type_reason(QStringLiteral("written on the road"));
    enter();
    EXPECT_TRUE(holds("Bea"));
    EXPECT_FALSE(holds("Cid"));
    EXPECT_TRUE(holds("Dan"));
    EXPECT_TRUE(text("comparison_answer").startsWith(QStringLiteral("1 entr"))) << text("comparison_answer").toStdString();
    EXPECT_EQ(list->ticked().size(), 1U);
    enter();
    EXPECT_FALSE(holds("Cid")) << "the reason was typed for the first alone";
}

TEST_F(Comparisons, say_which_entry_stands_on_one_that_is_left_out) {
    in_the_other([this](book::Workbook& book) {
        const auto bags = must(work::reserve_labels(book, full_house().weighed, 1, on_day(FullHouse::today, 9)));
        must(work::void_bag(book, bags.bags.front(), because(QStringLiteral("spoilt"), FullHouse::today, 9, 30)));
    });
    open();
    auto* list = part<ui::EntryList>("entries_there");
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Space);
    room.settle();
    EXPECT_TRUE(part<QLabel>("stands_on")->isVisible());
    EXPECT_TRUE(text("stands_on").contains(QStringLiteral("rests on"))) << text("stands_on").toStdString();
    EXPECT_FALSE(form()->primary()->isEnabled());
    QTest::keyClick(list, Qt::Key_Space);
    room.settle();
    EXPECT_FALSE(part<QLabel>("stands_on")->isVisible());
    EXPECT_TRUE(form()->primary()->isEnabled());
}

TEST_F(Comparisons, let_a_record_that_was_changed_in_both_be_chosen) {
    const auto rename = [](book::Workbook& book, const char* name, int minute) {
        work::Operation operation = work::operation(book);
        operation.name = QLatin1String(name);
        must(work::set_operation(book, operation, on_day(FullHouse::today, 9, minute)));
    };
    rename(room.book(), "Upper bench", 0);
    in_the_other([&](book::Workbook& book) { rename(book, "Lower bench", 5); });
    open();
    auto* records = part<ui::RecordDifferences>("record_differences");
    part<ui::EntryList>("entries_there")->setFocus();
    room.settle();
    ASSERT_GT(records->topLevelItemCount(), 0);
    records->setFocus();
    records->setCurrentItem(records->topLevelItem(0));
    EXPECT_TRUE(records->topLevelItem(0)->text(1).contains(QStringLiteral("stays as it is")));
    QTest::keyClick(records, Qt::Key_Space);
    room.settle();
    EXPECT_TRUE(records->topLevelItem(0)->text(1).contains(QStringLiteral("as it is there")));
    type_reason(QStringLiteral("theirs is right"));
    enter();
    EXPECT_EQ(work::operation(room.book()).name, QStringLiteral("Lower bench")) << text("comparison_answer").toStdString();
    // Nothing is left to take over: the way out takes the keyboard.
    EXPECT_FALSE(form()->isVisible());
    EXPECT_TRUE(part<QPushButton>("comparison_close")->hasFocus());
}

TEST_F(Comparisons, of_what_is_no_copy_say_why) {
    QFile page(stick);
    ASSERT_TRUE(page.open(QIODevice::WriteOnly));
    page.write("<html>");
    page.close();
    open();
    EXPECT_TRUE(text("comparison_sentence").contains(QStringLiteral("not a Soakbook workbook")));
    EXPECT_EQ(part<ui::EntryList>("entries_there"), nullptr);
}

} // namespace soakbook::tests
