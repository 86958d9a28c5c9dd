// SPDX-License-Identifier: GPL-3.0-or-later
// Rows read byte for byte, below Qt's driver: for hashes and checks, where text may be damaged.
#pragma once

#include <QByteArray>
#include <QSqlDatabase>

#include <optional>

struct sqlite3_stmt;

namespace soakbook::book {

class RawRows {
public:
    /// Prepares `sql`. Everything here throws StoreError.
    RawRows(const QSqlDatabase& db, const QByteArray& sql);
    ~RawRows();
    RawRows(const RawRows&) = delete;
    RawRows& operator=(const RawRows&) = delete;

    /// Starts it again with these values.
    void start(std::initializer_list<qint64> values = {});
    /// Steps to the next row; false at the end.
    bool next();
    qint64 number(int column) const;
    std::optional<qint64> optional_number(int column) const;
    QByteArray bytes(int column) const;
    /// The whole row: for each cell its kind, its length and its bytes, so that no two rows give the same text.
    QByteArray canonical() const;

private:
    sqlite3_stmt* m_statement = nullptr;
};

} // namespace soakbook::book
