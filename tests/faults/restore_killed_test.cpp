// SPDX-License-Identifier: GPL-3.0-or-later
// The program is killed while a safe copy is put in the workbook's place, and while copies go that need not stay: the old
// file or the new one lies there whole, and there is no good copy less.
#include "bad_disk.h"
#include "child.h"
#include "core/book/restore.h"
#include "core/book/safe_copy.h"
#include "ground.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>

#include <csignal>
#include <random>

#include <unistd.h>

namespace soakbook::faults {

namespace {

struct RestoreKilled : ::testing::Test {
    Ground ground;
    QString folder = ground.file("folder");
    QString path = folder + QStringLiteral("/book.soakbook");
    QString copies = ground.file("copies");
    QString copy;
    QByteArray present;
    QByteArray copy_bytes;
    int restored = 0;
    int old = 0;

    // The copy holds entries 1 to 33, the workbook 1 to 36.
    void SetUp() override {
        ASSERT_TRUE(QDir().mkpath(folder));
        put(path, filled_workbook());
        {
            auto opened = book::Workbook::open(path);
            for (int n = 31; n <= 33; ++n)
                make_entry(**opened, n);
            const auto made = book::make_safe_copy(**opened, copies);
            ASSERT_TRUE(made.has_value());
            copy = made->path;
            for (int n = 34; n <= 36; ++n)
                make_entry(**opened, n);
        }
        present = bytes_of(path);
        copy_bytes = bytes_of(copy);
    }
    void again() const {
        QDir(folder).removeRecursively();
        QDir(copies).removeRecursively();
        QDir().mkpath(folder);
        QDir().mkpath(copies);
        put(path, present);
        put(copy, copy_bytes);
    }
    book::RestoreRequest request() const { return {path, copy, copies}; }
    static book::Doing doing() { return on_day(20, 12, QStringLiteral("the newest entries were wrong")); }

    void expect_old_or_new(const std::string& when) {
        ASSERT_TRUE(QFile::exists(path)) << when;
        expect_sound(path, when);
        const auto there = entries_in(path).size();
        ASSERT_TRUE(there == 36 || there == 33) << when << ": " << there;
        (there == 36 ? old : restored)++;
        ASSERT_EQ(bytes_of(copy), copy_bytes) << when << ": the copy was touched";
        // What was in the workbook is not lost when it is not in it any more.
        bool kept = there == 36;
        for (const QString& name : QDir(copies).entryList({QStringLiteral("*.soakbook")}, QDir::Files)) {
            ASSERT_TRUE(book::verify(QDir(copies).filePath(name)).sound()) << when << ": " << name.toStdString();
            kept = kept || entries_in(QDir(copies).filePath(name)).size() == 36;
        }
        ASSERT_TRUE(kept) << when << ": the present entries are nowhere";
        // And it can be done the next time.
        if (there == 36) {
            ASSERT_TRUE(book::restore(request(), doing()).has_value()) << when;
            ASSERT_EQ(entries_in(path).size(), 33U) << when;
            expect_sound(path, when + ", done again");
        }
    }
};

} // namespace

TEST_F(RestoreKilled, at_any_moment_the_old_file_or_the_new_one_lies_there_whole) {
    std::mt19937 random(4711);
    QElapsedTimer clock;
    clock.start();
    ASSERT_TRUE(book::restore(request(), doing()).has_value());
    // A kill may also come when all is done.
    const auto longest = static_cast<unsigned>(clock.nsecsElapsed() / 1000 * 5 / 4);
    const int kills = cases(25, 1'000);
    int killed = 0;
    for (int i = 0; i < kills && !HasFatalFailure(); ++i) {
        again();
        Child child([&](const Child::Tell& tell) {
            tell("begins");
            tell(book::restore(request(), doing()) ? "restored" : "refused");
            ::pause();
        });
        EXPECT_EQ(child.line(), "begins");
        ::usleep(static_cast<useconds_t>(random() % longest));
        child.kill();
        const auto told = child.rest();
        killed += told.empty() ? 1 : 0;
        EXPECT_TRUE(told.empty() || told.front() == "restored") << told.front();
        expect_old_or_new("kill " + std::to_string(i));
    }
    RecordProperty("kills", kills);
    RecordProperty("restored", restored);
    std::printf("  %d kills, %d of them before it was done; the old file lay there %d times, the new one %d times\n", kills, killed, old, restored);
    EXPECT_GT(killed, 0);
}

TEST_F(RestoreKilled, at_each_write_sync_and_removal_the_old_file_or_the_new_one_lies_there_whole) {
    int kills = 0;
    for (const Act act : {Act::write, Act::sync, Act::truncate, Act::remove}) {
        for (int at = 1; at < 100'000 && !HasFatalFailure(); at += act == Act::write ? cases(29, 1) : cases(2, 1)) {
            again();
            Child child([&](const Child::Tell& tell) {
                BadDisk disk;
                disk.fail(act, at, BadDisk::How::process_dies);
                tell(book::restore(request(), doing()) ? "restored" : "refused");
            });
            const auto told = child.rest();
            expect_old_or_new("act " + std::to_string(static_cast<int>(act)) + " number " + std::to_string(at));
            if (!told.empty()) {
                EXPECT_EQ(told.front(), "restored");
                break;
            }
            EXPECT_EQ(child.died_of(), SIGKILL);
            ++kills;
        }
    }
    RecordProperty("kills", kills);
    EXPECT_GT(kills, 6);
}

TEST_F(RestoreKilled, nor_when_the_disk_fails_is_less_there_than_before) {
    int failures = 0;
    for (const Act act : {Act::read, Act::write, Act::sync, Act::truncate, Act::remove}) {
        for (int at = 1; at < 100'000 && !HasFatalFailure(); at += act == Act::write || act == Act::read ? cases(149, 7) : cases(5, 1)) {
            again();
            BadDisk disk;
            disk.fail(act, at, BadDisk::How::fails_from_then_on);
            const bool done = book::restore(request(), doing()).has_value();
            const bool came = disk.came();
            disk.heal();
            failures += done ? 0 : 1;
            const auto there = entries_in(path).size();
            ASSERT_EQ(there, done ? 33U : 36U) << static_cast<int>(act) << " number " << at;
            expect_old_or_new("act " + std::to_string(static_cast<int>(act)) + " number " + std::to_string(at));
            if (!came)
                break;
        }
    }
    RecordProperty("failures", failures);
    EXPECT_GT(failures, 6);
}

TEST_F(RestoreKilled, in_the_middle_of_rotation_leaves_every_copy_that_is_to_stay) {
    QDir(copies).removeRecursively();
    put(path, filled_workbook());
    std::mt19937 random(815);
    const int kills = cases(12, 1'000);
    std::set<QString> before;
    int n = 31;
    {
        // More copies than stay, so that each new one lets one go.
        auto opened = book::Workbook::open(path);
        for (; n < 54; ++n) {
            make_entry(**opened, n);
            ASSERT_TRUE(book::make_safe_copy(**opened, copies).has_value());
        }
    }
    int went = 0;
    for (int i = 0; i < kills && !HasFatalFailure(); ++i) {
        Child child([&](const Child::Tell& tell) {
            auto opened = book::Workbook::open(path);
            for (int k = 0; k < 50; ++k) {
                make_entry(**opened, n + k);
                tell(std::to_string(n + k));
                tell(book::make_safe_copy(**opened, copies) ? "copied" : "not copied");
            }
        });
        (void)child.line();
        (void)child.line();
        ::usleep(static_cast<useconds_t>(random() % 60'000));
        child.kill();
        (void)child.rest();
        n = *entries_in(path).rbegin() + 1;
        const QStringList now = QDir(copies).entryList({QStringLiteral("*.soakbook")}, QDir::Files);
        ASSERT_GE(now.size(), 20) << "kill " << i;
        std::set<QString> there(now.begin(), now.end());
        for (const QString& name : before)
            went += there.count(name) ? 0 : 1;
        for (const QString& name : now)
            ASSERT_TRUE(before.count(name) || book::verify(QDir(copies).filePath(name)).sound()) << name.toStdString();
        before = there;
        // The file would grow with each kill.
        if (n > 400) {
            QDir(copies).removeRecursively();
            put(path, filled_workbook());
            before.clear();
            auto opened = book::Workbook::open(path);
            for (n = 31; n < 54; ++n) {
                make_entry(**opened, n);
                ASSERT_TRUE(book::make_safe_copy(**opened, copies).has_value());
            }
        }
    }
    RecordProperty("kills", kills);
    EXPECT_GT(went, 0);
}

} // namespace soakbook::faults
