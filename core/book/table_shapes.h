// SPDX-License-Identifier: GPL-3.0-or-later
// What the rows of each table may look like: by this a row is known again where nothing else says which table it is of.
#pragma once

#include "core/book/page_file.h"

#include <QSqlDatabase>
#include <QStringList>

namespace soakbook::book {

class TableShapes {
public:
    /// Of the newest version, in a store in memory of which the tables alone are made.
    TableShapes();
    ~TableShapes();
    TableShapes(const TableShapes&) = delete;
    TableShapes& operator=(const TableShapes&) = delete;

    QStringList tables() const;
    const QStringList& columns(const QString& table) const { return m_columns.at(table); }
    /// Whether the row has as many cells as the table, and each of its kind.
    bool looks_like(const QString& table, const StoredRow& row) const;
    /// Whether it could also stand there: every constraint but links is kept.
    bool fits(const QString& table, const StoredRow& row);

private:
    bool is_numbered(const QString& table) const;

    QSqlDatabase m_db;
    std::map<QString, QStringList> m_columns;
    std::map<QString, QString> m_kinds; ///< a letter for each column as in StoredCell
};

/// A row as the history would have it. Text with a NUL in it is cut there, as SQL's quote() does.
QByteArray image_of(const QStringList& columns, const StoredRow& row);
/// The row's cells as the seals count them: the number first.
QByteArray canonical_of(const StoredRow& row);

} // namespace soakbook::book
