// SPDX-License-Identifier: GPL-3.0-or-later
// A connection with everything set that keeps a workbook safe, and each setting read back.
#pragma once

#include <QSqlDatabase>
#include <QString>

namespace soakbook::book {

/// Opens a connection under a name of its own. Throws StoreError when the file does not open or a
/// setting is not taken. `Reading` opens it for reading alone: not a byte of the file is written.
enum class Use { writing, reading };
QSqlDatabase connect_store(const QString& path, Use use = Use::writing);
/// Closes it and takes its name out of Qt's list.
void disconnect_store(QSqlDatabase& db);

/// The sqlite3* under Qt's driver, for backup, sessions and scripts of many statements.
void* raw_handle(const QSqlDatabase& db);
/// Runs a script of many statements on the raw handle. Throws StoreError.
void run_script(const QSqlDatabase& db, const QByteArray& script);

/// One number from a PRAGMA.
qint64 pragma_number(const QSqlDatabase& db, const QString& name);

} // namespace soakbook::book
