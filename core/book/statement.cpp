// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/statement.h"

#include <QSqlError>
#include <QSqlResult>

#include <sqlite3.h>

namespace soakbook::book {

void throw_store_error(int code, const QString& text) {
    const std::string what = text.toStdString();
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        throw Busy(code, what);
    case SQLITE_FULL:
        throw DiskFull(code, what);
    case SQLITE_IOERR:
        if (code == SQLITE_IOERR_WRITE)
            throw DiskFull(code, what);
        throw DiskFailed(code, what);
    case SQLITE_NOMEM:
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        throw DiskFailed(code, what);
    case SQLITE_READONLY:
        if (code == SQLITE_READONLY_DBMOVED)
            throw Replaced(code, what);
        throw ReadOnly(code, what);
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        throw ReadOnly(code, what);
    case SQLITE_CONSTRAINT:
        throw LawBroken(code, what);
    default:
        throw StoreError(code, what);
    }
}

namespace {
[[noreturn]] void throw_from(const QSqlQuery& query) {
    bool number = false;
    const int code = query.lastError().nativeErrorCode().toInt(&number);
    throw_store_error(number ? code : SQLITE_ERROR, query.lastError().text() + QStringLiteral(" in: ") + query.lastQuery());
}

// Where there is no memory to turn a text over for Qt, Qt takes it for an empty one and says nothing.
bool is_short_of_memory(const QSqlQuery& query) {
    const QVariant handle = query.result()->handle();
    return handle.isValid() && sqlite3_errcode(sqlite3_db_handle(*static_cast<sqlite3_stmt* const*>(handle.data()))) == SQLITE_NOMEM;
}
} // namespace

Statement::Statement(const QSqlDatabase& db, const QString& sql) : m_query(db) {
    m_query.setForwardOnly(true);
    if (!m_query.prepare(sql))
        throw_from(m_query);
}

Statement& Statement::run() {
    if (!m_query.exec())
        throw_from(m_query);
    return *this;
}

bool Statement::next() {
    if (m_query.next()) {
        if (is_short_of_memory(m_query))
            throw_store_error(SQLITE_NOMEM, QStringLiteral("no memory for a row of: ") + m_query.lastQuery());
        return true;
    }
    // Qt says "no more rows" also when the next one could not be read.
    if (m_query.lastError().isValid())
        throw_from(m_query);
    return false;
}

void run(const QSqlDatabase& db, const QString& sql) { Statement(db, sql).run(); }

} // namespace soakbook::book
