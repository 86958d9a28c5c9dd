// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/history_triggers.h"

#include "core/book/statement.h"

namespace soakbook::book {

namespace {

const char* const head_columns =
    "INSERT INTO change(piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, tbl, row_id, what, before, after) ";

QString trigger_head() {
    const QString now_ms = QStringLiteral("CAST((julianday('now') - 2440587.5) * 86400000 AS INTEGER)");
    return QLatin1String(head_columns) +
           QStringLiteral("SELECT d.piece, coalesce(d.work, 'outside'), coalesce(d.count, 1), coalesce(d.subject, ''), coalesce(d.who, ''), "
                          "coalesce(d.why, ''), coalesce(d.version, ''), coalesce(d.at_ms, %1), coalesce(d.at_off, 0), coalesce(d.clock_doubtful, 0), ")
               .arg(now_ms);
}

const QString& trigger_tail() {
    static const QString tail = QStringLiteral(" FROM (SELECT 1) LEFT JOIN now_doing d ON d.id = 1; END");
    return tail;
}

// What stands as the row's number in the history of a table that has no id.
QString number_of(const QString& growing_table, const QString& row) {
    return growing_table == QStringLiteral("shown") ? row + QStringLiteral(".row_id") : row + QStringLiteral(".number");
}

void make_record_triggers(const QSqlDatabase& db, const QString& table, int version) {
    const QStringList columns = columns_of(db, table);
    // A name is UNIQUE whatever its case; in version 1 a change of case alone was therefore no change for the trigger.
    const QString differ = version < 2 ? QStringLiteral("OLD.%1 IS NOT NEW.%1") : QStringLiteral("OLD.%1 IS NOT NEW.%1 COLLATE BINARY");
    QStringList differs;
    for (const QString& c : columns)
        differs << differ.arg(c);
    const QString before = row_image(columns, QStringLiteral("OLD"));
    const QString after = row_image(columns, QStringLiteral("NEW"));
    run(db, QStringLiteral("CREATE TRIGGER %1_added AFTER INSERT ON %1 BEGIN ").arg(table) + trigger_head() +
                QStringLiteral("'%1', NEW.id, 'added', NULL, ").arg(table) + after + trigger_tail());
    run(db, QStringLiteral("CREATE TRIGGER %1_changed AFTER UPDATE ON %1 WHEN ").arg(table) + differs.join(QStringLiteral(" OR ")) +
                QStringLiteral(" BEGIN ") + trigger_head() + QStringLiteral("'%1', NEW.id, 'changed', ").arg(table) + before +
                QStringLiteral(", ") + after + trigger_tail());
    run(db, QStringLiteral("CREATE TRIGGER %1_removed AFTER DELETE ON %1 BEGIN ").arg(table) + trigger_head() +
                QStringLiteral("'%1', OLD.id, 'removed', ").arg(table) + before + QStringLiteral(", NULL") + trigger_tail());
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

QStringList growing_tables() { return {QStringLiteral("given_code"), QStringLiteral("shown")}; }

QString row_image(const QStringList& columns, const QString& which) {
    QStringList parts;
    for (const QString& c : columns)
        parts << QStringLiteral("'%1=' || quote(%2.%1)").arg(c, which);
    return parts.join(QStringLiteral(" || char(10) || "));
}

void make_history_triggers(const QSqlDatabase& db, int version) {
    for (const QString& table : record_tables()) {
        for (const char* what : {"added", "changed", "removed"})
            run(db, QStringLiteral("DROP TRIGGER IF EXISTS %1_%2").arg(table, QLatin1String(what)));
        make_record_triggers(db, table, version);
    }
    if (version < 2)
        return;
    for (const QString& table : growing_tables()) {
        run(db, QStringLiteral("DROP TRIGGER IF EXISTS %1_added").arg(table));
        run(db, QStringLiteral("CREATE TRIGGER %1_added AFTER INSERT ON %1 BEGIN ").arg(table) + trigger_head() +
                    QStringLiteral("'%1', %2, 'added', NULL, ").arg(table, number_of(table, QStringLiteral("NEW"))) +
                    row_image(columns_of(db, table), QStringLiteral("NEW")) + trigger_tail());
    }
}

void make_guards(const QSqlDatabase& db) {
    for (const QString& table : record_tables()) {
        run(db, QStringLiteral("CREATE TRIGGER %1_shown_stays BEFORE DELETE ON %1 WHEN EXISTS "
                               "(SELECT 1 FROM shown WHERE tbl = '%1' AND row_id = OLD.id) BEGIN "
                               "SELECT RAISE(ABORT, 'law 7: what was shown is made void, not removed'); END").arg(table));
        run(db, QStringLiteral("CREATE TRIGGER %1_keeps_its_key BEFORE UPDATE ON %1 WHEN OLD.id <> NEW.id OR OLD.uid <> NEW.uid BEGIN "
                               "SELECT RAISE(ABORT, 'law 9: a record keeps its key'); END").arg(table));
        run(db, QStringLiteral("CREATE TRIGGER %1_not_overwritten BEFORE INSERT ON %1 WHEN EXISTS (SELECT 1 FROM %1 WHERE id = NEW.id) "
                               "BEGIN SELECT RAISE(ABORT, 'law 9: a record is not overwritten'); END").arg(table));
    }
}

void write_missing_history(const QSqlDatabase& db, const QString& work) {
    qint64 piece = 1;
    {
        Statement newest(db, QStringLiteral("SELECT coalesce(max(piece), 0) + 1 FROM change"));
        newest.run();
        if (newest.next())
            piece = newest.get<qint64>(0);
    }
    // When it happened is not known any more: the time of the newest change stands for it, marked as doubtful.
    const QString since = QStringLiteral("coalesce((SELECT at_ms FROM change ORDER BY seq DESC LIMIT 1), 0)");
    const QString head = QLatin1String(head_columns) +
                         QStringLiteral("SELECT %1, '%2', 1, '', '', '', '%3', ").arg(piece).arg(work, QStringLiteral(SOAKBOOK_VERSION));
    for (const QString& table : growing_tables()) {
        const QString when = table == QStringLiteral("shown") ? QStringLiteral("t.at_ms, t.at_off") : QStringLiteral("t.given_ms, t.given_off");
        const QString now = row_image(columns_of(db, table), QStringLiteral("t"));
        run(db, head + when + QStringLiteral(", 0, '%1', %2, 'added', NULL, %3 FROM %1 t WHERE %3 NOT IN "
                                             "(SELECT after FROM change WHERE tbl = '%1' AND after IS NOT NULL)")
                                  .arg(table, number_of(table, QStringLiteral("t")), now));
    }
    for (const QString& table : record_tables()) {
        const QString now = row_image(columns_of(db, table), QStringLiteral("t"));
        run(db, head + since + QStringLiteral(", 0, 1, '%1', t.id, CASE WHEN c.after IS NULL THEN 'added' ELSE 'changed' END, c.after, %2 "
                                              "FROM %1 t LEFT JOIN (SELECT row_id, max(seq), after FROM change WHERE tbl = '%1' GROUP BY row_id) c "
                                              "ON c.row_id = t.id WHERE c.after IS NOT %2")
                           .arg(table, now));
        run(db, head + since + QStringLiteral(", 0, 1, '%1', c.row_id, 'removed', c.after, NULL FROM "
                                              "(SELECT row_id, max(seq), after FROM change WHERE tbl = '%1' GROUP BY row_id) c "
                                              "WHERE c.after IS NOT NULL AND NOT EXISTS (SELECT 1 FROM %1 WHERE id = c.row_id)")
                           .arg(table));
    }
}

} // namespace soakbook::book
