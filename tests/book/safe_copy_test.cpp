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

TEST(SafeCopies, go_by_their_numbers_once_the_new_one_is_there) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    for (int i = 0; i < 23; ++i) {
        add_yard(shelf, QStringLiteral("yard %1").arg(i));
        ASSERT_TRUE(make_safe_copy(shelf.book(), folder));
    }
    // All of one day: the 20 newest, of which one is the day's, the week's, the month's and the year's, too.
    const auto copies = safe_copies_of(shelf.book(), folder);
    ASSERT_EQ(copies.size(), 20U);
    for (std::size_t i = 0; i < copies.size(); ++i)
        EXPECT_EQ(copies[i].last_seq, shelf.book().last_seq() - static_cast<qint64>(i));
    EXPECT_EQ(newest_safe_copy(shelf.book(), folder)->last_seq, shelf.book().last_seq());
}

TEST(SafeCopies, of_a_state_left_behind_are_told_apart_and_outlive_the_rotation) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    const auto older = make_safe_copy(shelf.book(), folder);
    ASSERT_TRUE(older);
    QStringList left_behind;
    for (int i = 0; i < 3; ++i) {
        add_yard(shelf, QStringLiteral("left behind %1").arg(i));
        left_behind << make_safe_copy(shelf.book(), folder)->path;
    }
    shelf.close();
    // The older one is put in its place by hand, and the work goes on from there.
    ASSERT_TRUE(QFile::remove(shelf.path()));
    ASSERT_TRUE(QFile::copy(older->path, shelf.path()));
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened);
    EXPECT_EQ(newest_safe_copy(**opened, folder)->path, older->path);
    const auto go_on = [&](int i) {
        return (*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(12), [&](Writing& w) {
            return std::optional<Id<Yard>>(insert(w, Yard{{}, QStringLiteral("went on %1").arg(i), {}, {}, true}));
        });
    };
    for (int i = 0; i < 25; ++i) {
        ASSERT_TRUE(go_on(i));
        const auto made = make_safe_copy(**opened, folder);
        ASSERT_TRUE(made);
        ASSERT_EQ(newest_safe_copy(**opened, folder)->path, made->path);
    }
    for (const QString& path : left_behind)
        EXPECT_TRUE(QFile::exists(path)) << path.toStdString();
    int of_line = 0;
    for (const SafeCopy& copy : safe_copies_of(**opened, folder)) {
        EXPECT_EQ(copy.of_this_line, !left_behind.contains(copy.path)) << copy.path.toStdString();
        of_line += copy.of_this_line ? 1 : 0;
    }
    EXPECT_EQ(of_line, 20);
}

TEST(SafeCopies, that_are_opened_and_worked_in_are_never_taken_for_their_own_copies) {
    Shelf shelf;
    shelf.fill();
    const QString folder = shelf.folder() + QStringLiteral("/copies");
    const auto copy = make_safe_copy(shelf.book(), folder);
    ASSERT_TRUE(copy);
    shelf.close();
    auto opened = Workbook::open(copy->path);
    ASSERT_TRUE(opened);
    EXPECT_FALSE(newest_safe_copy(**opened, folder));
    for (int i = 0; i < 25; ++i) {
        ASSERT_TRUE((*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(12), [&](Writing& w) {
            return std::optional<Id<Yard>>(insert(w, Yard{{}, QStringLiteral("yard %1").arg(i), {}, {}, true}));
        }));
        ASSERT_TRUE(make_safe_copy(**opened, folder));
    }
    EXPECT_TRUE(QFile::exists(copy->path));
    EXPECT_EQ(safe_copies_of(**opened, folder).size(), 20U);
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
    ASSERT_TRUE(make_safe_copy(one.book(), folder));
    ASSERT_TRUE(make_safe_copy(other.book(), folder));
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 2);
    EXPECT_NE(newest_safe_copy(one.book(), folder)->path, newest_safe_copy(other.book(), folder)->path);
}

} // namespace soakbook::tests
