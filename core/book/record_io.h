// SPDX-License-Identifier: GPL-3.0-or-later
// Writing and reading whole records by their column lists.
#pragma once

#include "core/book/columns.h"
#include "core/book/workbook.h"

#include <optional>
#include <vector>

namespace soakbook::book {

namespace detail {
qint64 insert_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values);
void update_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values, qint64 id);
} // namespace detail

/// Adds the record and gives its key. Throws as Workbook::write; LawBroken for a text with a NUL or half a character in it.
template <class Record> Id<Record> insert(Writing& writing, const Record& record) {
    return {detail::insert_row(writing.db(), Record::table, column_names<Record>(), column_values(record))};
}
/// Writes every column of a record that is there. Throws as `insert`.
template <class Record> void update(Writing& writing, const Record& record) {
    detail::update_row(writing.db(), Record::table, column_names<Record>(), column_values(record), record.id.value);
}
/// The record of that key, if it is there.
template <class Record> std::optional<Record> fetch(const Workbook& workbook, Id<Record> id);

/// Every record for which `clause` ("WHERE ... ORDER BY ...", with ? for each value) holds. For book's own queries.
template <class Record, class... Values>
std::vector<Record> fetch_where(const Workbook& workbook, const char* clause, const Values&... values) {
    Statement s(workbook.db(), QStringLiteral("SELECT id, ") + column_names<Record>().join(QLatin1Char(',')) + QStringLiteral(" FROM ") +
                                   QLatin1String(Record::table) + QLatin1Char(' ') + QLatin1String(clause));
    (s.bind(values), ...);
    s.run();
    std::vector<Record> records;
    while (s.next())
        records.push_back(take_record<Record>(s));
    return records;
}

template <class Record> std::optional<Record> fetch(const Workbook& workbook, Id<Record> id) {
    auto found = fetch_where<Record>(workbook, "WHERE id = ?", id);
    return found.empty() ? std::nullopt : std::optional<Record>(std::move(found.front()));
}
/// Every record of the table in the order of its keys.
template <class Record> std::vector<Record> fetch_all(const Workbook& workbook) { return fetch_where<Record>(workbook, "ORDER BY id"); }

} // namespace soakbook::book
