// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fails at the k-th read, write, sync, cut or removal of a piece of work, once or for ever. Then nothing of it
// is there, or all of it; what was there before is unchanged; and the work can be done again.
#include "bad_disk.h"
#include "core/book/record_io.h"
#include "core/book/shown.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"
#include "ground.h"

#include <QDir>
#include <QFile>
#include <QStringList>

#include <functional>

namespace soakbook::faults {

namespace {

using book::Workbook;
using book::Writing;

struct Done {
    explicit operator bool() const { return true; }
};

struct PieceOfWork {
    const char* name;
    std::function<void(Workbook&)> before; ///< in peace
    std::function<void(Workbook&)> work;
};

template <class F> void write(Workbook& workbook, F&& f) {
    workbook.write({QStringLiteral("yard"), 1, {}}, on_day(12), [&](Writing& w) {
        f(w);
        return Done{};
    });
}

const std::vector<PieceOfWork>& six_pieces() {
    static const std::vector<PieceOfWork> pieces{
        {"a new entry", {}, [](Workbook& b) { make_entry(b, 31); }},
        {"forty hives at once", {},
         [](Workbook& b) {
             write(b, [](Writing& w) {
                 for (int i = 0; i < 40; ++i)
                     book::insert(w, book::Yard{{}, QStringLiteral("many %1").arg(i), QString(300, QLatin1Char('w')), {}, true});
             });
         }},
        {"a correction", {},
         [](Workbook& b) {
             write(b, [&b](Writing& w) {
                 for (book::Yard yard : book::fetch_all<book::Yard>(b)) {
                     yard.note = QStringLiteral("corrected");
                     book::update(w, yard);
                 }
             });
         }},
        {"a record made void", {},
         [](Workbook& b) {
             write(b, [&b](Writing& w) {
                 book::Hive hive = book::fetch_all<book::Hive>(b).back();
                 hive.void_reason = QStringLiteral("entered twice");
                 book::update(w, hive);
             });
         }},
        {"a paper", {},
         [](Workbook& b) {
             write(b, [](Writing& w) {
                 w.keep_from_undo();
                 book::note_shown(w, QStringLiteral("bag"), {1, 2}, QStringLiteral("register"));
             });
         }},
        {"an undo", [](Workbook& b) { make_entry(b, 31); },
         [](Workbook& b) {
             // A second try after the first got down has nothing left to take back.
             if (b.undo_stack().next_undo() && !b.undo_stack().undo(on_day(12)))
                 throw std::runtime_error("undo was refused");
         }},
    };
    return pieces;
}

/// Does the piece in a workbook of its own; gives everything that is in it afterwards.
struct Trial {
    Ground ground;
    QString path = ground.file("book.soakbook");
    std::unique_ptr<Workbook> book;

    explicit Trial(const PieceOfWork& piece) {
        put(path, filled_workbook());
        auto opened = Workbook::open(path);
        if (!opened)
            throw std::runtime_error("the workbook did not open");
        book = std::move(*opened);
        if (piece.before)
            piece.before(*book);
    }
};

std::string state_of(const Trial& trial) { return everything_in(trial.path); }

int try_every_failure(const PieceOfWork& piece, Act act, BadDisk::How how, int step) {
    std::string before;
    std::string after;
    {
        Trial trial(piece);
        before = state_of(trial);
        piece.work(*trial.book);
        after = state_of(trial);
    }
    EXPECT_NE(before, after) << piece.name;
    int failures = 0;
    for (int at = 1; at < 100'000; at += at < 4 ? 1 : step) {
        const std::string when = std::string(piece.name) + ", act " + std::to_string(static_cast<int>(act)) + " number " + std::to_string(at) +
                                 (how == BadDisk::How::fails_once ? " once" : " for ever");
        BadDisk disk;
        Trial trial(piece);
        disk.fail(act, at, how);
        bool acknowledged = false;
        try {
            piece.work(*trial.book);
            acknowledged = true;
        } catch (const book::StoreError&) {
        }
        const bool came = disk.came();
        disk.heal();
        const std::string now = state_of(trial);
        EXPECT_EQ(now, acknowledged ? after : before) << when;
        if (!acknowledged) {
            ++failures;
            EXPECT_NO_THROW(piece.work(*trial.book)) << when << ": done again";
            EXPECT_EQ(state_of(trial), after) << when << ": done again";
        }
        trial.book.reset();
        EXPECT_TRUE(book::verify(trial.path).sound()) << when;
        if (!came || ::testing::Test::HasFailure())
            break;
    }
    return failures;
}

class FailingDisk : public ::testing::TestWithParam<int> {};

} // namespace

TEST_P(FailingDisk, at_any_moment_of_a_piece_of_work_leaves_all_or_nothing_and_lets_it_be_done_again) {
    const PieceOfWork& piece = six_pieces().at(static_cast<std::size_t>(GetParam()));
    int failures = 0;
    for (const Act act : all_acts)
        for (const auto how : {BadDisk::How::fails_once, BadDisk::How::fails_from_then_on})
            failures += try_every_failure(piece, act, how, cases(7, 1));
    RecordProperty("failures", failures);
    std::printf("  %s: %d failures\n", piece.name, failures);
    EXPECT_GT(failures, 12);
}
INSTANTIATE_TEST_SUITE_P(Pieces, FailingDisk, ::testing::Range(0, 6));

TEST(NewWorkbook, that_the_disk_does_not_take_is_not_left_half_there) {
    int failures = 0;
    for (int at = 1; at < 40; ++at) {
        const Ground ground;
        const QString path = ground.file("new.soakbook");
        BadDisk disk;
        disk.fail(Act::write, at * 3, BadDisk::How::fails_from_then_on);
        const bool made = Workbook::create(path, on_day(0)).has_value();
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
