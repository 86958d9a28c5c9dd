// SPDX-License-Identifier: GPL-3.0-or-later
// What a workbook's file looks like: its marks, its numbered steps, and the triggers made for every record table.
#pragma once

#include <QSqlDatabase>
#include <QStringList>

namespace soakbook::book {

constexpr qint64 application_id = 0x536F616B; ///< "Soak"
constexpr int schema_version = 1;

/// The tables an inspector may ask for: each has history triggers and is guarded once shown; undo works on these alone.
QStringList record_tables();

/// The columns of a table in the order of the store.
QStringList columns_of(const QSqlDatabase& db, const QString& table);

/// Lays out an empty store in the newest version, in one transaction. Throws StoreError.
void lay_out(const QSqlDatabase& db);

/// Every table, index, view and trigger of the store as text, sorted; equal for equal structures.
QStringList structure_of(const QSqlDatabase& db);
/// What structure_of gives for a sound workbook of the newest version.
QStringList known_structure();

} // namespace soakbook::book
