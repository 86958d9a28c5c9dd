// SPDX-License-Identifier: GPL-3.0-or-later
// Two beekeepers carried the workbook apart: what one of them did comes into the other's, through the work itself.
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/batch.h"
#include "core/work/apart.h"
#include "core/work/due.h"
#include "core/work/salvage.h"
#include "core/work/undo.h"
#include "yards_bench.h"

#include <QDir>
#include <QFile>

#include <gmock/gmock.h>

namespace soakbook::tests {

namespace {

using testing::Contains;
using testing::SizeIs;
using work::Why;

// A batch with twelve bags in both; then each goes on alone.
class Two_copies : public testing::Test {
protected:
    Two_copies() {
        batch = bench.bagged_batch(0, 1);
        stick = bench.path() + QStringLiteral(".stick.soakbook");
        bench.reopen();
        EXPECT_TRUE(QFile::copy(bench.path(), stick));
        auto book = book::Workbook::open(stick);
        if (!book)
            throw std::runtime_error("the copy did not open");
        other = std::move(*book);
    }
    std::unique_ptr<work::Apart> compared() {
        other.reset();
        auto apart = work::Apart::open(bench.book(), stick);
        if (!apart)
            throw std::runtime_error("not compared: " + std::to_string(static_cast<int>(apart.error())));
        return std::move(*apart);
    }
    static work::TakeOverRequest all_of(const work::Apart& apart) {
        work::TakeOverRequest request;
        for (const work::LoneEntry& entry : apart.view().only_there)
            request.entries.insert(entry.key);
        return request;
    }

    YardsBench bench;
    work::BatchId batch;
    QString stick;
    std::unique_ptr<book::Workbook> other;
};

} // namespace

TEST_F(Two_copies, a_label_given_out_in_both_is_new_for_the_one_taken_over_and_due_says_so) {
    const auto mine = must(work::reserve_labels(bench.book(), batch, 1, on_day(3)));
    const auto theirs = must(work::reserve_labels(*other, batch, 2, on_day(3, 14)));
    ASSERT_EQ(mine.codes.front(), theirs.codes.front());
    const auto apart = compared();
    EXPECT_EQ(apart->view().how, work::HowApart::apart);
    ASSERT_THAT(apart->view().only_there, SizeIs(1));
    EXPECT_TRUE(apart->view().only_there.front().something_new);
    const auto taken = must(apart->take_over(all_of(*apart), because(QStringLiteral("filled on the road"), 4)));
    ASSERT_THAT(taken.codes, SizeIs(1));
    EXPECT_EQ(taken.codes.front().code, mine.codes.front());
    EXPECT_NE(taken.codes.front().now, theirs.codes.back());
    EXPECT_EQ(taken.added, 2);
    EXPECT_FALSE(apart->view().only_there.front().something_new);
    const auto due = work::due(bench.book(), moment(4, 13));
    const auto again = std::find_if(due.begin(), due.end(), [](const work::DueRow& row) { return row.kind == work::DueKind::print_label_again; });
    ASSERT_NE(again, due.end());
    EXPECT_EQ(again->count, 1);
    EXPECT_EQ(must(work::undo(bench.book(), on_day(5))).key, QStringLiteral("taken_over"));
    EXPECT_TRUE(work::reserve_labels(bench.book(), batch, 1, on_day(5)));
}

TEST_F(Two_copies, nothing_is_taken_over_without_a_reason_or_without_an_entry) {
    must(work::reserve_labels(*other, batch, 2, on_day(3)));
    const auto apart = compared();
    EXPECT_TRUE(refused(apart->take_over(all_of(*apart), on_day(4)), Why::reason_missing, QStringLiteral("reason")));
    EXPECT_TRUE(refused(apart->take_over({}, because(QStringLiteral("both wrote"), 4)), Why::missing, QStringLiteral("entries")));
}

TEST_F(Two_copies, a_damaged_copy_gives_nothing) {
    must(work::reserve_labels(*other, batch, 2, on_day(3)));
    const auto apart = compared();
    QFile file(stick);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    QByteArray bytes = file.readAll();
    const qsizetype at = bytes.lastIndexOf("Ada");
    ASSERT_GT(at, 0);
    bytes[at] = 'E';
    file.seek(0);
    file.write(bytes);
    file.close();
    EXPECT_TRUE(refused(apart->take_over(all_of(*apart), because(QStringLiteral("both wrote"), 4)), Why::copy_unsound));
}

TEST_F(Two_copies, a_loss_written_there_for_a_batch_that_was_closed_here_is_reckoned_anew) {
    must(work::log_loss(*other, batch, work::NamedLoss::spill, maths::kilograms(2), {}, on_day(3)));
    must(work::close_batch(bench.book(), batch, on_day(3), {Why::loss_unexplained}));
    const auto before = must(work::balance(bench.book(), batch));
    const auto apart = compared();
    must(apart->take_over(all_of(*apart), because(QStringLiteral("spilt at the other bench"), 4)));
    EXPECT_EQ(must(work::balance(bench.book(), batch)).unexplained, before.unexplained - maths::kilograms(2));
    EXPECT_EQ(book::fetch(bench.book(), batch)->unexplained, before.unexplained - maths::kilograms(2));
}

TEST_F(Two_copies, other_files_are_told_apart) {
    const auto why = [this](const QString& path) {
        const auto apart = work::Apart::open(bench.book(), path);
        return apart ? std::nullopt : std::optional(apart.error());
    };
    YardsBench stranger;
    stranger.reopen();
    EXPECT_EQ(why(stranger.path()), work::NotCompared::stranger);
    EXPECT_EQ(why(bench.path()), work::NotCompared::itself);
    EXPECT_EQ(why(bench.path() + QStringLiteral(".gone")), work::NotCompared::not_there);
}

TEST_F(Two_copies, a_damaged_workbook_is_saved_as_tables_and_no_file_is_written_over) {
    other.reset();
    const auto left = work::WhatIsLeft::read(stick);
    ASSERT_TRUE(left);
    QTemporaryDir folder;
    work::TableWording plain;
    plain.table = [](const QString& table) { return table; };
    plain.column = [](const QString& column) { return column; };
    plain.value = [](const QString&, const QString& value) { return exchange::CsvCell{value, false}; };
    plain.sure = [](work::HowSure sure) { return sure == work::HowSure::agrees ? QStringLiteral("agrees") : QStringLiteral("no"); };
    plain.sure_column = QStringLiteral("sure");
    const int files = must(work::save_as_tables(**left, folder.path(), plain));
    EXPECT_GT(files, 8);
    QFile bags(folder.path() + QStringLiteral("/") + QFileInfo(stick).completeBaseName() + QStringLiteral(" - bag.csv"));
    ASSERT_TRUE(bags.open(QIODevice::ReadOnly));
    const auto rows = exchange::read_csv(bags.readAll());
    ASSERT_TRUE(rows);
    EXPECT_THAT(*rows, SizeIs(1 + bench.bags_of(batch).size()));
    EXPECT_EQ(rows->front().last(), QStringLiteral("sure"));
    EXPECT_EQ(rows->back().last(), QStringLiteral("agrees"));
    const QString code = book::fetch(bench.book(), bench.bags_of(batch).front())->code;
    EXPECT_THAT((*rows)[1], Contains(code));
    EXPECT_TRUE(refused(work::save_as_tables(**left, folder.path(), plain), Why::name_taken));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), files);
    EXPECT_TRUE(refused(work::save_as_tables(**left, folder.path() + QStringLiteral("/gone"), plain), Why::read_only));
}

} // namespace soakbook::tests
