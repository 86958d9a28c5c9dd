// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy is whole, is checked before it gets its name, and is never fewer than it was.
#include "core/book/safe_copy.h"
#include "shelf.h"

#include <QDir>
#include <QFile>

namespace soakbook::tests {

using namespace book;

namespace {
void add_yard(Shelf& shelf, const QString& name) {
    shelf.write("yard", [&](Writing& w) { insert(w, Yard{{}, name, {}, {}, true}); });
}
} // namespace

TEST(SafeCopies, hold_every_record_and_open_as_a_workbook) {
    Shelf shelf;
    shelf.fill();
    const auto copy = make_safe_copy(shelf.book(), shelf.folder() + QStringLiteral("/copies"));
    ASSERT_TRUE(copy.has_value());
    EXPECT_EQ(copy->last_seq, shelf.book().last_seq());
    EXPECT_EQ(records_of(copy->path), records_of(shelf.path()));
    auto opened = Workbook::open(copy->path);
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ((*opened)->uid(), shelf.book().uid());
    EXPECT_EQ(newest_safe_copy(shelf.book(), shelf.folder() + QStringLiteral("/copies"))->path, copy->path);
}

TEST(SafeCopies, of_the_same_state_are_made_once) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    const auto first = make_safe_copy(shelf.book(), folder);
    const auto again = make_safe_copy(shelf.book(), folder);
    ASSERT_TRUE(first && again);
    EXPECT_EQ(first->path, again->path);
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 1);
    add_yard(shelf, QStringLiteral("third"));
    ASSERT_TRUE(make_safe_copy(shelf.book(), folder));
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 2);
}

TEST(SafeCopies, of_which_the_newest_are_kept_by_number_and_not_by_clock) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    for (int i = 0; i < 5; ++i) {
        add_yard(shelf, QStringLiteral("yard %1").arg(i));
        ASSERT_TRUE(make_safe_copy(shelf.book(), folder, 3));
    }
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 3);
    EXPECT_EQ(newest_safe_copy(shelf.book(), folder)->last_seq, shelf.book().last_seq());
}

TEST(SafeCopies, that_were_damaged_are_made_anew) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    const auto copy = make_safe_copy(shelf.book(), folder);
    ASSERT_TRUE(copy);
    QFile file(copy->path);
    ASSERT_TRUE(file.resize(file.size() / 2));
    const auto again = make_safe_copy(shelf.book(), folder);
    ASSERT_TRUE(again);
    EXPECT_EQ(records_of(again->path), records_of(shelf.path()));
}

TEST(SafeCopies, into_a_place_that_is_no_folder_are_refused_and_leave_nothing) {
    Shelf shelf;
    shelf.fill();
    const QString place = shelf.folder() + QStringLiteral("/a file");
    QFile file(place);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    const auto copy = make_safe_copy(shelf.book(), place);
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error(), NotCopied::folder);
    EXPECT_FALSE(newest_safe_copy(shelf.book(), place));
}

TEST(SafeCopies, of_other_workbooks_in_the_same_folder_are_let_be) {
    Shelf one;
    Shelf other;
    one.fill();
    const QString folder = one.folder() + QStringLiteral("/copies");
    ASSERT_TRUE(make_safe_copy(one.book(), folder, 1));
    ASSERT_TRUE(make_safe_copy(other.book(), folder, 1));
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 2);
    EXPECT_NE(newest_safe_copy(one.book(), folder)->path, newest_safe_copy(other.book(), folder)->path);
}

} // namespace soakbook::tests
