// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy put in the workbook's place: the present file is kept, codes on labels stay given, and the history says so.
#include "core/book/restore.h"
#include "core/book/history.h"
#include "core/book/safe_copy_lines.h"
#include "core/book/verify.h"
#include "shelf.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace soakbook::tests {

using namespace book;

namespace {

QByteArray read_file(const QString& path) {
    QFile in(path);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

void write_file(const QString& path, const QByteArray& bytes) {
    QFile out(path);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
}

struct Restoring : ::testing::Test {
    Shelf shelf;
    QString copies = shelf.folder() + QStringLiteral("/copies");
    SafeCopy copy;
    std::string records_then;
    qint64 seq_left = 0;
    void SetUp() override {
        shelf.fill();
        copy = *make_safe_copy(shelf.book(), copies);
        records_then = records_of(shelf.path());
        add_yard(shelf.book(), 1);
        shelf.write("labels_reserved", [&](Writing& w) { code = shelf.give(w, 'S'); });
        seq_left = shelf.book().last_seq();
    }
    QString code; ///< given out after the copy was made
    static void add_yard(Workbook& workbook, int i) {
        ASSERT_TRUE(workbook.write({QStringLiteral("yard"), 1, {}}, on_day(12), [&](Writing& w) {
            return std::optional<Id<Yard>>(insert(w, Yard{{}, QStringLiteral("later yard %1").arg(i), {}, {}, true}));
        }));
    }
    tl::expected<Restored, NotRestored> put_back(const QString& path) {
        return restore({shelf.path(), path, copies}, on_day(20, 12, QStringLiteral("entered in the wrong year")));
    }
    void damage(const QString& path, const char* text) {
        QByteArray bytes = read_file(path);
        const qsizetype at = bytes.lastIndexOf(text);
        ASSERT_GT(at, 0);
        bytes[at] = 'x';
        write_file(path, bytes);
    }
};

} // namespace

TEST_F(Restoring, puts_the_records_back_and_keeps_what_was_there) {
    const std::string records_left = records_of(shelf.path());
    shelf.close();
    const auto restored = put_back(copy.path);
    ASSERT_TRUE(restored) << static_cast<int>(restored.error());
    EXPECT_EQ(records_of(shelf.path()), records_then);
    EXPECT_TRUE(verify(shelf.path()).sound());
    EXPECT_EQ(restored->copied_seq, copy.last_seq);
    EXPECT_TRUE(restored->kept_is_sound);
    EXPECT_EQ(records_of(restored->kept), records_left);
    EXPECT_TRUE(QFile::exists(copy.path));
    EXPECT_FALSE(QFile::exists(shelf.path() + QStringLiteral(".part")));
}

TEST_F(Restoring, never_gives_a_code_twice_that_a_label_may_bear) {
    shelf.close();
    const auto restored = put_back(copy.path);
    ASSERT_TRUE(restored);
    EXPECT_EQ(restored->codes, 1);
    const auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened);
    EXPECT_TRUE(code_given(**opened, code));
    EXPECT_EQ(*code_given(**opened, code), on_day(10).at) << "given out then, not now";
}

TEST_F(Restoring, is_told_in_the_history_with_its_reason_and_sealed) {
    shelf.close();
    const auto restored = put_back(copy.path);
    ASSERT_TRUE(restored);
    const auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened);
    const auto newest = newest_changes(**opened, 2);
    for (const Change& change : newest) {
        EXPECT_EQ(change.work.key, QStringLiteral("restored"));
        EXPECT_EQ(change.why, QStringLiteral("entered in the wrong year"));
        EXPECT_EQ(change.who, QStringLiteral("Ada"));
        EXPECT_EQ(change.work.count, static_cast<int>(copy.last_seq));
    }
    EXPECT_EQ(newest[0].table, QStringLiteral("workbook"));
    EXPECT_EQ((*opened)->last_seq(), restored->last_seq);
    EXPECT_EQ(newest_seal((*opened)->db()), restored->head);
    EXPECT_EQ(restored->head.last_seq, restored->last_seq);
}

TEST_F(Restoring, goes_on_from_the_copy_and_can_be_put_back_itself) {
    shelf.close();
    const auto restored = put_back(copy.path);
    ASSERT_TRUE(restored);
    {
        const auto opened = Workbook::open(shelf.path());
        add_yard(**opened, 7);
        const auto newer = make_safe_copy(**opened, copies);
        ASSERT_TRUE(newer);
        EXPECT_EQ(newest_safe_copy(**opened, copies)->path, newer->path);
        int left_behind = 0;
        for (const SafeCopy& one : safe_copies_of(**opened, copies))
            left_behind += one.of_this_line ? 0 : 1;
        EXPECT_EQ(left_behind, 1) << "what was kept before the copy was put back";
    }
    const auto again = put_back(restored->kept);
    ASSERT_TRUE(again);
    const auto opened = Workbook::open(shelf.path());
    EXPECT_EQ((*opened)->last_seq(), seq_left + 1) << "all that had been left behind, and one entry that says so";
    EXPECT_TRUE(verify(shelf.path()).sound());
}

TEST_F(Restoring, leaves_no_copy_that_was_left_behind_the_newest_one) {
    const QString mark = mark_of_copies(shelf.book().uid());
    const auto newest = [&] {
        const auto copy_file = newest_copy_going_on(copies, mark, shelf.path());
        return copy_file ? copy_file->path : QString();
    };
    int named = 10;
    const auto go_on = [&](int yards) {
        const auto opened = Workbook::open(shelf.path());
        for (int i = 0; i < yards; ++i)
            add_yard(**opened, ++named);
        return make_safe_copy(**opened, copies)->path;
    };
    shelf.close();
    const QString left = go_on(30);
    EXPECT_EQ(newest(), left);
    ASSERT_TRUE(put_back(copy.path));
    const QString went_on = go_on(2);
    ASSERT_LT(QFileInfo(went_on).fileName().section(QLatin1Char(' '), -1).section(QLatin1Char('-'), 0, 0).toInt(),
              QFileInfo(left).fileName().section(QLatin1Char(' '), -1).section(QLatin1Char('-'), 0, 0).toInt());
    EXPECT_EQ(newest(), went_on) << "though its number is the lower one";
    // And back again to what was left.
    ASSERT_TRUE(put_back(left));
    const QString again = go_on(1);
    EXPECT_EQ(newest(), again);
    ASSERT_TRUE(put_back(went_on));
    EXPECT_EQ(newest(), again) << "no copy of the newest state yet";
    const QString last = go_on(1);
    EXPECT_EQ(newest(), last);
}

TEST_F(Restoring, keeps_a_damaged_file_as_it_is) {
    const auto newer = make_safe_copy(shelf.book(), copies);
    ASSERT_TRUE(newer);
    shelf.close();
    damage(shelf.path(), "later yard");
    const QByteArray damaged = read_file(shelf.path());
    const auto restored = put_back(copy.path);
    ASSERT_TRUE(restored) << static_cast<int>(restored.error());
    EXPECT_FALSE(restored->kept_is_sound);
    EXPECT_EQ(read_file(restored->kept), damaged);
    EXPECT_EQ(records_of(shelf.path()), records_then);
    // Whatever the damaged file could say: a newer safe copy knew the code.
    const auto opened = Workbook::open(shelf.path());
    EXPECT_TRUE(code_given(**opened, code));
    EXPECT_TRUE(QFile::exists(newer->path));
}

TEST_F(Restoring, takes_the_place_of_a_file_cut_to_nothing_or_gone) {
    shelf.close();
    write_file(shelf.path(), {});
    ASSERT_TRUE(put_back(copy.path));
    EXPECT_EQ(records_of(shelf.path()), records_then);
    ASSERT_TRUE(QFile::remove(shelf.path()));
    // What was left of work that broke off would be played into the file that takes the place.
    write_file(shelf.path() + QStringLiteral("-journal"), QByteArray(4096, 'x'));
    ASSERT_TRUE(put_back(copy.path));
    EXPECT_FALSE(QFile::exists(shelf.path() + QStringLiteral("-journal")));
    EXPECT_TRUE(verify(shelf.path()).sound());
    EXPECT_EQ(records_of(shelf.path()), records_then);
}

TEST_F(Restoring, is_refused_for_a_copy_that_is_not_sound_and_nothing_changes) {
    shelf.close();
    damage(copy.path, "lower yard");
    const QByteArray before = read_file(shelf.path());
    EXPECT_EQ(put_back(copy.path).error(), NotRestored::copy_unsound);
    QFile cut(copy.path);
    ASSERT_TRUE(cut.resize(0));
    EXPECT_EQ(put_back(copy.path).error(), NotRestored::copy_unsound);
    EXPECT_EQ(put_back(shelf.folder() + QStringLiteral("/none")).error(), NotRestored::copy_unreadable);
    EXPECT_EQ(put_back(shelf.path()).error(), NotRestored::itself);
    write_file(shelf.folder() + QStringLiteral("/page"), "<html>");
    EXPECT_EQ(put_back(shelf.folder() + QStringLiteral("/page")).error(), NotRestored::not_a_workbook);
    EXPECT_EQ(read_file(shelf.path()), before);
    EXPECT_FALSE(QFile::exists(shelf.path() + QStringLiteral(".part")));
}

TEST_F(Restoring, is_refused_for_a_copy_of_another_workbook) {
    Shelf other;
    other.fill();
    const auto strange = make_safe_copy(other.book(), other.folder() + QStringLiteral("/copies"));
    ASSERT_TRUE(strange);
    shelf.close();
    const QByteArray before = read_file(shelf.path());
    EXPECT_EQ(put_back(strange->path).error(), NotRestored::other_workbook);
    EXPECT_EQ(read_file(shelf.path()), before);
}

TEST_F(Restoring, is_refused_when_the_present_file_cannot_be_kept) {
    shelf.close();
    const QByteArray before = read_file(shelf.path());
    const QString taken = shelf.folder() + QStringLiteral("/no folder");
    write_file(taken, "a file");
    EXPECT_EQ(restore({shelf.path(), copy.path, taken}, on_day(20)).error(), NotRestored::present_not_kept);
    EXPECT_EQ(read_file(shelf.path()), before);
}

TEST_F(Restoring, waits_for_another_program_that_writes) {
    shelf.close();
    Raw raw(shelf.path());
    ASSERT_EQ(raw.run("BEGIN EXCLUSIVE"), "");
    EXPECT_EQ(put_back(copy.path).error(), NotRestored::busy);
    ASSERT_EQ(raw.run("ROLLBACK"), "");
}

TEST_F(Restoring, brings_an_older_copy_up_to_this_version) {
    QFile packed(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/version_1.qz"));
    ASSERT_TRUE(packed.open(QIODevice::ReadOnly));
    const QString old = shelf.folder() + QStringLiteral("/old.soakbook");
    write_file(old, qUncompress(packed.readAll()));
    const QString file = shelf.folder() + QStringLiteral("/lost.soakbook");
    const auto restored = restore({file, old, copies}, on_day(20));
    ASSERT_TRUE(restored) << static_cast<int>(restored.error());
    EXPECT_TRUE(restored->kept.isEmpty());
    EXPECT_TRUE(verify(file).sound());
    EXPECT_TRUE(Workbook::open(file));
}

} // namespace soakbook::tests
