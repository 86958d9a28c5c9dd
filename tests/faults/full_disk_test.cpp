// SPDX-License-Identifier: GPL-3.0-or-later
// The disk is full: said as that, nothing half written, and work goes on once there is room.
#include "child.h"
#include "core/book/safe_copy.h"
#include "core/book/statement.h"
#include "ground.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <csignal>

#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/statvfs.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

/// From now on no file of this process grows beyond that many bytes; 0 lifts it.
void allow_files_of(qint64 bytes) {
    ::signal(SIGXFSZ, SIG_IGN);
    rlimit limit{};
    ::getrlimit(RLIMIT_FSIZE, &limit);
    limit.rlim_cur = bytes == 0 ? limit.rlim_max : static_cast<rlim_t>(bytes);
    ::setrlimit(RLIMIT_FSIZE, &limit);
}

/// A disk of its own in memory at `place`, of so many bytes, for this process alone; false where that may not be.
bool mount_small_disk(const QString& place, qint64 bytes) {
    const uid_t user = ::getuid();
    if (user == 0 ? ::unshare(CLONE_NEWNS) != 0 : ::unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0)
        return false;
    if (user != 0)
        put(QStringLiteral("/proc/self/uid_map"), "0 " + QByteArray::number(user) + " 1");
    const QByteArray size = "size=" + QByteArray::number(bytes);
    return ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           ::mount("none", place.toUtf8().constData(), "tmpfs", 0, size.constData()) == 0;
}

qint64 room_left(const QString& place) {
    struct statvfs at {};
    return ::statvfs(place.toUtf8().constData(), &at) == 0 ? static_cast<qint64>(at.f_bavail * at.f_frsize) : -1;
}

} // namespace

// The other kind of full: not a limit to one file, but a disk on which nothing is left. SQLite names them differently.
TEST(FullDisk, in_truth_filled_to_every_4_kB_is_said_and_loses_nothing) {
    const Ground ground;
    const QString place = ground.file("small");
    ASSERT_TRUE(QDir().mkpath(place));
    const QString outside = ground.file("outside.soakbook");
    (void)filled_workbook();
    int full = 0;
    for (int room = 0; room < cases(14, 120); ++room) {
        Child child([&](const Child::Tell& tell) {
            if (!mount_small_disk(place, 16 * 1024 * 1024))
                return tell("no mount");
            const QString path = place + QStringLiteral("/book.soakbook");
            put(path, filled_workbook());
            auto opened = book::Workbook::open(path);
            const QString ballast = place + QStringLiteral("/ballast");
            put(ballast, QByteArray(static_cast<qsizetype>(room_left(place)) - room * 4096, 'b'));
            int n = 31;
            try {
                for (; n < 400; ++n) {
                    make_entry(**opened, n);
                    tell(std::to_string(n));
                }
                return tell("never full");
            } catch (const book::DiskFull&) {
                tell("full");
            }
            const bool held = bytes_of(path).size() >= filled_workbook().size();
            QFile::remove(ballast);
            make_entry(**opened, n);
            tell(std::to_string(n));
            opened->reset();
            put(outside, bytes_of(path));
            tell(held ? "done" : "cut");
        });
        auto told = child.rest();
        ASSERT_FALSE(told.empty());
        if (told.front() == "no mount")
            GTEST_SKIP() << "a small disk cannot be mounted here";
        EXPECT_EQ(told.back(), "done") << room;
        EXPECT_EQ(std::count(told.begin(), told.end(), "full"), 1) << room;
        full += static_cast<int>(std::count(told.begin(), told.end(), "full"));
        expect_sound(outside, "room for " + std::to_string(room));
        EXPECT_EQ(entries_in(outside).size(), 30 + told.size() - 2) << room;
    }
    RecordProperty("filled", full);
}

TEST(FullDisk, at_every_4_kB_is_said_and_loses_nothing_and_work_goes_on_when_there_is_room) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    (void)book::Workbook::open(path);
    const qint64 size = filled_workbook().size();
    for (int room = 0; room < cases(12, 60); ++room) {
        put(path, filled_workbook());
        Child child([&](const Child::Tell& tell) {
            auto opened = book::Workbook::open(path);
            allow_files_of(size + room * 4096);
            int n = 31;
            try {
                for (; n < 400; ++n) {
                    make_entry(**opened, n);
                    tell(std::to_string(n));
                }
                tell("never full");
            } catch (const book::DiskFull&) {
                allow_files_of(0);
                make_entry(**opened, n);
                tell(std::to_string(n));
                tell("full, then done");
            }
        });
        const auto told = child.rest();
        ASSERT_FALSE(told.empty());
        EXPECT_EQ(told.back(), "full, then done") << room;
        const auto verdict = expect_sound(path, "room for " + std::to_string(room));
        EXPECT_EQ(entries_in(path).size(), 30 + told.size() - 1) << room;
        EXPECT_EQ(verdict.unsealed, 0);
    }
}

TEST(FullDisk, too_small_even_for_the_journal_changes_nothing) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    (void)book::Workbook::open(path);
    Child child([&](const Child::Tell& tell) {
        auto opened = book::Workbook::open(path);
        allow_files_of(600);
        try {
            make_entry(**opened, 31);
            tell("saved");
        } catch (const book::DiskFull&) {
            tell("full");
        }
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{"full"});
    EXPECT_EQ(entries_in(path).size(), 30U);
    expect_sound(path, "no room");
}

TEST(FullDisk, leaves_no_part_of_a_safe_copy_and_keeps_the_older_ones) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    const QString copies = ground.file("copies");
    put(path, filled_workbook());
    (void)book::Workbook::open(path);
    Child child([&](const Child::Tell& tell) {
        auto opened = book::Workbook::open(path);
        tell(book::make_safe_copy(**opened, copies) ? "copied" : "not copied");
        make_entry(**opened, 31);
        for (const qint64 room : {0, 1, 2, 40, 100}) {
            allow_files_of(room * 4096 + 1);
            const auto copied = book::make_safe_copy(**opened, copies);
            tell(copied ? "copied" : copied.error() == book::NotCopied::disk_full ? "full" : "another reason");
        }
    });
    EXPECT_EQ(child.rest(), (std::vector<std::string>{"copied", "full", "full", "full", "full", "full"}));
    const QStringList left = QDir(copies).entryList(QDir::Files);
    ASSERT_EQ(left.size(), 1);
    EXPECT_TRUE(book::verify(QDir(copies).filePath(left.front())).sound());
    expect_sound(path, "after the copies");
}

TEST(FullDisk, while_an_older_workbook_is_brought_up_leaves_it_old_and_whole) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, workbook_of_version_1());
    (void)book::verify(path);
    const std::string records = tests::records_of(path);
    Child child([&](const Child::Tell& tell) {
        allow_files_of(QFileInfo(path).size());
        const auto opened = book::Workbook::open(path, ground.file("copies"));
        tell(opened ? "opened" : opened.error() == book::NotOpened::not_brought_up ? "not brought up" : "another reason");
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{"not brought up"});
    EXPECT_EQ(tests::Raw(path).cell("PRAGMA user_version"), "1");
    EXPECT_EQ(tests::records_of(path), records);
    expect_sound(path, "with room again");
}

} // namespace soakbook::faults
