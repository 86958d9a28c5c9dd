// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/schema.h"

#include "core/book/connection.h"
#include "core/book/statement.h"

#include <QFile>

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

// The whole row as text that can be read back: one `name=literal` a line, literals as SQL writes them.
QString image(const QStringList& columns, const QString& which) {
    QStringList parts;
    for (const QString& c : columns)
        parts << QStringLiteral("'%1=' || quote(%2.%1)").arg(c, which);
    return parts.join(QStringLiteral(" || char(10) || "));
}

void add_history_triggers(const QSqlDatabase& db, const QString& table) {
    const QStringList columns = columns_of(db, table);
    const QString now_ms = QStringLiteral("CAST((julianday('now') - 2440587.5) * 86400000 AS INTEGER)");
    const QString head = QStringLiteral(
        "INSERT INTO change(piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, tbl, row_id, what, before, after) "
        "SELECT d.piece, coalesce(d.work, 'outside'), coalesce(d.count, 1), coalesce(d.subject, ''), coalesce(d.who, ''), "
        "coalesce(d.why, ''), coalesce(d.version, ''), coalesce(d.at_ms, %1), coalesce(d.at_off, 0), coalesce(d.clock_doubtful, 0), ").arg(now_ms);
    const QString tail = QStringLiteral(" FROM (SELECT 1) LEFT JOIN now_doing d ON d.id = 1; END");
    QStringList differs;
    for (const QString& c : columns)
        differs << QStringLiteral("OLD.%1 IS NOT NEW.%1").arg(c);
    const QString before = image(columns, QStringLiteral("OLD"));
    const QString after = image(columns, QStringLiteral("NEW"));
    run(db, QStringLiteral("CREATE TRIGGER %1_added AFTER INSERT ON %1 BEGIN ").arg(table) + head +
                QStringLiteral("'%1', NEW.id, 'added', NULL, ").arg(table) + after + tail);
    run(db, QStringLiteral("CREATE TRIGGER %1_changed AFTER UPDATE ON %1 WHEN ").arg(table) + differs.join(QStringLiteral(" OR ")) +
                QStringLiteral(" BEGIN ") + head + QStringLiteral("'%1', NEW.id, 'changed', ").arg(table) + before +
                QStringLiteral(", ") + after + tail);
    run(db, QStringLiteral("CREATE TRIGGER %1_removed AFTER DELETE ON %1 BEGIN ").arg(table) + head +
                QStringLiteral("'%1', OLD.id, 'removed', ").arg(table) + before + QStringLiteral(", NULL") + tail);
}

void add_guards(const QSqlDatabase& db, const QString& table) {
    run(db, QStringLiteral("CREATE TRIGGER %1_shown_stays BEFORE DELETE ON %1 WHEN EXISTS "
                           "(SELECT 1 FROM shown WHERE tbl = '%1' AND row_id = OLD.id) BEGIN "
                           "SELECT RAISE(ABORT, 'law 7: what was shown is made void, not removed'); END").arg(table));
    run(db, QStringLiteral("CREATE TRIGGER %1_keeps_its_key BEFORE UPDATE ON %1 WHEN OLD.id <> NEW.id OR OLD.uid <> NEW.uid BEGIN "
                           "SELECT RAISE(ABORT, 'law 9: a record keeps its key'); END").arg(table));
    run(db, QStringLiteral("CREATE TRIGGER %1_not_overwritten BEFORE INSERT ON %1 WHEN EXISTS (SELECT 1 FROM %1 WHERE id = NEW.id) "
                           "BEGIN SELECT RAISE(ABORT, 'law 9: a record is not overwritten'); END").arg(table));
}

} // namespace

QStringList columns_of(const QSqlDatabase& db, const QString& table) {
    QStringList names;
    Statement s(db, QStringLiteral("SELECT name FROM pragma_table_info(?) ORDER BY cid"));
    s.bind(table).run();
    while (s.next())
        names << s.get<QString>(0);
    return names;
}

QStringList record_tables() {
    return {QStringLiteral("operation"),  QStringLiteral("person"),      QStringLiteral("figure"),     QStringLiteral("strip_kind"),
            QStringLiteral("material_lot"), QStringLiteral("lot_change"), QStringLiteral("vessel"),    QStringLiteral("batch"),
            QStringLiteral("batch_input"), QStringLiteral("reading"),    QStringLiteral("stir"),       QStringLiteral("soak"),
            QStringLiteral("bag"),        QStringLiteral("bag_change"),  QStringLiteral("pour"),       QStringLiteral("pail"),
            QStringLiteral("batch_loss"), QStringLiteral("yard"),        QStringLiteral("yard_time"),  QStringLiteral("hive"),
            QStringLiteral("hive_move"),  QStringLiteral("round"),       QStringLiteral("round_yard"), QStringLiteral("placement"),
            QStringLiteral("weigh_in"),   QStringLiteral("weigh_single"), QStringLiteral("mite_count")};
}

void lay_out(const QSqlDatabase& db) {
    run(db, QStringLiteral("PRAGMA application_id=%1").arg(application_id));
    run(db, QStringLiteral("BEGIN EXCLUSIVE"));
    try {
        for (const char* part : {"0001_control.sql", "0001_records.sql", "0001_laws.sql"})
            run_script(db, script(QLatin1String(part)));
        for (const QString& table : record_tables()) {
            add_history_triggers(db, table);
            add_guards(db, table);
        }
        run(db, QStringLiteral("PRAGMA user_version=%1").arg(schema_version));
        run(db, QStringLiteral("COMMIT"));
    } catch (...) {
        QSqlQuery(db).exec(QStringLiteral("ROLLBACK"));
        throw;
    }
}

QStringList structure_of(const QSqlDatabase& db) {
    QStringList texts;
    Statement s(db, QStringLiteral("SELECT type || ' ' || name || ': ' || coalesce(sql, '') FROM sqlite_schema ORDER BY 1"));
    s.run();
    while (s.next())
        texts << s.get<QString>(0);
    return texts;
}

QStringList known_structure() {
    static const QStringList known = [] {
        QSqlDatabase memory = connect_store(QStringLiteral(":memory:"));
        lay_out(memory);
        QStringList texts = structure_of(memory);
        disconnect_store(memory);
        return texts;
    }();
    return known;
}

} // namespace soakbook::book
