// SPDX-License-Identifier: GPL-3.0-or-later
// The program is killed: while it saves, at each write of one save, while it copies, and while it brings an older
// workbook up. What was acknowledged before is there, whole.
#include "bad_disk.h"
#include "child.h"
#include "core/book/safe_copy.h"
#include "ground.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <csignal>
#include <random>

#include <unistd.h>

namespace soakbook::faults {

namespace {

std::mt19937& chance() {
    static std::mt19937 random(20260803);
    return random;
}
void pause_up_to(int microseconds) { ::usleep(static_cast<useconds_t>(chance()() % static_cast<unsigned>(microseconds))); }

/// Saves entries from `first` on, one after another, and tells each once it is saved.
void save_on_and_on(const QString& path, int first, const Child::Tell& tell) {
    auto opened = book::Workbook::open(path);
    if (!opened)
        return tell("not opened");
    for (int n = first;; ++n) {
        make_entry(**opened, n);
        tell(std::to_string(n));
    }
}

struct Killed : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    std::set<int> acknowledged;
    int highest = 30;

    void SetUp() override {
        put(path, filled_workbook());
        (void)book::Workbook::open(path); // what a process needs to know once
        for (int n = 1; n <= 30; ++n)
            acknowledged.insert(n);
    }
    void take(const std::vector<std::string>& lines) {
        for (const std::string& line : lines) {
            ASSERT_TRUE(line.find_first_not_of("0123456789") == std::string::npos) << line;
            acknowledged.insert(std::stoi(line));
        }
        highest = std::max(highest, *acknowledged.rbegin());
    }
    std::vector<book::SafeCopy> copies_now(const QString& folder) const {
        const auto opened = book::Workbook::open(path);
        return book::safe_copies_of(**opened, folder);
    }
    /// At most the entry under way is there unacknowledged.
    void expect_all_there(const std::string& when) {
        expect_sound(path, when);
        const std::set<int> there = entries_in(path);
        for (const int n : acknowledged)
            ASSERT_TRUE(there.count(n)) << when << ": entry " << n << " is lost";
        ASSERT_LE(there.size(), acknowledged.size() + 1) << when;
        highest = std::max(highest, *there.rbegin());
        acknowledged = there;
    }
};

} // namespace

TEST_F(Killed, while_it_saves_it_loses_nothing_that_was_acknowledged) {
    int saved = 0;
    const int kills = cases(200, 10'000);
    for (int i = 0; i < kills && !HasFatalFailure(); ++i) {
        if (i % 40 == 39) {
            put(path, filled_workbook());
            acknowledged.clear();
            for (highest = 1; highest < 30; ++highest)
                acknowledged.insert(highest);
            acknowledged.insert(30);
        }
        const std::size_t before = acknowledged.size();
        Child child([&](const Child::Tell& tell) { save_on_and_on(path, highest + 1, tell); });
        const std::string first = child.line();
        pause_up_to(6000);
        child.kill();
        take({first});
        take(child.rest());
        EXPECT_EQ(child.died_of(), SIGKILL);
        expect_all_there("kill " + std::to_string(i));
        saved += static_cast<int>(acknowledged.size() - before);
    }
    RecordProperty("kills", kills);
    RecordProperty("entries", saved);
    EXPECT_GT(saved, kills);
}

TEST_F(Killed, at_each_read_write_sync_and_removal_of_one_save_it_is_saved_whole_or_not_at_all) {
    int kills = 0;
    for (const Act act : {Act::read, Act::write, Act::sync, Act::truncate, Act::remove, Act::folder_sync}) {
        for (int at = 1; at < 100'000 && !HasFailure(); at += act == Act::read ? cases(6, 1) : 1) {
            put(path, filled_workbook());
            QFile::remove(path + QStringLiteral("-journal"));
            Child child([&](const Child::Tell& tell) {
                BadDisk disk;
                auto opened = book::Workbook::open(path);
                if (!opened)
                    return tell("not opened");
                disk.fail(act, at, BadDisk::How::process_dies);
                make_entry(**opened, 31);
                tell("31");
            });
            const auto told = child.rest();
            expect_sound(path, "act " + std::to_string(static_cast<int>(act)) + " number " + std::to_string(at));
            const std::set<int> there = entries_in(path);
            ASSERT_TRUE(there.size() == 30 || there.size() == 31);
            if (!told.empty()) {
                EXPECT_EQ(told.front(), "31");
                EXPECT_EQ(there.size(), 31U);
                break;
            }
            EXPECT_EQ(child.died_of(), SIGKILL);
            ++kills;
        }
    }
    RecordProperty("kills", kills);
    EXPECT_GT(kills, 20);
}

TEST_F(Killed, in_the_recovery_from_a_kill_it_recovers_the_next_time) {
    int kills = 0;
    const int step = cases(5, 1);
    for (int at = 1; at < 100'000 && !HasFailure(); at += step) {
        // Dies when the pages are down in the file itself but not for good, so that the journal is hot.
        put(path, filled_workbook());
        Child first([&](const Child::Tell&) {
            BadDisk disk;
            auto opened = book::Workbook::open(path);
            if (!opened)
                return;
            disk.fail(Act::remove, 1, BadDisk::How::process_dies);
            make_entry(**opened, 31);
        });
        EXPECT_TRUE(first.rest().empty());
        EXPECT_EQ(first.died_of(), SIGKILL);
        ASSERT_TRUE(QFile::exists(path + QStringLiteral("-journal")));
        Child second([&](const Child::Tell& tell) {
            BadDisk disk;
            disk.fail(Act::write, at, BadDisk::How::process_dies);
            tell(book::Workbook::open(path) ? "opened" : "refused");
        });
        const auto told = second.rest();
        expect_sound(path, "write " + std::to_string(at));
        EXPECT_EQ(entries_in(path).size(), 30U);
        if (!told.empty()) {
            EXPECT_EQ(told.front(), "opened");
            break;
        }
        EXPECT_EQ(second.died_of(), SIGKILL);
        ++kills;
    }
    RecordProperty("kills", kills);
    EXPECT_GT(kills, 2);
}

TEST_F(Killed, while_it_makes_safe_copies_there_are_never_fewer_good_ones) {
    const QString copies = ground.file("copies");
    std::vector<book::SafeCopy> before;
    int most = 0;
    const int kills = cases(25, 1000);
    for (int i = 0; i < kills && !HasFatalFailure(); ++i) {
        Child child([&](const Child::Tell& tell) {
            auto opened = book::Workbook::open(path);
            if (!opened)
                return tell("not opened");
            for (int n = highest + 1;; ++n) {
                make_entry(**opened, n);
                tell(std::to_string(n));
                tell(book::make_safe_copy(**opened, copies) ? "copied" : "not copied");
            }
        });
        std::vector<std::string> told{child.line()};
        if (i % 3 == 0) // die in the second copy, not in the first
            told.push_back(child.line());
        pause_up_to(60'000);
        child.kill();
        for (const std::string& line : child.rest())
            told.push_back(line);
        EXPECT_EQ(std::count(told.begin(), told.end(), "not copied"), 0);
        told.erase(std::remove(told.begin(), told.end(), "copied"), told.end());
        take(told);
        expect_all_there("kill " + std::to_string(i));
        const auto now = copies_now(copies);
        const auto is_in = [](const std::vector<book::SafeCopy>& list, const book::SafeCopy& copy) {
            return std::any_of(list.begin(), list.end(), [&](const book::SafeCopy& other) { return other.path == copy.path; });
        };
        for (const book::SafeCopy& copy : now)
            ASSERT_TRUE(is_in(before, copy) || book::verify(copy.path).sound()) << copy.path.toStdString();
        // One that went had twenty good ones after it.
        for (const book::SafeCopy& copy : before) {
            const auto newer = std::count_if(now.begin(), now.end(), [&](const book::SafeCopy& other) { return other.last_seq > copy.last_seq; });
            ASSERT_TRUE(is_in(now, copy) || newer >= 20) << copy.path.toStdString();
        }
        before = now;
        most = std::max(most, static_cast<int>(now.size()));
    }
    RecordProperty("kills", kills);
    EXPECT_GE(most, std::min(20, kills / 3));
}

TEST_F(Killed, while_it_brings_an_older_workbook_up_that_is_old_or_new_and_whole) {
    put(path, workbook_of_version_1());
    const std::string records = tests::records_of(path);
    const QString copies = ground.file("copies");
    int kills = 0;
    int old = 0;
    const int step = cases(25, 1);
    for (const Act act : {Act::write, Act::sync, Act::remove}) {
        for (int at = 1; at < 100'000 && !HasFailure(); at += act == Act::write ? step : 1) {
            put(path, workbook_of_version_1());
            QFile::remove(path + QStringLiteral("-journal"));
            QDir(copies).removeRecursively();
            Child child([&](const Child::Tell& tell) {
                BadDisk disk;
                disk.fail(act, at, BadDisk::How::process_dies);
                tell(book::Workbook::open(path, copies) ? "opened" : "refused");
            });
            const auto told = child.rest();
            for (const QString& copy : QDir(copies).entryList({QStringLiteral("*.soakbook")}, QDir::Files))
                EXPECT_TRUE(book::verify(QDir(copies).filePath(copy)).sound()) << at;
            if (QFile::exists(path + QStringLiteral("-journal")) || tests::Raw(path).cell("PRAGMA user_version") == "1")
                ++old;
            expect_sound(path, "act " + std::to_string(static_cast<int>(act)) + " number " + std::to_string(at));
            EXPECT_EQ(tests::records_of(path), records);
            if (!told.empty()) {
                EXPECT_EQ(told.front(), "opened");
                break;
            }
            EXPECT_EQ(child.died_of(), SIGKILL);
            ++kills;
        }
    }
    RecordProperty("kills", kills);
    EXPECT_GT(kills, 8);
    EXPECT_GT(old, 0);
}

} // namespace soakbook::faults
