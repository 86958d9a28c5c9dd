// SPDX-License-Identifier: GPL-3.0-or-later
// Others at the same file, and clocks that are wrong: nothing is lost, nothing is overwritten blindly, and the order is
// that of the entries.
#include "child.h"
#include "core/book/history.h"
#include "core/book/record_io.h"
#include "core/book/safe_copy.h"
#include "core/book/statement.h"
#include "ground.h"

#include <QDir>
#include <QFile>

#include <csignal>
#include <cstdlib>

#include <unistd.h>

namespace soakbook::faults {

namespace {

struct Others : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    void SetUp() override {
        put(path, filled_workbook());
        (void)book::Workbook::open(path);
    }
};

book::Doing years_off(int years) {
    book::Doing doing = on_day(10);
    doing.at.utc_ms += std::int64_t{years} * 365 * 24 * 3600 * 1000;
    return doing;
}

} // namespace

TEST_F(Others, two_processes_at_one_file_write_in_turn_and_lose_nothing) {
    const int each = cases(40, 1000);
    const auto writer = [&](int first) {
        return [this, first, each](const Child::Tell& tell) {
            auto opened = book::Workbook::open(path);
            while (!opened && opened.error() == book::NotOpened::busy) {
                ::usleep(500);
                opened = book::Workbook::open(path);
            }
            if (!opened)
                return tell("not opened");
            int held = 0;
            for (int n = first; n < first + each;) {
                try {
                    make_entry(**opened, n);
                    ++n;
                    ::usleep(500);
                } catch (const book::Busy&) {
                    ++held;
                    ::usleep(300);
                } catch (const book::ChangedOutside&) {
                    ++held;
                }
            }
            tell("done");
            tell(std::to_string(held));
        };
    };
    Child one(writer(1000));
    Child two(writer(5000));
    const auto first = one.rest();
    const auto second = two.rest();
    ASSERT_EQ(first.size(), 2U) << (first.empty() ? "" : first.front());
    ASSERT_EQ(second.size(), 2U) << (second.empty() ? "" : second.front());
    EXPECT_GT(std::stoi(first.back()) + std::stoi(second.back()), 0) << "they never met";
    EXPECT_EQ(entries_in(path).size(), 30U + 2U * static_cast<unsigned>(each));
    expect_sound(path, "after both");
}

TEST_F(Others, a_lock_held_for_long_holds_up_nobody_and_loses_no_entry) {
    Child holder([&](const Child::Tell& tell) {
        tests::Raw raw(path);
        tell("held " + raw.run("BEGIN EXCLUSIVE"));
        ::pause();
    });
    ASSERT_EQ(holder.line(), "held ");
    {
        const auto refused = book::Workbook::open(path);
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error(), book::NotOpened::busy);
    }
    holder.kill();
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(opened.has_value());
    make_entry(**opened, 31);
    opened->reset();
    EXPECT_EQ(entries_in(path).size(), 31U);
}

TEST_F(Others, a_lock_that_lasts_a_moment_or_a_minute_freezes_nobody_and_the_entry_is_made_when_it_is_gone) {
    const auto moments = std::getenv("SOAKBOOK_LONG") ? std::vector<int>{100, 4'000, 60'000} : std::vector<int>{100, 700};
    for (const int milliseconds : moments) {
        put(path, filled_workbook());
        const QString go = ground.file("go");
        QFile::remove(go);
        Child holder([&](const Child::Tell& tell) {
            tests::Raw raw(path);
            tell("held " + raw.run("BEGIN IMMEDIATE"));
            while (!QFile::exists(go))
                ::usleep(1000);
            ::usleep(static_cast<useconds_t>(milliseconds) * 1000U);
            raw.run("ROLLBACK");
            tell("let go");
        });
        ASSERT_EQ(holder.line(), "held ");
        Child writer([&](const Child::Tell& tell) {
            // The window would stand still as long as one try takes.
            ::alarm(20);
            auto opened = book::Workbook::open(path);
            if (!opened)
                return tell("not opened");
            for (int tries = 1;; ++tries) {
                ::alarm(20);
                try {
                    make_entry(**opened, 31);
                    return tell(std::to_string(tries));
                } catch (const book::Busy&) {
                    put(go, "go");
                    ::usleep(20'000);
                }
            }
        });
        const auto tries = writer.rest();
        EXPECT_EQ(writer.died_of(), 0) << milliseconds << " ms: it stood still";
        ASSERT_EQ(tries.size(), 1U);
        EXPECT_GT(std::atoi(tries.front().c_str()), 1) << tries.front();
        EXPECT_EQ(holder.rest(), std::vector<std::string>{"let go"});
        EXPECT_EQ(entries_in(path).size(), 31U);
        expect_sound(path, "after the lock");
    }
}

TEST_F(Others, what_another_program_edits_while_it_is_open_is_told_kept_counted_and_sealed) {
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(opened.has_value());
    Child editor([&](const Child::Tell& tell) {
        tests::Raw raw(path);
        tell("said " + raw.run("UPDATE yard SET note = 'edited' WHERE name = 'entry 3'; DELETE FROM mite_count"));
    });
    EXPECT_EQ(editor.rest(), std::vector<std::string>{"said "});
    EXPECT_THROW(make_entry(**opened, 31), book::ChangedOutside);
    EXPECT_NO_THROW(make_entry(**opened, 31));
    const auto newest = book::newest_changes(**opened, 4);
    EXPECT_TRUE(newest[0].piece && newest[1].piece);
    EXPECT_FALSE(newest[2].piece || newest[3].piece);
    opened->reset();
    const auto verdict = expect_sound(path, "after the edit");
    EXPECT_EQ(verdict.outside, 2);
    EXPECT_EQ(verdict.unsealed, 0);
}

TEST_F(Others, a_copy_edited_apart_laid_over_the_open_file_is_noticed_though_its_counter_is_the_same) {
    // Both copies make one entry more: the counter by which SQLite knows a changed file is the same in both.
    const QString other = ground.file("other.soakbook");
    put(other, filled_workbook());
    {
        auto apart = book::Workbook::open(other);
        make_entry(**apart, 77);
    }
    auto opened = book::Workbook::open(path);
    make_entry(**opened, 31);
    const QByteArray theirs = bytes_of(other);
    ASSERT_EQ(theirs.mid(24, 4), bytes_of(path).mid(24, 4));
    Child copier([&](const Child::Tell&) { put(path, theirs); });
    copier.rest();
    EXPECT_THROW(make_entry(**opened, 32), book::ReadOnly);
    EXPECT_THROW(make_entry(**opened, 32), book::ReadOnly);
    opened->reset();
    EXPECT_EQ(bytes_of(path), theirs);
}

TEST_F(Others, an_older_copy_put_back_is_told_by_what_was_verified_before) {
    const QByteArray older = bytes_of(path);
    {
        auto opened = book::Workbook::open(path);
        for (int n = 31; n < 38; ++n)
            make_entry(**opened, n);
    }
    const auto before = book::verify(path);
    ASSERT_TRUE(before.sound());
    put(path, older);
    const auto after = book::verify(path, before.until);
    EXPECT_FALSE(after.sound());
    EXPECT_EQ(after.first_bad()->check, book::Check::anchor);
    EXPECT_EQ(before.last_seq - after.last_seq, 14) << "seven entries of two records are missing";
}

TEST_F(Others, copies_made_by_cp_while_it_is_written_are_sound_or_found_out) {
    int sound = 0;
    int found_out = 0;
    Child writer([&](const Child::Tell& tell) {
        auto opened = book::Workbook::open(path);
        for (int n = 31; n < cases(2'000, 10'031); ++n) {
            make_entry(**opened, n);
            ::usleep(1500);
        }
        tell("written");
        ::pause();
    });
    const QString copy = ground.file("copy.soakbook");
    for (int i = 0; i < cases(25, 1'000); ++i) {
        put(copy, bytes_of(path));
        const bool good = book::Workbook::open(copy).has_value() && book::verify(copy).sound();
        (good ? sound : found_out)++;
        if (good)
            (void)entries_in(copy);
    }
    writer.kill();
    RecordProperty("sound", sound);
    RecordProperty("found_out", found_out);
    EXPECT_GT(sound, 0);
    expect_sound(path, "the original");
}

TEST_F(Others, clocks_ten_years_back_and_forth_leave_the_order_to_the_numbers) {
    const QString copies = ground.file("copies");
    auto opened = book::Workbook::open(path);
    int n = 31;
    QString newest;
    for (const int years : {0, -10, 10, -10, 0}) {
        make_entry(**opened, n++, years_off(years));
        const auto copy = book::make_safe_copy(**opened, copies);
        ASSERT_TRUE(copy.has_value());
        newest = copy->path;
    }
    EXPECT_EQ(book::newest_safe_copy(**opened, copies)->path, newest);
    EXPECT_EQ(QDir(copies).entryList(QDir::Files).size(), 5);
    const auto changes = book::newest_changes(**opened, 10);
    for (std::size_t i = 1; i < changes.size(); ++i)
        EXPECT_GT(changes[i - 1].seq, changes[i].seq);
    EXPECT_EQ(changes[0].at, years_off(0).at);
    EXPECT_EQ(changes[2].at, years_off(-10).at);
    opened->reset();
    EXPECT_EQ(tests::Raw(path).cell("SELECT group_concat(clock_doubtful) FROM (SELECT clock_doubtful FROM change ORDER BY seq DESC LIMIT 10)"),
              "0,0,1,1,0,0,1,1,0,0") << "a clock set back is noted as doubtful";
    expect_sound(path, "after the clocks");
}

} // namespace soakbook::faults
