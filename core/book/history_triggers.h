// SPDX-License-Identifier: GPL-3.0-or-later
// The triggers that write the change history. They are made from each table's columns, so that none can be forgotten.
#pragma once

#include <QSqlDatabase>
#include <QStringList>

namespace soakbook::book {

/// The tables an inspector may ask for: each has history triggers and is guarded once shown; undo works on these alone.
QStringList record_tables();
/// Tables that only grow and take no part in undo: the codes given out and what was shown outside. From version 2 on the
/// history holds what is added to them.
QStringList growing_tables();

/// The columns of a table in the order of the store.
QStringList columns_of(const QSqlDatabase& db, const QString& table);

/// SQL for the whole row called `which` as text that can be read back: one `name=literal` a line, literals as SQL writes
/// them. The history holds exactly this, and the verifier compares with it.
QString row_image(const QStringList& columns, const QString& which);

/// Makes the history triggers of every table as they are in that schema version, in place of those that are there.
void make_history_triggers(const QSqlDatabase& db, int version);
/// Makes the guards of every record table: what was shown stays, a key stays, no record is overwritten.
void make_guards(const QSqlDatabase& db);

/// Writes into the history, as one piece of work named `work`, whatever stands in the tables and is not its last image.
/// For steps of the schema: a step that changes the columns of a table calls it last.
void write_missing_history(const QSqlDatabase& db, const QString& work);

} // namespace soakbook::book
