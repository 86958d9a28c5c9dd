// SPDX-License-Identifier: GPL-3.0-or-later
// The power goes while work is written: of what was not synced any part is on the disk, in any order, torn where two
// sectors meet. What was acknowledged is there, whole.
#include "child.h"
#include "ground.h"
#include "torn_disk.h"

#include <QDir>
#include <QFile>

#include <csignal>

namespace soakbook::faults {

namespace {

struct PowerCut : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    QString journal = path + QStringLiteral("-journal");
    int hot = 0; ///< cuts that left a journal behind

    void SetUp() override { fresh(); }
    void fresh() const {
        put(path, filled_workbook());
        QFile::remove(journal);
        (void)book::Workbook::open(path);
    }
    /// Makes entries from 31 on until the power goes; gives how many were acknowledged.
    int acknowledged_until_cut(int act, unsigned chance) {
        Child child([&](const Child::Tell& tell) {
            TornDisk disk;
            auto opened = book::Workbook::open(path);
            if (!opened)
                return tell("not opened");
            disk.cut_power_at(act, chance);
            for (int n = 31; n < 231; ++n) {
                make_entry(**opened, n);
                tell(std::to_string(n));
            }
            tell("the power held");
        });
        const auto told = child.rest();
        EXPECT_EQ(child.died_of(), SIGKILL) << (told.empty() ? "nothing was told" : told.back());
        hot += QFile::exists(journal) ? 1 : 0;
        return static_cast<int>(told.size());
    }
    void expect_all_there(int acknowledged, const std::string& when) const {
        expect_sound(path, when);
        const std::set<int> there = entries_in(path);
        for (int n = 1; n <= 30 + acknowledged; ++n)
            ASSERT_TRUE(there.count(n)) << when << ": entry " << n << " is lost";
        ASSERT_LE(there.size(), 31U + static_cast<unsigned>(acknowledged)) << when;
    }
};

} // namespace

TEST_F(PowerCut, loses_nothing_that_was_acknowledged_whatever_of_the_rest_came_down) {
    const int cuts = cases(60, 5'000);
    int entries = 0;
    for (int i = 0; i < cuts && !HasFailure(); ++i) {
        fresh();
        // A prime step, so that every moment of an entry has its turn.
        const int acknowledged = acknowledged_until_cut(1 + i * 37 % 331, static_cast<unsigned>(i));
        expect_all_there(acknowledged, "cut " + std::to_string(i));
        entries += acknowledged;
    }
    RecordProperty("cuts", cuts);
    RecordProperty("entries", entries);
    std::printf("  %d cuts, %d left a journal behind, %d entries acknowledged\n", cuts, hot, entries);
    EXPECT_GT(hot, cuts / 10);
    EXPECT_GT(entries, cuts / 2);
}

TEST_F(PowerCut, in_the_recovery_from_a_power_cut_recovers_the_next_time) {
    const int wanted = cases(12, 1'000);
    int cuts = 0;
    for (unsigned i = 0; cuts < wanted && i < static_cast<unsigned>(wanted) * 20 && !HasFailure(); ++i) {
        fresh();
        const int acknowledged = acknowledged_until_cut(1 + static_cast<int>(i * 37 % 331), i);
        if (!QFile::exists(journal))
            continue;
        for (int again = 1; again <= 3; ++again) {
            Child child([&](const Child::Tell&) {
                TornDisk disk;
                disk.cut_power_at(1 + static_cast<int>(i + static_cast<unsigned>(again)) % 12, i + 1'000'000U * static_cast<unsigned>(again));
                (void)book::Workbook::open(path);
            });
            child.rest();
            cuts += child.died_of() == SIGKILL ? 1 : 0;
        }
        expect_all_there(acknowledged, "cut " + std::to_string(i));
    }
    RecordProperty("cuts", cuts);
    EXPECT_GE(cuts, wanted);
}

TEST_F(PowerCut, while_an_older_workbook_is_brought_up_leaves_it_old_or_new_and_whole) {
    const QString copies = ground.file("copies");
    put(path, workbook_of_version_1());
    const std::string records = tests::records_of(path);
    const int wanted = cases(12, 1'000);
    int cuts = 0;
    int brought_up = 0;
    for (int i = 0; i < wanted && !HasFailure(); ++i) {
        put(path, workbook_of_version_1());
        QFile::remove(journal);
        QDir(copies).removeRecursively();
        Child child([&](const Child::Tell&) {
            TornDisk disk;
            disk.cut_power_at(1 + i * 37 % 401, static_cast<unsigned>(i));
            (void)book::Workbook::open(path, copies);
        });
        child.rest();
        cuts += child.died_of() == SIGKILL ? 1 : 0;
        brought_up += child.died_of() == 0 ? 1 : 0;
        expect_sound(path, "cut " + std::to_string(i));
        EXPECT_EQ(tests::records_of(path), records) << i;
    }
    RecordProperty("cuts", cuts);
    EXPECT_GT(cuts, wanted / 2) << brought_up << " came through before the cut";
}

} // namespace soakbook::faults
