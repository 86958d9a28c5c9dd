// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/connection.h"

#include "core/book/kept_statements.h"
#include "core/book/statement.h"

#include <QSqlDriver>
#include <QSqlError>

#include <atomic>

#include <sqlite3.h>

namespace soakbook::book {

namespace {
struct Setting {
    const char* name;
    const char* value;
    const char* read_back;
};
// journal_mode DELETE with synchronous EXTRA: a copy of the file alone is whole, and the folder is synced after the journal
// goes. Triggers must not be able to call what they should not (trusted_schema), and a replaced row must fire its triggers.
constexpr Setting settings[] = {
    {"busy_timeout", "0", "0"},        {"foreign_keys", "ON", "1"},  {"recursive_triggers", "ON", "1"},
    {"cell_size_check", "ON", "1"},    {"trusted_schema", "OFF", "0"}, {"temp_store", "MEMORY", "2"},
    {"cache_size", "-65536", "-65536"}, {"cache_spill", "OFF", "0"},  {"synchronous", "EXTRA", "3"},
};
} // namespace

void* raw_handle(const QSqlDatabase& db) {
    const QVariant handle = db.driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        throw StoreError(SQLITE_ERROR, "the SQLite driver gave no handle");
    return *static_cast<sqlite3* const*>(handle.data());
}

void run_script(const QSqlDatabase& db, const QByteArray& script) {
    char* message = nullptr;
    auto* handle = static_cast<sqlite3*>(raw_handle(db));
    if (sqlite3_exec(handle, script.constData(), nullptr, nullptr, &message) != SQLITE_OK) {
        const QString text = QString::fromUtf8(message);
        sqlite3_free(message);
        throw_store_error(sqlite3_extended_errcode(handle), text);
    }
}

qint64 pragma_number(const QSqlDatabase& db, const QString& name) {
    Statement s(db, QStringLiteral("PRAGMA ") + name);
    s.run();
    return s.next() ? s.get<qint64>(0) : 0;
}

QSqlDatabase connect_store(const QString& path, Use use) {
    static std::atomic<int> number{0};
    QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("workbook-%1").arg(++number));
    db.setDatabaseName(path);
    db.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=0") + (use == Use::reading ? QStringLiteral(";QSQLITE_OPEN_READONLY") : QString()));
    if (!db.open()) {
        const QString text = db.lastError().text();
        disconnect_store(db);
        throw_store_error(SQLITE_CANTOPEN, text);
    }
    try {
        auto* handle = static_cast<sqlite3*>(raw_handle(db));
        sqlite3_extended_result_codes(handle, 1);
        sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
        sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, nullptr);
        for (const Setting& s : settings) {
            run(db, QStringLiteral("PRAGMA %1=%2").arg(QLatin1String(s.name), QLatin1String(s.value)));
            Statement back(db, QStringLiteral("PRAGMA %1").arg(QLatin1String(s.name)));
            back.run();
            if (!back.next() || back.get<QString>(0) != QLatin1String(s.read_back))
                throw StoreError(SQLITE_ERROR, std::string("a setting was not taken: ") + s.name);
        }
    } catch (...) {
        disconnect_store(db);
        throw;
    }
    return db;
}

void disconnect_store(QSqlDatabase& db) {
    const QString name = db.connectionName();
    forget_kept_statements(db);
    db.close();
    db = QSqlDatabase();
    QSqlDatabase::removeDatabase(name);
}

} // namespace soakbook::book
