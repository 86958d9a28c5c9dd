// SPDX-License-Identifier: GPL-3.0-or-later
// Two copies of one workbook, carried apart on a stick: how far they are the same, and what stands in only one of them.
#include "core/book/compare.h"
#include "core/book/other_copy.h"
#include "core/book/records/person.h"
#include "core/book/undo_stack.h"
#include "shelf.h"

#include <QFile>

namespace soakbook::tests {

namespace {

using namespace book;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

// The stick: a copy of the shelf's file, made while nobody writes.
QString carried(Shelf& shelf, const char* name = "stick.soakbook") {
    const QString to = shelf.folder() + QLatin1Char('/') + QLatin1String(name);
    shelf.close();
    QFile::remove(to);
    EXPECT_TRUE(QFile::copy(shelf.path(), to));
    return to;
}

std::unique_ptr<Workbook> opened(const QString& path) {
    auto book = Workbook::open(path);
    if (!book)
        throw std::runtime_error("the workbook did not open");
    return std::move(*book);
}

void enter_person(Workbook& book, const char* name, int day) {
    const auto done = book.write({QStringLiteral("person"), 1, QLatin1String(name)}, on_day(day), [&](Writing& w) {
        return std::optional(book::insert(w, Person{{}, QLatin1String(name), true}));
    });
    ASSERT_TRUE(done);
}

QStringList subjects(const std::vector<LonePiece>& pieces) {
    QStringList all;
    for (const LonePiece& piece : pieces)
        all << piece.work.key + QLatin1Char(' ') + piece.work.subject;
    return all;
}

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

class Copies_apart : public testing::Test {
protected:
    Copies_apart() { shelf.fill(); }
    Shelf shelf;
};

} // namespace

TEST_F(Copies_apart, a_copy_that_nobody_wrote_in_is_the_same) {
    const QString stick = carried(shelf);
    const auto here = opened(shelf.path());
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::same);
    EXPECT_EQ(compared->common_seq, here->last_seq());
}

TEST_F(Copies_apart, an_older_copy_lacks_the_entries_made_since) {
    const QString stick = carried(shelf);
    const auto here = opened(shelf.path());
    const qint64 then = here->last_seq();
    enter_person(*here, "Bea", 11);
    enter_person(*here, "Cid", 12);
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::there_older);
    EXPECT_EQ(compared->common_seq, then);
    EXPECT_THAT(subjects(compared->only_here), ElementsAre(QStringLiteral("person Bea"), QStringLiteral("person Cid")));
    EXPECT_THAT(compared->only_there, IsEmpty());
    EXPECT_EQ(compared->only_here.front().who, QStringLiteral("Ada"));
    EXPECT_EQ(compared->only_here.front().records, 1);
    EXPECT_THAT(compared->only_here.front().tables, ElementsAre(QStringLiteral("person")));
}

TEST_F(Copies_apart, a_copy_that_was_written_in_since_is_newer) {
    const QString stick = carried(shelf);
    enter_person(*opened(stick), "Bea", 11);
    const auto here = opened(shelf.path());
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::there_newer);
    EXPECT_THAT(subjects(compared->only_there), ElementsAre(QStringLiteral("person Bea")));
}

TEST_F(Copies_apart, two_copies_written_in_since_are_apart_from_the_last_common_entry_on) {
    const QString stick = carried(shelf);
    {
        const auto there = opened(stick);
        enter_person(*there, "Bea", 11);
        enter_person(*there, "Dan", 11);
        ASSERT_TRUE(there->undo_stack().undo(on_day(12)));
    }
    const auto here = opened(shelf.path());
    const qint64 then = here->last_seq();
    enter_person(*here, "Cid", 11);
    const QByteArray before = bytes_of(stick);
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::apart);
    EXPECT_EQ(compared->common_seq, then);
    EXPECT_THAT(subjects(compared->only_here), ElementsAre(QStringLiteral("person Cid")));
    EXPECT_THAT(subjects(compared->only_there), ElementsAre(QStringLiteral("person Bea"), QStringLiteral("person Dan"), QStringLiteral("undo:person Dan")));
    EXPECT_EQ(bytes_of(stick), before);
}

// The common point is searched for by halving: it has to be right wherever it lies.
TEST_F(Copies_apart, the_common_entry_is_found_wherever_it_lies) {
    for (int common = 0; common < 14; ++common) {
        Shelf own;
        for (int i = 0; i < common; ++i)
            own.write("person", [i](Writing& w) {
                for (int n = 0; n <= i % 3; ++n)
                    book::insert(w, Person{{}, QStringLiteral("both %1 %2").arg(i).arg(n), true});
            });
        const QString stick = carried(own);
        const auto here = opened(own.path());
        const qint64 then = here->last_seq();
        {
            const auto there = opened(stick);
            for (int i = 0; i < 5; ++i)
                enter_person(*there, qPrintable(QStringLiteral("there %1").arg(i)), 11);
        }
        for (int i = 0; i < common % 4; ++i)
            enter_person(*here, qPrintable(QStringLiteral("here %1").arg(i)), 11);
        const auto compared = compare(*here, stick);
        ASSERT_TRUE(compared);
        EXPECT_EQ(compared->common_seq, then) << common;
        EXPECT_THAT(compared->only_there, SizeIs(5));
        EXPECT_THAT(compared->only_here, SizeIs(static_cast<std::size_t>(common % 4)));
    }
}

TEST_F(Copies_apart, changes_of_another_program_that_both_hold_are_common_though_no_seal_says_so) {
    shelf.close();
    ASSERT_EQ(Raw(shelf.path()).run("UPDATE person SET name = 'Adele'"), "");
    const QString stick = carried(shelf);
    const auto here = opened(shelf.path());
    const qint64 then = here->last_seq();
    enter_person(*here, "Bea", 11);
    enter_person(*opened(stick), "Cid", 11);
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->common_seq, then);
    EXPECT_THAT(compared->only_here, SizeIs(1));
    EXPECT_THAT(compared->only_there, SizeIs(1));
}

TEST_F(Copies_apart, changes_of_another_program_in_one_copy_stand_together_and_are_named_as_such) {
    const QString stick = carried(shelf);
    ASSERT_EQ(Raw(stick).run("UPDATE yard SET note = 'gate code changed'; UPDATE person SET name = 'Adele'"), "");
    const auto here = opened(shelf.path());
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    ASSERT_THAT(compared->only_there, SizeIs(1));
    EXPECT_TRUE(compared->only_there.front().outside);
    EXPECT_EQ(compared->only_there.front().records, 3);
}

TEST_F(Copies_apart, another_workbook_is_a_stranger) {
    Shelf other;
    const QString stick = carried(other);
    const auto compared = compare(shelf.book(), stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::stranger);
    EXPECT_THAT(compared->only_there, IsEmpty());
}

TEST_F(Copies_apart, the_open_file_itself_is_not_opened_a_second_time) {
    const QString link = shelf.folder() + QStringLiteral("/link.soakbook");
    ASSERT_TRUE(QFile::link(shelf.path(), link));
    const auto compared = compare(shelf.book(), link);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::same);
    const auto opened_twice = OtherCopy::open(shelf.book(), link);
    ASSERT_FALSE(opened_twice);
    EXPECT_EQ(opened_twice.error(), NotOpened::busy);
}

TEST_F(Copies_apart, a_copy_left_with_a_log_by_another_tool_is_read_whole_and_stays_as_it_was) {
    const QString stick = carried(shelf);
    enter_person(*opened(stick), "Bea", 11);
    ASSERT_EQ(Raw(stick).run("PRAGMA journal_mode=WAL"), "");
    const QByteArray before = bytes_of(stick);
    const auto here = opened(shelf.path());
    const auto compared = compare(*here, stick);
    ASSERT_TRUE(compared);
    EXPECT_EQ(compared->kinship, Kinship::there_newer);
    EXPECT_EQ(bytes_of(stick), before);
    EXPECT_FALSE(QFile::exists(stick + QStringLiteral("-wal")));
}

TEST_F(Copies_apart, a_copy_with_a_trigger_of_someone_else_is_refused_and_nothing_of_it_runs) {
    const QString stick = carried(shelf);
    ASSERT_EQ(Raw(stick).run("CREATE VIEW strange AS SELECT 1"), "");
    const auto here = opened(shelf.path());
    const auto compared = compare(*here, stick);
    ASSERT_FALSE(compared);
    EXPECT_EQ(compared.error(), NotOpened::changed_structure);
}

// A copy that lay in a drawer since an older version is brought up aside; its own bytes stay.
TEST(Copies_of_older_versions, are_compared_and_stay_as_they_were) {
    for (const char* name : {"version_1.qz", "version_2.qz"}) {
        QTemporaryDir folder;
        QFile packed(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/") + QLatin1String(name));
        ASSERT_TRUE(packed.open(QIODevice::ReadOnly));
        const QByteArray whole = qUncompress(packed.readAll());
        const QString path = folder.filePath(QStringLiteral("now.soakbook"));
        const QString old = folder.filePath(QStringLiteral("old.soakbook"));
        for (const QString& to : {path, old}) {
            QFile out(to);
            ASSERT_TRUE(out.open(QIODevice::WriteOnly));
            ASSERT_EQ(out.write(whole), whole.size());
        }
        auto here = Workbook::open(path, folder.filePath(QStringLiteral("copies")));
        ASSERT_TRUE(here) << name;
        const auto same = compare(**here, old);
        ASSERT_TRUE(same) << name;
        EXPECT_EQ(same->kinship, Kinship::same) << name;
        enter_person(**here, "Bea", 11);
        const auto older = compare(**here, old);
        ASSERT_TRUE(older) << name;
        EXPECT_EQ(older->kinship, Kinship::there_older) << name;
        EXPECT_THAT(older->only_here, SizeIs(1)) << name;
        EXPECT_EQ(bytes_of(old), whole) << name;
    }
}

TEST_F(Copies_apart, what_is_no_workbook_is_said_so) {
    const auto refused = [this](const char* name, const QByteArray& content) {
        const QString path = shelf.folder() + QLatin1Char('/') + QLatin1String(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
        file.close();
        const auto compared = compare(shelf.book(), path);
        return compared ? -1 : static_cast<int>(compared.error());
    };
    EXPECT_EQ(refused("page", "<html>"), static_cast<int>(NotOpened::not_a_workbook));
    EXPECT_EQ(refused("nothing", ""), static_cast<int>(NotOpened::empty_file));
    const auto gone = compare(shelf.book(), shelf.folder() + QStringLiteral("/gone"));
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error(), NotOpened::not_there);
}

} // namespace soakbook::tests
