// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/verify_history.h"

#include "core/book/history_triggers.h"
#include "core/book/seal_chain.h"
#include "core/book/statement.h"

namespace soakbook::book {

namespace {

void note(CheckResult& result, const Entry& entry) {
    if (++result.bad == 1)
        result.first = entry;
}

/// Notes each row of `sql`: seq, piece, row.
void note_rows(const QSqlDatabase& db, const QString& sql, const QString& table, CheckResult& result) {
    RawRows rows(db, sql.toUtf8());
    while (rows.next())
        note(result, {rows.number(0), rows.optional_number(1), table, rows.number(2)});
}

qint64 one_number(const QSqlDatabase& db, const QString& sql) {
    RawRows row(db, sql.toUtf8());
    return row.next() ? row.number(0) : 0;
}

/// Counters of keys given out stand where the highest key of the history is: a lower one would give a key twice.
void check_counters(const QSqlDatabase& db, CheckResult& result) {
    QStringList known{QStringLiteral("change")};
    known << record_tables();
    for (const QString& table : known) {
        const QString highest = table == QStringLiteral("change")
                                    ? QStringLiteral("SELECT coalesce(max(seq), 0) FROM change")
                                    : QStringLiteral("SELECT coalesce(max(row_id), 0) FROM change WHERE tbl = '%1'").arg(table);
        if (one_number(db, highest) != one_number(db, QStringLiteral("SELECT coalesce(sum(seq), 0) FROM sqlite_sequence WHERE name = '%1'").arg(table)))
            note(result, {0, {}, table, 0});
    }
    const QString others = QStringLiteral("SELECT count(*) FROM sqlite_sequence WHERE name NOT IN ('%1')").arg(known.join(QStringLiteral("','")));
    if (one_number(db, others) != 0)
        note(result, {});
}

/// What an entry says was added to a table that only grows is there. Found by the table's own keys.
void check_grown(const QSqlDatabase& db, const QString& table, qint64 after_seq, CheckResult& result) {
    const QString image = row_image(columns_of(db, table), QStringLiteral("t"));
    const QString by_key = table == QStringLiteral("shown")
                               ? QStringLiteral("t.tbl IN ('%1') AND t.row_id = c.row_id").arg(record_tables().join(QStringLiteral("','")))
                               : QStringLiteral("t.kind IN ('B', 'S', 'P') AND t.number = c.row_id");
    const QString since = QStringLiteral("c.seq > %1 AND +c.tbl = '%2'").arg(after_seq).arg(table);
    note_rows(db,
              QStringLiteral("SELECT c.seq, c.piece, c.row_id FROM change c WHERE %1 AND (c.what <> 'added' OR c.after IS NULL OR NOT EXISTS "
                             "(SELECT 1 FROM %2 t WHERE %3 AND %4 = c.after)) ORDER BY c.seq")
                  .arg(since, table, by_key, image),
              table, result);
    result.looked_at += one_number(db, QStringLiteral("SELECT count(*) FROM change c WHERE ") + since);
}

// Rows of a table that only grows are in the history once each, and nothing else is there in their name.
void check_growing(const QSqlDatabase& db, const QString& table, qint64 after_seq, CheckResult& result) {
    if (after_seq > 0) {
        check_grown(db, table, after_seq, result);
        return;
    }
    const QString image = row_image(columns_of(db, table), QStringLiteral("t"));
    note_rows(db,
              QStringLiteral("SELECT c.seq, c.piece, c.row_id FROM change c WHERE c.tbl = '%1' AND (c.what <> 'added' OR c.after IS NULL OR "
                             "c.after NOT IN (SELECT %2 FROM %1 t)) ORDER BY c.seq")
                  .arg(table, image),
              table, result);
    note_rows(db,
              QStringLiteral("SELECT 0, NULL, 0 FROM %1 t WHERE %2 NOT IN (SELECT after FROM change WHERE tbl = '%1' AND after IS NOT NULL)")
                  .arg(table, image),
              table, result);
    const qint64 rows = one_number(db, QStringLiteral("SELECT count(*) FROM ") + table);
    if (result.bad == 0 && rows != one_number(db, QStringLiteral("SELECT count(*) FROM change WHERE tbl = '%1'").arg(table)))
        note(result, {0, {}, table, 0});
    result.looked_at += rows;
}

void check_table(const QSqlDatabase& db, const QString& table, qint64 after_seq, CheckResult& result) {
    const QString image = row_image(columns_of(db, table), QStringLiteral("t"));
    // Only the entries that are asked for are read; the index of rows would lead through all of the history.
    const QString last = QStringLiteral("(SELECT row_id, max(seq) AS seq FROM change WHERE %1 GROUP BY row_id)")
                             .arg(after_seq == 0 ? QStringLiteral("tbl = '%1'").arg(table) : QStringLiteral("seq > %1 AND +tbl = '%2'").arg(after_seq).arg(table));
    // Of the whole history the index tells which entries are the last ones, so that no earlier image is read. A removed
    // record has no last image and no row.
    note_rows(db,
              QStringLiteral("SELECT c.seq, c.piece, c.row_id FROM %1 m CROSS JOIN change c ON c.seq = m.seq LEFT JOIN %2 t ON t.id = c.row_id "
                             "WHERE c.after IS NOT (CASE WHEN t.id IS NOT NULL THEN %3 END) ORDER BY c.seq")
                  .arg(last, table, image),
              table, result);
    result.looked_at += one_number(db, QStringLiteral("SELECT count(*) FROM ") + last);
    if (after_seq == 0)
        note_rows(db,
                  QStringLiteral("SELECT 0, NULL, t.id FROM %1 t WHERE NOT EXISTS (SELECT 1 FROM change WHERE tbl = '%1' AND row_id = t.id)").arg(table),
                  table, result);
}

} // namespace

qint64 check_numbers(const QSqlDatabase& db, qint64 after_seq, CheckResult& result) {
    RawRows entries(db, "SELECT seq, piece, row_id FROM change WHERE seq > ? ORDER BY seq");
    entries.start({after_seq});
    qint64 expected = after_seq + 1;
    while (entries.next()) {
        ++result.looked_at;
        if (entries.number(0) != expected)
            note(result, {entries.number(0), entries.optional_number(1), {}, 0});
        expected = entries.number(0) + 1;
    }
    if (one_number(db, QStringLiteral("SELECT count(*) FROM change WHERE seq < 1")) != 0 || one_number(db, QStringLiteral("SELECT count(*) FROM now_doing")) != 0)
        note(result, {});
    check_counters(db, result);
    return expected - 1;
}

void check_seals(const QSqlDatabase& db, const Seal& start, Verdict& verdict, CheckResult& result) {
    SealChain chain(db);
    Seal before = start;
    RawRows seals(db, "SELECT last_seq, outside, hash FROM seal WHERE last_seq > ? ORDER BY last_seq");
    seals.start({start.last_seq});
    while (seals.next()) {
        ++result.looked_at;
        Entry first;
        const auto link = chain.link(before, seals.number(0), [&](const RawRows& change) {
            if (first.seq == 0)
                first = {change.number(0), change.optional_number(1), QString::fromUtf8(change.bytes(11)), change.number(12)};
        });
        verdict.outside += link.outside;
        // After a broken one the chain goes on from what the seal says, so that only those that are broken are counted.
        const Seal said{seals.number(0), seals.bytes(2)};
        if (link.seal != said || link.outside != seals.number(1) || link.changes == 0) {
            if (first.seq == 0)
                first.seq = seals.number(0);
            note(result, first);
        }
        before = said;
    }

    // Only another program leaves changes without a seal: a piece of work seals its own.
    chain.link(before, verdict.last_seq, [&](const RawRows& change) {
        ++verdict.unsealed;
        verdict.outside += change.optional_number(1) ? 0 : 1;
        if (change.optional_number(1))
            note(result, {change.number(0), change.optional_number(1), QString::fromUtf8(change.bytes(11)), change.number(12)});
    });
    verdict.until.seal = before;
}

void check_records(const QSqlDatabase& db, qint64 after_seq, CheckResult& result) {
    for (const QString& table : record_tables())
        check_table(db, table, after_seq, result);
    for (const QString& table : growing_tables())
        check_growing(db, table, after_seq, result);
}

} // namespace soakbook::book
