// SPDX-License-Identifier: GPL-3.0-or-later
// What a workbook's file looks like: its marks, and its numbered steps from one version to the next.
#pragma once

#include "core/book/doing.h"
#include "core/book/history_triggers.h"

#include <QSqlDatabase>
#include <QStringList>

namespace soakbook::book {

constexpr qint64 application_id = 0x536F616B; ///< "Soak"
constexpr int schema_version = 3;

/// Lays out an empty store in the newest version, in one transaction. With `made`, the workbook's own row (its uid, and
/// when it was made) is written too. Throws StoreError.
void lay_out(const QSqlDatabase& db, const Doing* made = nullptr);
/// The version of the store.
int version_of(const QSqlDatabase& db);
/// Takes an older store to the newest version in one transaction: all of it or nothing. Throws StoreError.
void take_steps(const QSqlDatabase& db);

/// Every table, index, view and trigger of the store as text, sorted; equal for equal structures.
QStringList structure_of(const QSqlDatabase& db);
/// What structure_of gives for a sound workbook of that version.
QStringList known_structure(int version = schema_version);
/// Whether every table of this version stands in the store as a plain table with all of its columns, whatever else a newer
/// program put there: then it can be looked at.
bool can_be_read(const QSqlDatabase& db);

} // namespace soakbook::book
