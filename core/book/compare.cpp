// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/compare.h"

#include "core/book/connection.h"
#include "core/book/history_triggers.h"
#include "core/book/other_copy.h"
#include "core/book/raw_rows.h"
#include "core/book/seal.h"
#include "core/book/statement.h"

#include <sqlite3.h>

namespace soakbook::book {

namespace {

const char* const changes_after = "SELECT seq, piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, tbl, row_id, what, before, after "
                                  "FROM change WHERE seq > ? ORDER BY seq";

// Each seal names all that went before by its hash: where one is held by both, so are all before it, and the newest such
// is found by halving.
qint64 newest_common_seal(const QSqlDatabase& here, const QSqlDatabase& there) {
    if (before_first_seal(here) != before_first_seal(there))
        return 0;
    RawRows of_here(here, "SELECT last_seq, hash FROM seal WHERE last_seq > ? AND last_seq <= ? ORDER BY last_seq DESC LIMIT 1");
    RawRows of_there(there, "SELECT hash FROM seal WHERE last_seq = ?");
    qint64 common = 0;
    qint64 low = 0;
    qint64 high = newest_seal(here).last_seq;
    while (low < high) {
        const qint64 middle = low + (high - low + 1) / 2;
        of_here.start({low, middle});
        if (!of_here.next()) {
            low = middle;
            continue;
        }
        const qint64 seq = of_here.number(0);
        of_there.start({seq});
        if (of_there.next() && of_there.bytes(0) == of_here.bytes(1)) {
            common = seq;
            low = middle;
        } else {
            high = seq - 1;
        }
    }
    return common;
}

// Behind the newest common seal entries may still be the same: those of another program have no seal of their own, and
// copies of an older version were sealed each for itself.
qint64 newest_common_entry(const QSqlDatabase& here, const QSqlDatabase& there, qint64 after_seq) {
    RawRows of_here(here, changes_after);
    RawRows of_there(there, changes_after);
    of_here.start({after_seq});
    of_there.start({after_seq});
    qint64 common = after_seq;
    qint64 before_piece = after_seq;
    std::optional<qint64> piece;
    while (true) {
        const bool more_here = of_here.next();
        const bool more_there = of_there.next();
        if (more_here && more_there && of_here.canonical() == of_there.canonical()) {
            if (of_here.optional_number(1) != piece)
                before_piece = common;
            piece = of_here.optional_number(1);
            common = of_here.number(0);
            continue;
        }
        const bool within = piece && ((more_here && of_here.optional_number(1) == piece) || (more_there && of_there.optional_number(1) == piece));
        return within ? before_piece : common;
    }
}

std::vector<LonePiece> pieces_after(const QSqlDatabase& db, qint64 seq) {
    const QStringList known = record_tables();
    std::vector<LonePiece> pieces;
    std::optional<qint64> number;
    std::set<std::pair<QString, qint64>> records;
    RawRows changes(db, changes_after);
    changes.start({seq});
    while (changes.next()) {
        if (pieces.empty() || changes.optional_number(1) != number) {
            number = changes.optional_number(1);
            records.clear();
            LonePiece piece;
            piece.first_seq = changes.number(0);
            piece.outside = !number;
            piece.work = {QString::fromUtf8(changes.bytes(2)), static_cast<int>(changes.number(3)), QString::fromUtf8(changes.bytes(4))};
            piece.who = QString::fromUtf8(changes.bytes(5));
            piece.why = QString::fromUtf8(changes.bytes(6));
            piece.at = {changes.number(8), static_cast<int>(changes.number(9))};
            pieces.push_back(std::move(piece));
        }
        LonePiece& piece = pieces.back();
        piece.last_seq = changes.number(0);
        const QString table = QString::fromUtf8(changes.bytes(11));
        if (known.contains(table) && records.emplace(table, changes.number(12)).second) {
            ++piece.records;
            piece.tables.insert(table);
        }
    }
    return pieces;
}

bool failed(const QSqlDatabase& db) {
    const int rc = sqlite3_errcode(static_cast<sqlite3*>(raw_handle(db))) & 0xff;
    return rc != SQLITE_OK && rc != SQLITE_ROW && rc != SQLITE_DONE;
}

} // namespace

tl::expected<Comparison, NotOpened> compare(const Workbook& here, const OtherCopy& there) {
    try {
        Comparison comparison;
        if (here.uid() != there.uid()) {
            comparison.kinship = Kinship::stranger;
            return comparison;
        }
        comparison.common_seq = newest_common_entry(here.db(), there.db(), newest_common_seal(here.db(), there.db()));
        comparison.only_here = pieces_after(here.db(), comparison.common_seq);
        comparison.only_there = pieces_after(there.db(), comparison.common_seq);
        comparison.kinship = comparison.only_there.empty() ? (comparison.only_here.empty() ? Kinship::same : Kinship::there_older)
                                                           : (comparison.only_here.empty() ? Kinship::there_newer : Kinship::apart);
        return comparison;
    } catch (const StoreError& error) {
        if (failed(here.db()))
            throw;
        return tl::unexpected(dynamic_cast<const Busy*>(&error) ? NotOpened::busy : NotOpened::damaged);
    }
}

tl::expected<Comparison, NotOpened> compare(const Workbook& here, const QString& there) {
    if (is_same_file(here.path(), there)) {
        Comparison itself;
        itself.common_seq = here.last_seq();
        return itself;
    }
    return OtherCopy::open(here, there).and_then([&here](const std::unique_ptr<OtherCopy>& copy) { return compare(here, *copy); });
}

} // namespace soakbook::book
