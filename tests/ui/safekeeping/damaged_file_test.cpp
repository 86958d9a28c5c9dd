// SPDX-License-Identifier: GPL-3.0-or-later
// What is left in a damaged file, by keys.
#include "tests/ui/bad_input/room.h"

#include "ui/safekeeping/salvage_window.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/workbooks_page.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

class Damaged_files : public testing::Test {
protected:
    Damaged_files() : room(QStringLiteral("en")), path(room.new_path()) {
        EXPECT_TRUE(QFile::copy(room.path(), path));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadWrite));
        file.write(QByteArray(4096, '\0'));
        file.close();
    }
    void open() {
        ui::open_salvage(path, room.desk(), &room.window());
        room.settle();
    }
    template <class W> W* part(const char* name) const { return room.dialog()->findChild<W*>(QLatin1String(name)); }

    Room room;
    QString path;
};

} // namespace

TEST_F(Damaged_files, show_their_records_and_leave_the_file_as_it_is) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray before = file.readAll();
    open();
    EXPECT_TRUE(part<QLabel>("salvage_sentence")->text().contains(QStringLiteral("Nothing was written to the file")));
    auto* tables = part<QListWidget>("salvage_tables");
    ASSERT_GT(tables->count(), 15);
    EXPECT_TRUE(tables->hasFocus());
    for (int i = 0; i < tables->count(); ++i) {
        EXPECT_FALSE(part<QLabel>("salvage_counts")->text().isEmpty());
        const QAbstractItemModel* rows = part<QTableView>("salvage_rows")->model();
        ASSERT_GT(rows->rowCount(), 0) << tables->currentItem()->text().toStdString();
        EXPECT_EQ(rows->index(0, 0).data().toString(), QStringLiteral("agrees with the history"));
        QTest::keyClick(tables, Qt::Key_Down);
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    room.settle();
    EXPECT_EQ(room.dialog(), nullptr);
    file.seek(0);
    EXPECT_EQ(file.readAll(), before);
}

TEST_F(Damaged_files, are_saved_as_tables_where_no_file_is_written_over) {
    open();
    QTemporaryDir folder;
    auto* window = qobject_cast<ui::SalvageWindow*>(room.dialog());
    window->save_into(folder.path());
    EXPECT_TRUE(part<QLabel>("salvage_answer")->text().endsWith(QStringLiteral("tables were saved.")));
    const qsizetype files = QDir(folder.path()).entryList(QDir::Files).size();
    EXPECT_GT(files, 15);
    window->save_into(folder.path());
    EXPECT_FALSE(part<QLabel>("salvage_answer")->text().endsWith(QStringLiteral("tables were saved.")));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), files);
}

TEST_F(Damaged_files, with_nothing_in_them_say_so) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(20'000, 'x'));
    file.close();
    open();
    EXPECT_TRUE(part<QLabel>("salvage_sentence")->text().contains(QStringLiteral("looks like a record")));
    EXPECT_EQ(part<QListWidget>("salvage_tables"), nullptr);
}

TEST_F(Damaged_files, the_open_workbook_is_not_read_as_one) {
    auto* place = room.show(ui::make_setup_place(room.desk(), {}));
    auto* page = place->findChild<ui::WorkbooksPage*>();
    ASSERT_NE(page, nullptr);
    place->open({ui::PlaceName::setup, QStringLiteral("workbooks"), {}, {}});
    room.settle();
    page->read_damaged(room.path());
    room.settle();
    EXPECT_EQ(room.dialog(), nullptr);
    EXPECT_TRUE(page->findChild<QLabel*>(QStringLiteral("workbook_answer"))->isVisible());
}

} // namespace soakbook::tests
