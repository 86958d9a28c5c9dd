// SPDX-License-Identifier: GPL-3.0-or-later
// A small workbook of the generator that the benchmarks stand on: sound, within the laws, and what it says it is.
#include "page_reads.h"
#include "quiet_disk.h"
#include "years.h"

#include "core/book/verify.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <stdexcept>

#include <sqlite3.h>

namespace soakbook::tests {

namespace {

YearsWish small_wish() {
    YearsWish wish;
    wish.years = 2;
    wish.hives = 120;
    wish.seed = 3;
    return wish;
}

/// One workbook for all of it, closed.
struct AFewYears : ::testing::Test {
    static void SetUpTestSuite() {
        const QuietDisk quiet;
        s_folder = std::make_unique<QTemporaryDir>();
        workbook_of_years(path(), small_wish(), &s_made);
    }
    static void TearDownTestSuite() { s_folder.reset(); }
    static QString path() { return s_folder->filePath(QStringLiteral("years.soakbook")); }
    /// One number, as plain SQLite reads it.
    static long long number(const char* sql) {
        sqlite3* db = nullptr;
        sqlite3_stmt* row = nullptr;
        long long found = -1;
        sqlite3_open_v2(QFile::encodeName(path()).constData(), &db, SQLITE_OPEN_READONLY, nullptr);
        if (sqlite3_prepare_v2(db, sql, -1, &row, nullptr) == SQLITE_OK && sqlite3_step(row) == SQLITE_ROW)
            found = sqlite3_column_int64(row, 0);
        else
            ADD_FAILURE() << sqlite3_errmsg(db);
        sqlite3_finalize(row);
        sqlite3_close(db);
        return found;
    }
    static std::unique_ptr<QTemporaryDir> s_folder;
    static YearsMade s_made;
};
std::unique_ptr<QTemporaryDir> AFewYears::s_folder;
YearsMade AFewYears::s_made;

} // namespace

TEST_F(AFewYears, are_sound) {
    const book::Verdict verdict = book::verify(path());
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.outside, 0);
    EXPECT_EQ(verdict.unsealed, 0);
    EXPECT_EQ(verdict.last_seq, number("SELECT max(seq) FROM change"));
}

TEST_F(AFewYears, hold_what_was_said_to_be_done) {
    EXPECT_EQ(s_made.pieces, number("SELECT count(DISTINCT piece) FROM change"));
    EXPECT_EQ(s_made.yards, number("SELECT count(*) FROM yard"));
    EXPECT_EQ(s_made.hives, number("SELECT count(*) FROM hive"));
    EXPECT_EQ(s_made.hives_dead, number("SELECT count(*) FROM hive WHERE state = 'dead'"));
    EXPECT_EQ(s_made.hives_moved, number("SELECT count(*) FROM hive_move"));
    EXPECT_EQ(s_made.lots, number("SELECT count(*) FROM material_lot"));
    EXPECT_EQ(s_made.batches, number("SELECT count(*) FROM batch WHERE closed_ms IS NOT NULL"));
    EXPECT_EQ(s_made.soaks, number("SELECT count(*) FROM soak WHERE ended_ms IS NOT NULL"));
    EXPECT_EQ(s_made.weighings, number("SELECT count(*) FROM weigh_in"));
    EXPECT_EQ(s_made.bags, number("SELECT count(*) FROM bag"));
    EXPECT_EQ(s_made.bags_void, number("SELECT count(*) FROM bag WHERE void_reason IS NOT NULL"));
    EXPECT_EQ(s_made.pails, number("SELECT count(*) FROM pail"));
    EXPECT_EQ(s_made.rounds, number("SELECT count(*) FROM round"));
    EXPECT_EQ(s_made.visits, number("SELECT count(*) FROM round_yard WHERE visited_on IS NOT NULL"));
    EXPECT_EQ(s_made.strips_hung, number("SELECT sum(strips) FROM placement WHERE void_reason IS NULL"));
    EXPECT_EQ(s_made.strips_out, number("SELECT sum(pulled) FROM placement WHERE void_reason IS NULL"));
    EXPECT_EQ(s_made.strips_missing, number("SELECT sum(missing) FROM placement WHERE void_reason IS NULL"));
    EXPECT_EQ(s_made.strips_discarded, number("SELECT coalesce(-sum(strips), 0) FROM bag_change WHERE kind = 'discard'"));
    EXPECT_EQ(s_made.placements_void, number("SELECT count(*) FROM placement WHERE void_reason IS NOT NULL"));
    EXPECT_EQ(s_made.counts, number("SELECT count(*) FROM mite_count"));
    EXPECT_EQ(s_made.corrections, number("SELECT count(DISTINCT piece) FROM change WHERE why <> ''"));
    EXPECT_EQ(s_made.undone, number("SELECT count(DISTINCT piece) FROM change WHERE work GLOB 'undo:*'"));
}

TEST_F(AFewYears, end_with_strips_in_the_hives_and_hold_some_of_everything) {
    EXPECT_GT(number("SELECT count(*) FROM placement WHERE pulled_on IS NULL AND void_reason IS NULL"), 20);
    EXPECT_GT(s_made.corrections, 0);
    EXPECT_GT(s_made.pails, 0);
    EXPECT_GT(s_made.counts, 0);
    EXPECT_GT(s_made.strips_missing, 0);
    EXPECT_EQ(number("SELECT count(*) FROM placement WHERE placed_on > '2026-09-15'"), 0);
}

TEST_F(AFewYears, keep_the_laws) {
    EXPECT_EQ(number("SELECT count(*) FROM batch b WHERE (SELECT sum(mass_mg) FROM batch_input WHERE batch_id = b.id AND void_reason IS NULL) "
                     "<> taken_mg + unexplained_mg + (SELECT coalesce(sum(mass_mg), 0) FROM pail WHERE batch_id = b.id AND void_reason IS NULL) "
                     "+ (SELECT coalesce(sum(mass_mg), 0) FROM batch_loss WHERE batch_id = b.id AND void_reason IS NULL)"),
              0)
        << "law 1: mass is kept";
    EXPECT_EQ(number("SELECT count(*) FROM batch_input i JOIN pail p ON p.id = i.pail_id WHERE i.void_reason IS NULL AND i.mass_mg <> p.mass_mg"), 0)
        << "law 2: pails go in whole";
    EXPECT_EQ(number("SELECT count(*) FROM bag_stock WHERE left_over < 0"), 0) << "law 3";
    EXPECT_EQ(number("SELECT count(*) FROM placement p JOIN bag b ON b.id = p.bag_id WHERE p.void_reason IS NULL AND "
                     "(p.placed_on < b.sealed_on OR (p.placed_on > b.use_by AND p.past_limit_reason IS NULL))"),
              0)
        << "law 4: nothing hung before its bag was sealed or past its limit";
    EXPECT_EQ(number("SELECT count(*) FROM placement WHERE pulled + missing <> strips OR pulled_on < placed_on"), 0) << "law 8";
}

TEST_F(AFewYears, are_the_same_for_the_same_wish) {
    const QuietDisk quiet;
    YearsMade again;
    workbook_of_years(s_folder->filePath(QStringLiteral("again.soakbook")), small_wish(), &again);
    EXPECT_EQ(again.pieces, s_made.pieces);
    EXPECT_EQ(again.strips_hung, s_made.strips_hung);
    EXPECT_EQ(again.strips_out, s_made.strips_out);
    EXPECT_EQ(again.counts, s_made.counts);
    EXPECT_EQ(again.corrections, s_made.corrections);
}

TEST_F(AFewYears, are_read_by_every_page) {
    const auto workbook = book::Workbook::open(path());
    ASSERT_TRUE(workbook.has_value());
    for (const PageRead& page : page_reads(**workbook, small_wish().last))
        EXPECT_GT(page.read(), 0U) << page.name;
}

} // namespace soakbook::tests
