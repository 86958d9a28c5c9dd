// SPDX-License-Identifier: GPL-3.0-or-later
// What another program changed in the file is shown as that, beside what it said before; and papers say how far the workbook
// had come, with its seal.
#include "tests/ui/bad_input/room.h"

#include "core/work/record_history.h"
#include "core/work/watch.h"
#include "ui/papers/history_dialog.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/register_paper.h"
#include "ui/parts/looked_at.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/register/register_place.h"

#include <QApplication>
#include <QCheckBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace soakbook::tests {

namespace {

void with_another_program(const QString& path, const char* sql) {
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path.toUtf8().constData(), &file), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(file, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(file);
    sqlite3_close(file);
}

class OutsideChanges : public testing::Test {
protected:
    OutsideChanges() : room(QStringLiteral("en")) {
        // Every room is a copy of one house, with one uid.
        ui::set_outside_looked_at(work::workbook_uid(room.book()), 0);
        place = room.show(ui::make_register_place(room.desk()));
    }
    void open(const char* task) {
        place->open({ui::PlaceName::register_, QLatin1String(task), {}, {}});
        room.settle();
    }
    ui::RecordTable* table(const char* name) const { return place->findChild<ui::RecordTable*>(QLatin1String(name)); }
    QString detail() const { return place->findChild<QLabel*>(QStringLiteral("register_detail"))->text(); }
    QStringList cells(const ui::RecordTable& of, int row) const {
        QStringList texts;
        for (int column = 0; column < of.model()->columnCount(); ++column)
            texts << of.model()->index(row, column).data().toString();
        return texts;
    }

    Room room;
    ui::Place* place = nullptr;
};

} // namespace

TEST_F(OutsideChanges, are_shown_alone_with_what_it_said_before) {
    with_another_program(room.path(), "UPDATE yard SET name = 'Mill road' WHERE name = 'Mill lane'; UPDATE bag SET stands = 'attic' WHERE id = 1;");
    open("journal");
    const int all = table("register_journal")->model()->rowCount();
    open("outside");
    ASSERT_EQ(table("register_journal")->model()->rowCount(), 2);
    EXPECT_GT(all, 2);
    EXPECT_TRUE(place->findChild<QCheckBox*>(QStringLiteral("register_outside"))->isChecked());
    EXPECT_TRUE(cells(*table("register_journal"), 0).contains(QStringLiteral("made outside Soakbook")));
    EXPECT_TRUE(cells(*table("register_journal"), 0).contains(QStringLiteral("outside Soakbook")));
    table("register_journal")->setCurrentIndex(table("register_journal")->model()->index(1, 0));
    room.settle();
    EXPECT_TRUE(detail().contains(QStringLiteral("Mill road"))) << detail().toStdString();
    EXPECT_TRUE(detail().contains(QStringLiteral("Mill lane"))) << detail().toStdString();
}

TEST_F(OutsideChanges, are_looked_at_once_they_were_shown) {
    const QString uid = work::workbook_uid(room.book());
    with_another_program(room.path(), "UPDATE bag SET stands = 'attic' WHERE id = 1;");
    ASSERT_EQ(work::outside_news(room.book(), ui::outside_looked_at(uid)).count, 1);
    open("");
    EXPECT_EQ(work::outside_news(room.book(), ui::outside_looked_at(uid)).count, 1) << "the treatments do not show it";
    open("outside");
    EXPECT_EQ(work::outside_news(room.book(), ui::outside_looked_at(uid)).count, 0);
    with_another_program(room.path(), "UPDATE bag SET stands = 'barn' WHERE id = 1;");
    EXPECT_EQ(work::outside_news(room.book(), ui::outside_looked_at(uid)).count, 1) << "a new one is to be looked at again";
}

TEST_F(OutsideChanges, stand_in_the_history_of_their_record) {
    with_another_program(room.path(), "UPDATE bag SET stands = 'attic' WHERE id = 1;");
    open("outside");
    table("register_journal")->setCurrentIndex(table("register_journal")->model()->index(0, 0));
    room.settle();
    place->findChild<QPushButton*>(QStringLiteral("register_history"))->click();
    room.settle();
    auto* shown = room.window().findChild<ui::RecordTable*>(QStringLiteral("history_table"));
    ASSERT_NE(shown, nullptr);
    const QStringList newest = cells(*shown, 0);
    EXPECT_TRUE(newest.contains(QStringLiteral("outside Soakbook"))) << newest.join(QLatin1Char('|')).toStdString();
    EXPECT_FALSE(newest.filter(QStringLiteral("attic")).isEmpty()) << newest.join(QLatin1Char('|')).toStdString();
}

TEST_F(OutsideChanges, none_leaves_the_journal_as_it_is) {
    open("outside");
    EXPECT_EQ(table("register_journal")->model()->rowCount(), 0);
    place->findChild<QCheckBox*>(QStringLiteral("register_outside"))->click();
    room.settle();
    EXPECT_GT(table("register_journal")->model()->rowCount(), 0);
}

TEST_F(OutsideChanges, the_key_for_the_history_answers_for_the_treatment_with_the_keyboard) {
    ui::listen_for_history_key(*place);
    open("");
    table("register_treatments")->setCurrentIndex(table("register_treatments")->model()->index(0, 0));
    table("register_treatments")->setFocus();
    QTest::keyClick(table("register_treatments"), Qt::Key_H, Qt::ControlModifier);
    room.settle();
    auto* shown = room.window().findChild<ui::RecordTable*>(QStringLiteral("history_table"));
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(cells(*shown, shown->model()->rowCount() - 1).contains(QStringLiteral("entered")));
}

TEST_F(OutsideChanges, each_paper_says_the_newest_entry_and_its_seal) {
    const work::Anchor anchor = work::anchor(room.book());
    ASSERT_GT(anchor.entry, 0);
    ASSERT_EQ(anchor.seal.size(), 16);
    const QString said = ui::entry_and_seal(room.desk());
    EXPECT_TRUE(said.contains(QString::number(anchor.entry))) << said.toStdString();
    EXPECT_TRUE(said.contains(anchor.seal)) << said.toStdString();
    EXPECT_EQ(ui::paper_head(room.desk()).entry, said);
    EXPECT_TRUE(ui::register_csv(room.desk(), {}).contains(anchor.seal.toUtf8()));
    open("");
    const QString foot = place->findChild<QLabel*>(QStringLiteral("register_seal"))->text();
    EXPECT_TRUE(foot.startsWith(said)) << foot.toStdString();
    EXPECT_TRUE(foot.contains(QStringLiteral("determined"))) << "it is no proof against everybody, and says so";
}

} // namespace soakbook::tests
