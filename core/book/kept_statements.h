// SPDX-License-Identifier: GPL-3.0-or-later
// Statements that one piece of work runs row after row, each prepared once: to prepare an INSERT, SQLite compiles every
// trigger of its table, and that takes ten times as long as the row.
#pragma once

#include "core/book/statement.h"

namespace soakbook::book {

/// The statement of that text, for use inside a transaction under way, with no values bound yet. Throws StoreError.
Statement& kept_statement(const QSqlDatabase& db, const QString& sql);
/// Ends those of that connection: before its transaction ends, and before it is closed.
void forget_kept_statements(const QSqlDatabase& db);

} // namespace soakbook::book
