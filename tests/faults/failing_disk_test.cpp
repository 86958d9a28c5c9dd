// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fails at the k-th read, write, sync, cut or removal of a piece of work, once or for ever. Then nothing of it
// is there, or all of it; what was there before is unchanged; and the work can be done again.
#include "bad_disk.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"
#include "failing_acts.h"
#include "trial.h"

#include <QDir>
#include <QFile>
#include <QStringList>

namespace soakbook::faults {

namespace {
class FailingDisk : public ::testing::TestWithParam<int> {};
} // namespace

TEST_P(FailingDisk, at_any_moment_of_a_piece_of_work_leaves_all_or_nothing_and_lets_it_be_done_again) {
    const PieceOfWork& piece = plain_pieces().at(static_cast<std::size_t>(GetParam()));
    const int failures = try_every_act(piece, cases(3, 100'000));
    EXPECT_GT(failures, 12);
}
INSTANTIATE_TEST_SUITE_P(Pieces, FailingDisk, ::testing::Range(0, 6));

TEST(WorkThatFailed, lets_go_of_the_file_for_others) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    BadDisk disk;
    auto opened = book::Workbook::open(path);
    disk.fail(Act::write, 1, BadDisk::How::fails_from_then_on);
    EXPECT_THROW(make_entry(**opened, 31), book::DiskFull);
    disk.heal();
    EXPECT_EQ(tests::Raw(path).run("BEGIN IMMEDIATE; ROLLBACK"), "");
}

TEST(WorkThatIsDown, does_not_look_refused_because_a_page_could_not_be_read_again) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    auto opened = book::Workbook::open(path);
    int told = 0;
    const auto stop = (*opened)->subscribe([&](const book::Changed&) {
        ++told;
        throw book::DiskFailed(10, "the page could not be read");
    });
    EXPECT_NO_THROW(make_entry(**opened, 31));
    EXPECT_EQ(told, 1);
    EXPECT_EQ(entries_in(path).size(), 31U);
    EXPECT_TRUE((*opened)->undo_stack().next_undo().has_value());
    stop();
    EXPECT_NO_THROW(make_entry(**opened, 32));
}

TEST(NewWorkbook, that_the_disk_does_not_take_is_not_left_half_there) {
    int failures = 0;
    for (int at = 1; at < 40; ++at) {
        const Ground ground;
        const QString path = ground.file("new.soakbook");
        BadDisk disk;
        disk.fail(Act::write, at * 3, BadDisk::How::fails_from_then_on);
        const bool made = book::Workbook::create(path, on_day(0)).has_value();
        const bool came = disk.came();
        disk.heal();
        EXPECT_EQ(made, !came) << at;
        failures += came ? 1 : 0;
        EXPECT_EQ(QFile::exists(path), made) << at;
        const QStringList beside = QDir(ground.path()).entryList(QDir::Files | QDir::Hidden | QDir::System);
        EXPECT_EQ(beside, made ? QStringList{QStringLiteral("new.soakbook")} : QStringList()) << at << beside.join(QLatin1Char(' ')).toStdString();
    }
    RecordProperty("failures", failures);
    EXPECT_GT(failures, 20);
}

} // namespace soakbook::faults
