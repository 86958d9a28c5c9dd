// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/changeset.h"

#include "core/book/connection.h"
#include "core/book/kept_statements.h"
#include "core/book/schema.h"
#include "core/book/statement.h"

#include <QStringList>

#include <algorithm>
#include <vector>

#include <sqlite3.h>

namespace soakbook::book {

struct ChangeRecorder::Session {
    sqlite3_session* handle = nullptr;
    ~Session() { sqlite3session_delete(handle); }
};

ChangeRecorder::ChangeRecorder(const QSqlDatabase& db) : m_session(std::make_unique<Session>()) {
    auto* raw = static_cast<sqlite3*>(raw_handle(db));
    if (const int rc = sqlite3session_create(raw, "main", &m_session->handle); rc != SQLITE_OK)
        throw_store_error(rc, QStringLiteral("the change recorder did not start"));
    for (const QString& table : record_tables())
        if (const int rc = sqlite3session_attach(m_session->handle, table.toUtf8().constData()); rc != SQLITE_OK)
            throw_store_error(rc, QStringLiteral("the change recorder did not start"));
}
ChangeRecorder::~ChangeRecorder() = default;

QByteArray ChangeRecorder::changeset() const {
    int size = 0;
    void* data = nullptr;
    if (const int rc = sqlite3session_changeset(m_session->handle, &size, &data); rc != SQLITE_OK)
        throw_store_error(rc, QStringLiteral("the changes could not be recorded"));
    QByteArray bytes(static_cast<const char*>(data), size);
    sqlite3_free(data);
    return bytes;
}

namespace {

struct Iterator {
    sqlite3_changeset_iter* handle = nullptr;
    explicit Iterator(const QByteArray& bytes) {
        if (const int rc = sqlite3changeset_start(&handle, static_cast<int>(bytes.size()), const_cast<char*>(bytes.constData()));
            rc != SQLITE_OK)
            throw_store_error(rc, QStringLiteral("recorded changes cannot be read"));
    }
    ~Iterator() { sqlite3changeset_finalize(handle); }
};

QVariant to_variant(sqlite3_value* value) {
    switch (sqlite3_value_type(value)) {
    case SQLITE_INTEGER:
        return static_cast<qint64>(sqlite3_value_int64(value));
    case SQLITE_TEXT: {
        const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(value));
        if (!text)
            throw_store_error(SQLITE_NOMEM, QStringLiteral("no memory for a recorded change"));
        return QString::fromUtf8(text, sqlite3_value_bytes(value));
    }
    case SQLITE_BLOB:
        return QByteArray(static_cast<const char*>(sqlite3_value_blob(value)), sqlite3_value_bytes(value));
    default:
        return QVariant(QMetaType(QMetaType::LongLong));
    }
}

/// One row's change: with `old_values` where it was there before, `new_values` where it is there after.
struct RowChange {
    QString table;
    int operation = 0;
    qint64 id = 0;
    std::vector<std::pair<int, QVariant>> old_values;
    std::vector<std::pair<int, QVariant>> new_values;
};

std::vector<RowChange> rows_of(const QByteArray& changeset) {
    std::vector<RowChange> rows;
    Iterator it(changeset);
    int rc = SQLITE_OK;
    while ((rc = sqlite3changeset_next(it.handle)) == SQLITE_ROW) {
        RowChange row;
        const char* table = nullptr;
        int columns = 0;
        int indirect = 0;
        sqlite3changeset_op(it.handle, &table, &columns, &row.operation, &indirect);
        row.table = QString::fromUtf8(table);
        for (int c = 0; c < columns; ++c) {
            sqlite3_value* value = nullptr;
            if (row.operation != SQLITE_INSERT && sqlite3changeset_old(it.handle, c, &value) == SQLITE_OK && value)
                row.old_values.emplace_back(c, to_variant(value));
            value = nullptr;
            if (row.operation != SQLITE_DELETE && sqlite3changeset_new(it.handle, c, &value) == SQLITE_OK && value)
                row.new_values.emplace_back(c, to_variant(value));
        }
        const auto& keyed = row.operation == SQLITE_INSERT ? row.new_values : row.old_values;
        row.id = keyed.empty() ? 0 : keyed.front().second.toLongLong();
        rows.push_back(std::move(row));
    }
    // A part of it taken back would be worse than none.
    if (rc != SQLITE_DONE)
        throw_store_error(rc, QStringLiteral("recorded changes cannot be read"));
    return rows;
}

bool was_shown(const QSqlDatabase& db, const RowChange& row) {
    Statement s(db, QStringLiteral("SELECT 1 FROM shown WHERE tbl = ? AND row_id = ?"));
    s.bind(row.table).bind(row.id).run();
    return s.next();
}

void expect_one(const Statement& s) {
    if (s.rows_changed() != 1)
        throw LawBroken(SQLITE_CONSTRAINT, "the record was changed since");
}

void remove_row(const QSqlDatabase& db, const RowChange& row) {
    if (was_shown(db, row)) {
        if (columns_of(db, row.table).contains(QStringLiteral("void_reason")))
            expect_one(kept_statement(db, QStringLiteral("UPDATE %1 SET void_reason = 'undone' WHERE id = ?").arg(row.table)).bind(row.id).run());
        return;
    }
    expect_one(kept_statement(db, QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(row.table)).bind(row.id).run());
}

void put_row_back(const QSqlDatabase& db, const RowChange& row) {
    const QStringList names = columns_of(db, row.table);
    QStringList used;
    QStringList marks;
    for (const auto& [c, value] : row.old_values) {
        used << names.at(c);
        marks << QStringLiteral("?");
    }
    Statement& s = kept_statement(db, QStringLiteral("INSERT INTO %1(%2) VALUES(%3)").arg(row.table, used.join(QLatin1Char(',')), marks.join(QLatin1Char(','))));
    for (const auto& [c, value] : row.old_values)
        s.bind(value);
    s.run();
}

void change_row_back(const QSqlDatabase& db, const RowChange& row) {
    const QStringList names = columns_of(db, row.table);
    QStringList sets;
    QStringList still;
    for (const auto& [c, value] : row.new_values) {
        sets << names.at(c) + QStringLiteral(" = ?");
        still << names.at(c) + QStringLiteral(" IS ?");
    }
    Statement& s = kept_statement(db, QStringLiteral("UPDATE %1 SET %2 WHERE id = ? AND %3").arg(row.table, sets.join(QStringLiteral(", ")), still.join(QStringLiteral(" AND "))));
    for (const auto& [c, value] : row.new_values) {
        const int column = c;
        const auto old = std::find_if(row.old_values.begin(), row.old_values.end(), [column](const auto& o) { return o.first == column; });
        s.bind(old->second);
    }
    s.bind(row.id);
    for (const auto& [c, value] : row.new_values)
        s.bind(value);
    expect_one(s.run());
}

} // namespace

std::set<QString> tables_in(const QByteArray& changeset) {
    std::set<QString> tables;
    for (const RowChange& row : rows_of(changeset))
        tables.insert(row.table);
    return tables;
}

void take_back_changes(const QSqlDatabase& db, const QByteArray& changeset) {
    run(db, QStringLiteral("PRAGMA defer_foreign_keys=ON"));
    std::vector<RowChange> rows = rows_of(changeset);
    // Placements and counts stand on bags, bags on batches: what was written last in the order of the tables goes first, and
    // rows that come back come in that order before anything points at them.
    const QStringList order = record_tables();
    std::stable_sort(rows.begin(), rows.end(), [&order](const RowChange& a, const RowChange& b) {
        const auto rank = [&order](const RowChange& r) {
            const qsizetype place = order.indexOf(r.table);
            // A closed batch is asked about its mass when it changes: its parts have to be back by then.
            const qsizetype changed = r.table == QStringLiteral("batch") ? 5000 : 500;
            return r.operation == SQLITE_INSERT ? -place : r.operation == SQLITE_DELETE ? 1000 + place : changed;
        };
        return rank(a) < rank(b);
    });
    for (const RowChange& row : rows) {
        if (row.operation == SQLITE_INSERT)
            remove_row(db, row);
        else if (row.operation == SQLITE_DELETE)
            put_row_back(db, row);
        else
            change_row_back(db, row);
    }
}

} // namespace soakbook::book
