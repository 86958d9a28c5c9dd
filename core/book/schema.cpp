// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/schema.h"

#include "core/book/connection.h"
#include "core/book/seal.h"
#include "core/book/statement.h"

#include <QFile>

#include <algorithm>
#include <map>

static void make_scripts_known() { Q_INIT_RESOURCE(schema); }

namespace soakbook::book {

namespace {

QByteArray script(const QString& name) {
    make_scripts_known();
    QFile file(QStringLiteral(":/soakbook/schema/") + name);
    if (!file.open(QIODevice::ReadOnly))
        throw StoreError(1, "a part of the program is missing: " + name.toStdString());
    return file.readAll();
}

void step_1(const QSqlDatabase& db) {
    for (const char* part : {"0001_control.sql", "0001_records.sql", "0001_laws.sql"})
        run_script(db, script(QLatin1String(part)));
    make_history_triggers(db, 1);
    make_guards(db);
}

void step_2(const QSqlDatabase& db) {
    run_script(db, script(QStringLiteral("0002_seals.sql")));
    make_history_triggers(db, 2);
    write_missing_history(db, QStringLiteral("brought_up"));
    seal_changes(db);
}

void step_3(const QSqlDatabase& db) { run_script(db, script(QStringLiteral("0003_paths.sql"))); }

// One for each version, in order; a step is never changed once a workbook of its version may exist.
constexpr void (*steps[])(const QSqlDatabase&) = {step_1, step_2, step_3};
static_assert(std::size(steps) == schema_version);

template <class F> void in_one_transaction(const QSqlDatabase& db, F&& f) {
    run(db, QStringLiteral("BEGIN EXCLUSIVE"));
    try {
        f();
        run(db, QStringLiteral("COMMIT"));
    } catch (...) {
        QSqlQuery(db).exec(QStringLiteral("ROLLBACK"));
        throw;
    }
}

void step_up(const QSqlDatabase& db, int from, int to) {
    for (int version = from + 1; version <= to; ++version)
        steps[version - 1](db);
    run(db, QStringLiteral("PRAGMA user_version=%1").arg(to));
}

} // namespace

void lay_out(const QSqlDatabase& db, const Doing* made) {
    in_one_transaction(db, [&] {
        run(db, QStringLiteral("PRAGMA application_id=%1").arg(application_id));
        step_up(db, 0, schema_version);
        if (made)
            Statement(db, QStringLiteral("INSERT INTO workbook(id, uid, made_ms, made_off) VALUES(1, randomblob(16), ?, ?)"))
                .bind(static_cast<qint64>(made->at.utc_ms)).bind(made->at.offset_minutes).run();
    });
}

int version_of(const QSqlDatabase& db) { return static_cast<int>(pragma_number(db, QStringLiteral("user_version"))); }

void take_steps(const QSqlDatabase& db) {
    in_one_transaction(db, [&] { step_up(db, version_of(db), schema_version); });
}

QStringList structure_of(const QSqlDatabase& db) {
    QStringList texts;
    Statement s(db, QStringLiteral("SELECT type || ' ' || name || ' of ' || tbl_name || ': ' || coalesce(sql, '') FROM sqlite_schema ORDER BY 1"));
    s.run();
    while (s.next())
        texts << s.get<QString>(0);
    return texts;
}

QStringList known_structure(int version) {
    static const std::map<int, QStringList> known = [] {
        std::map<int, QStringList> all;
        QSqlDatabase memory = connect_store(QStringLiteral(":memory:"));
        for (int v = 1; v <= schema_version; ++v) {
            step_up(memory, v - 1, v);
            all[v] = structure_of(memory);
        }
        disconnect_store(memory);
        return all;
    }();
    const auto found = known.find(version);
    return found == known.end() ? QStringList() : found->second;
}

bool can_be_read(const QSqlDatabase& db) {
    using Columns = std::map<QString, QStringList>;
    static const QString plain = QStringLiteral("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND sql LIKE 'CREATE TABLE%'");
    const auto columns_in = [](const QSqlDatabase& store) {
        Columns found;
        Statement s(store, plain);
        s.run();
        while (s.next())
            found[s.get<QString>(0)];
        for (auto& [table, columns] : found)
            columns = columns_of(store, table);
        return found;
    };
    static const Columns known = [&] {
        QSqlDatabase memory = connect_store(QStringLiteral(":memory:"));
        step_up(memory, 0, schema_version);
        Columns found = columns_in(memory);
        disconnect_store(memory);
        return found;
    }();
    const Columns here = columns_in(db);
    return std::all_of(known.begin(), known.end(), [&](const auto& table) {
        const auto found = here.find(table.first);
        return found != here.end() && std::all_of(table.second.begin(), table.second.end(), [&](const QString& column) { return found->second.contains(column); });
    });
}

} // namespace soakbook::book
