// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/raw_rows.h"

#include "core/book/connection.h"
#include "core/book/statement.h"

#include <array>
#include <charconv>

#include <sqlite3.h>

namespace soakbook::book {

RawRows::RawRows(const QSqlDatabase& db, const QByteArray& sql) {
    auto* handle = static_cast<sqlite3*>(raw_handle(db));
    if (const int rc = sqlite3_prepare_v2(handle, sql.constData(), static_cast<int>(sql.size()), &m_statement, nullptr); rc != SQLITE_OK)
        throw_store_error(rc, QString::fromUtf8(sqlite3_errmsg(handle)) + QStringLiteral(" in: ") + QString::fromUtf8(sql));
}

RawRows::~RawRows() { sqlite3_finalize(m_statement); }

void RawRows::start(std::initializer_list<qint64> values) {
    sqlite3_reset(m_statement);
    int place = 0;
    for (const qint64 value : values)
        sqlite3_bind_int64(m_statement, ++place, value);
}

bool RawRows::next() {
    const int rc = sqlite3_step(m_statement);
    if (rc != SQLITE_ROW && rc != SQLITE_DONE)
        throw_store_error(rc, QString::fromUtf8(sqlite3_errmsg(sqlite3_db_handle(m_statement))));
    if (rc == SQLITE_DONE)
        sqlite3_reset(m_statement);
    return rc == SQLITE_ROW;
}

qint64 RawRows::number(int column) const { return sqlite3_column_int64(m_statement, column); }

std::optional<qint64> RawRows::optional_number(int column) const {
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL ? std::nullopt : std::optional<qint64>(number(column));
}

QByteArray RawRows::bytes(int column) const {
    const void* data = sqlite3_column_blob(m_statement, column);
    return QByteArray(static_cast<const char*>(data), sqlite3_column_bytes(m_statement, column));
}

namespace {
// A verifier makes this text of every entry there is: nothing is allocated for a cell.
void add_cell(QByteArray& text, char kind, const char* cell, std::size_t size) {
    std::array<char, 24> length{};
    const auto end = std::to_chars(length.data(), length.data() + length.size(), size).ptr;
    text += kind;
    text.append(length.data(), end - length.data());
    text += ':';
    text.append(cell, static_cast<qsizetype>(size));
}
} // namespace

QByteArray RawRows::canonical() const {
    QByteArray text;
    text.reserve(2048);
    const int columns = sqlite3_column_count(m_statement);
    for (int c = 0; c < columns; ++c) {
        const int type = sqlite3_column_type(m_statement, c);
        const char kind = "ifsbn"[type - 1];
        if (type == SQLITE_NULL) {
            add_cell(text, kind, "", 0);
        } else if (type == SQLITE_INTEGER) {
            // Its text is not asked of SQLite: a conversion in place would change what its type is.
            std::array<char, 24> digits{};
            const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number(c)).ptr;
            add_cell(text, kind, digits.data(), static_cast<std::size_t>(end - digits.data()));
        } else {
            const void* data = sqlite3_column_blob(m_statement, c);
            add_cell(text, kind, static_cast<const char*>(data), static_cast<std::size_t>(sqlite3_column_bytes(m_statement, c)));
        }
    }
    return text;
}

} // namespace soakbook::book
