// SPDX-License-Identifier: GPL-3.0-or-later
#include "trial.h"

#include "core/book/record_io.h"
#include "core/book/shown.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"

#include <algorithm>

namespace soakbook::faults {

namespace {

using book::Workbook;
using book::Writing;

constexpr int never = 1 << 30;

struct Trial {
    Ground ground;
    QString path = ground.file("book.soakbook");
    std::unique_ptr<Workbook> book;

    explicit Trial(const PieceOfWork& piece) {
        put(path, piece.workbook());
        auto opened = Workbook::open(path);
        if (!opened)
            throw std::runtime_error("the workbook did not open");
        book = std::move(*opened);
        if (piece.before)
            piece.before(*book);
    }
    std::string state() const { return everything_in(path); }
};

template <class F> std::optional<std::string> write(Workbook& workbook, F&& f) {
    struct Done {
        explicit operator bool() const { return true; }
    };
    try {
        workbook.write({QStringLiteral("yard"), 1, {}}, on_day(12), [&](Writing& w) {
            f(w);
            return Done{};
        });
    } catch (const book::StoreError& error) {
        return error.what();
    }
    return {};
}

} // namespace

int try_every_failure(const PieceOfWork& piece, const Failing& failing, bool once, int most) {
    std::string before;
    std::string after;
    int moments = 0;
    {
        Trial trial(piece);
        before = trial.state();
        failing.begin(never, true);
        EXPECT_EQ(piece.work(*trial.book), std::nullopt) << piece.name << ", in peace";
        moments = failing.moments();
        failing.heal();
        after = trial.state();
    }
    EXPECT_NE(before, after) << piece.name;
    int failures = 0;
    // To the moment after the last one, which does not come.
    for (int tried = 0; tried <= std::min(moments, most); ++tried) {
        const int at = 1 + static_cast<int>(std::int64_t{tried} * moments / std::max(1, std::min(moments, most)));
        const std::string when = piece.name + ", " + failing.name + " number " + std::to_string(at) + (once ? " once" : " for ever");
        Trial trial(piece);
        failing.begin(at, once);
        std::optional<std::string> refused;
        try {
            refused = piece.work(*trial.book);
        } catch (const std::exception& thrown) {
            failing.heal();
            ADD_FAILURE() << when << ": thrown, not refused: " << thrown.what();
            break;
        }
        const bool came = failing.came();
        failing.heal();
        EXPECT_EQ(trial.state(), refused ? before : after) << when;
        if (refused) {
            EXPECT_TRUE(came) << when << ": " << *refused;
            ++failures;
            EXPECT_EQ(piece.work(*trial.book), std::nullopt) << when << ": done again";
            EXPECT_EQ(trial.state(), after) << when << ": done again";
        }
        trial.book.reset();
        EXPECT_TRUE(book::verify(trial.path).sound()) << when;
        EXPECT_EQ(came, at <= moments) << when;
        if (::testing::Test::HasFailure())
            break;
    }
    return failures;
}

const std::vector<PieceOfWork>& plain_pieces() {
    static const auto filled = [] { return filled_workbook(); };
    static const std::vector<PieceOfWork> pieces{
        {"a new entry", filled, {},
         [](Workbook& b) {
             return write(b, [](Writing& w) {
                 book::Hive hive;
                 hive.yard = book::insert(w, book::Yard{{}, QStringLiteral("new"), {}, {}, true});
                 hive.name = QStringLiteral("new");
                 book::insert(w, hive);
             });
         }},
        {"forty yards at once", filled, {},
         [](Workbook& b) {
             return write(b, [](Writing& w) {
                 for (int i = 0; i < 40; ++i)
                     book::insert(w, book::Yard{{}, QStringLiteral("many %1").arg(i), QString(300, QLatin1Char('w')), {}, true});
             });
         }},
        {"a correction", filled, {},
         [](Workbook& b) {
             return write(b, [&b](Writing& w) {
                 for (book::Yard yard : book::fetch_all<book::Yard>(b)) {
                     yard.note = QStringLiteral("corrected");
                     book::update(w, yard);
                 }
             });
         }},
        {"a record made void", filled, {},
         [](Workbook& b) {
             return write(b, [&b](Writing& w) {
                 book::Hive hive = book::fetch_all<book::Hive>(b).back();
                 hive.void_reason = QStringLiteral("entered twice");
                 book::update(w, hive);
             });
         }},
        {"a paper", filled, {},
         [](Workbook& b) {
             return write(b, [](Writing& w) {
                 w.keep_from_undo();
                 book::note_shown(w, QStringLiteral("bag"), {1, 2}, QStringLiteral("register"));
             });
         }},
        {"an undo", filled, [](Workbook& b) { make_entry(b, 31); },
         [](Workbook& b) -> std::optional<std::string> {
             try {
                 // A second try after the first got down has nothing left to take back.
                 if (b.undo_stack().next_undo() && !b.undo_stack().undo(on_day(12)))
                     return "undo was refused";
             } catch (const book::StoreError& error) {
                 return error.what();
             }
             return {};
         }},
    };
    return pieces;
}

} // namespace soakbook::faults
