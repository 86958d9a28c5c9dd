// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/kept_statements.h"

#include <map>
#include <memory>

namespace soakbook::book {

namespace {

using OfConnection = std::map<QString, std::unique_ptr<Statement>>;

// A connection belongs to the thread that opened it.
std::map<QString, OfConnection>& kept() {
    static thread_local std::map<QString, OfConnection> all;
    return all;
}

} // namespace

Statement& kept_statement(const QSqlDatabase& db, const QString& sql) {
    std::unique_ptr<Statement>& statement = kept()[db.connectionName()][sql];
    if (!statement)
        statement = std::make_unique<Statement>(db, sql);
    return *statement;
}

void forget_kept_statements(const QSqlDatabase& db) { kept().erase(db.connectionName()); }

} // namespace soakbook::book
