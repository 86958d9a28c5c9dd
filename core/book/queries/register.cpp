// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/register.h"

#include "core/book/statement.h"

#include <algorithm>
#include <map>

namespace soakbook::book {

namespace {

const QStringList& correcting_work() {
    static const QStringList keys{QStringLiteral("corrected"), QStringLiteral("made_void"),
                                  QStringLiteral("mix_corrected"), QStringLiteral("lot_corrected"),
                                  QStringLiteral("batch_reopened")};
    return keys;
}

QString list_of(const std::set<qint64>& ids) {
    QStringList texts;
    for (const qint64 id : ids)
        texts << QString::number(id);
    return texts.join(QLatin1Char(','));
}

std::set<qint64> ids_where(const Workbook& workbook, const QString& select) {
    std::set<qint64> ids;
    Statement s(workbook.db(), select);
    s.run();
    while (s.next())
        if (const auto id = s.get<std::optional<qint64>>(0))
            ids.insert(*id);
    return ids;
}

/// When that record was first shown outside.
std::optional<qint64> first_shown(const Workbook& workbook, const QString& table, qint64 row) {
    Statement s(workbook.db(), QStringLiteral("SELECT min(at_ms) FROM shown WHERE tbl = ? AND row_id = ?"));
    s.bind(table).bind(row).run();
    return s.next() ? s.get<std::optional<qint64>>(0) : std::nullopt;
}

bool is_taken_back(const Change& change) { return change.work.key.contains(QLatin1Char(':')); }

} // namespace

std::vector<Change> corrections_in(const Workbook& workbook, const QStringList& tables, const std::function<bool(const ChangeHead&)>& wanted) {
    std::vector<Change> found = changes_of_corrected(workbook, tables, wanted);
    std::erase_if(found, [&](const Change& change) {
        if (!is_taken_back(change))
            return change.why.isEmpty();
        if (correcting_work().contains(change.work.key.section(QLatin1Char(':'), 1)))
            return false;
        const auto first = first_shown(workbook, change.table, change.row);
        return !first || *first > change.at.utc_ms;
    });
    return found;
}

Behind behind(const Workbook& workbook, const std::set<qint64>& batches) {
    Behind b;
    b.batches = ids_where(
        workbook, QStringLiteral("WITH RECURSIVE source(id) AS (SELECT id FROM batch WHERE id IN (%1) UNION "
                                 "SELECT pail.batch_id FROM source JOIN batch_input i ON i.batch_id = source.id "
                                 "JOIN pail ON pail.id = i.pail_id) SELECT id FROM source")
                      .arg(list_of(batches)));
    const QString all = list_of(b.batches);
    b.inputs = ids_where(workbook, QStringLiteral("SELECT id FROM batch_input WHERE batch_id IN (%1)").arg(all));
    b.soaks = ids_where(workbook, QStringLiteral("SELECT id FROM soak WHERE batch_id IN (%1)").arg(all));
    b.bags = ids_where(workbook, QStringLiteral("SELECT id FROM bag WHERE batch_id IN (%1)").arg(list_of(batches)));
    b.lots = ids_where(workbook, QStringLiteral("SELECT lot_id FROM batch_input WHERE batch_id IN (%1) UNION SELECT "
                                                "lot_id FROM soak WHERE batch_id IN (%1) "
                                                "UNION SELECT bag_lot_id FROM bag WHERE batch_id IN (%1)")
                                     .arg(all));
    b.pails = ids_where(
        workbook,
        QStringLiteral(
            "SELECT id FROM pail WHERE batch_id IN (%1) UNION SELECT pail_id FROM batch_input WHERE batch_id IN (%1)")
            .arg(all));
    b.losses = ids_where(workbook, QStringLiteral("SELECT id FROM batch_loss WHERE batch_id IN (%1)").arg(all));
    b.weigh_ins =
        ids_where(workbook, QStringLiteral("SELECT id FROM weigh_in WHERE soak_id IN (%1) OR bag_id IN (%2) "
                                           "OR placement_id IN (SELECT id FROM placement WHERE bag_id IN (%2))")
                                .arg(list_of(b.soaks), list_of(b.bags)));
    return b;
}

bool is_anything_hung(const Workbook& workbook, Id<Yard> yard) {
    Statement s(workbook.db(), QStringLiteral("SELECT 1 FROM placement ") + (yard ? QStringLiteral("WHERE yard_id = ? ") : QString()) + QStringLiteral("LIMIT 1"));
    if (yard)
        s.bind(yard);
    s.run();
    return s.next();
}

QString name_of(const Workbook& workbook, const QString& table, qint64 id) {
    static const std::map<QString, const char*> names{
        {QStringLiteral("operation"), "SELECT name FROM operation WHERE id = ?"},
        {QStringLiteral("person"), "SELECT name FROM person WHERE id = ?"},
        {QStringLiteral("figure"), "SELECT key FROM figure WHERE id = ?"},
        {QStringLiteral("strip_kind"), "SELECT name FROM strip_kind WHERE id = ?"},
        {QStringLiteral("material_lot"), "SELECT name FROM material_lot WHERE id = ?"},
        {QStringLiteral("lot_change"),
         "SELECT l.name FROM lot_change c JOIN material_lot l ON l.id = c.lot_id WHERE c.id = ?"},
        {QStringLiteral("vessel"), "SELECT name FROM vessel WHERE id = ?"},
        {QStringLiteral("batch"), "SELECT code FROM batch WHERE id = ?"},
        {QStringLiteral("batch_input"),
         "SELECT b.code || ', ' || coalesce(l.name, p.code) FROM batch_input i JOIN batch b ON b.id = i.batch_id "
         "LEFT JOIN material_lot l ON l.id = i.lot_id LEFT JOIN pail p ON p.id = i.pail_id WHERE i.id = ?"},
        {QStringLiteral("reading"), "SELECT b.code FROM reading r JOIN batch b ON b.id = r.batch_id WHERE r.id = ?"},
        {QStringLiteral("stir"), "SELECT b.code FROM stir r JOIN batch b ON b.id = r.batch_id WHERE r.id = ?"},
        {QStringLiteral("soak"), "SELECT b.code || ', ' || v.name FROM soak s JOIN batch b ON b.id = s.batch_id JOIN "
                                 "vessel v ON v.id = s.bin_id WHERE s.id = ?"},
        {QStringLiteral("bag"), "SELECT code FROM bag WHERE id = ?"},
        {QStringLiteral("bag_change"), "SELECT b.code FROM bag_change c JOIN bag b ON b.id = c.bag_id WHERE c.id = ?"},
        {QStringLiteral("pour"), "SELECT b.code FROM pour p JOIN batch b ON b.id = p.batch_id WHERE p.id = ?"},
        {QStringLiteral("pail"), "SELECT code FROM pail WHERE id = ?"},
        {QStringLiteral("batch_loss"),
         "SELECT b.code FROM batch_loss l JOIN batch b ON b.id = l.batch_id WHERE l.id = ?"},
        {QStringLiteral("yard"), "SELECT name FROM yard WHERE id = ?"},
        {QStringLiteral("yard_time"),
         "SELECT y.name || ', ' || t.what FROM yard_time t JOIN yard y ON y.id = t.yard_id WHERE t.id = ?"},
        {QStringLiteral("hive"), "SELECT name FROM hive WHERE id = ?"},
        {QStringLiteral("hive_move"), "SELECT h.name FROM hive_move m JOIN hive h ON h.id = m.hive_id WHERE m.id = ?"},
        {QStringLiteral("round"), "SELECT name FROM round WHERE id = ?"},
        {QStringLiteral("round_yard"), "SELECT r.name || ', ' || y.name FROM round_yard x JOIN round r ON r.id = "
                                       "x.round_id JOIN yard y ON y.id = x.yard_id WHERE x.id = ?"},
        {QStringLiteral("placement"), "SELECT h.name || ', ' || b.code FROM placement p JOIN hive h ON h.id = "
                                      "p.hive_id JOIN bag b ON b.id = p.bag_id WHERE p.id = ?"},
        {QStringLiteral("weigh_in"),
         "SELECT coalesce(sb.code || ', ' || v.name, g.code, h.name || ', ' || pg.code) FROM weigh_in w "
         "LEFT JOIN soak s ON s.id = w.soak_id LEFT JOIN batch sb ON sb.id = s.batch_id LEFT JOIN vessel v ON v.id = "
         "s.bin_id "
         "LEFT JOIN bag g ON g.id = w.bag_id LEFT JOIN placement p ON p.id = w.placement_id "
         "LEFT JOIN hive h ON h.id = p.hive_id LEFT JOIN bag pg ON pg.id = p.bag_id WHERE w.id = ?"},
        {QStringLiteral("mite_count"),
         "SELECT h.name FROM mite_count c JOIN hive h ON h.id = c.hive_id WHERE c.id = ?"},
    };
    const auto select = names.find(table);
    if (select == names.end())
        return {};
    Statement s(workbook.db(), QLatin1String(select->second));
    s.bind(id).run();
    return s.next() ? s.get<QString>(0) : QString();
}

std::vector<HiveStateRow> hives_found(const Workbook& workbook, Id<Yard> yard, Id<Batch> batch, std::optional<maths::Day> from,
                                      std::optional<maths::Day> to) {
    // ISO days stand in the order of their text.
    const QString first = from ? day_text(*from) : QString();
    const QString last = to ? day_text(*to) : QStringLiteral("9999-12-31");
    std::vector<HiveStateRow> rows;
    const auto take = [&](Statement& s) {
        s.run();
        while (s.next())
            rows.push_back({s.get<maths::Day>(0), s.get<Id<Hive>>(1), s.get<QString>(2), s.get<QString>(3),
                            s.get<QString>(4), s.get<QString>(5)});
    };
    {
        Statement s(workbook.db(),
                    QStringLiteral(
                        "SELECT hive.state_on, hive.id, hive.name, yard.name, hive.state, hive.note FROM hive "
                        "JOIN yard ON yard.id = hive.yard_id WHERE hive.state <> 'alive' AND hive.state_on IS NOT NULL "
                        "AND hive.state_on BETWEEN ? AND ? "
                        "AND hive.void_reason IS NULL AND (hive.yard_id = ? OR ? = 0) AND (? = 0 OR EXISTS (SELECT 1 "
                        "FROM placement p "
                        "JOIN bag ON bag.id = p.bag_id WHERE p.hive_id = hive.id AND bag.batch_id = ?))"));
        s.bind(first).bind(last).bind(yard).bind(yard).bind(batch).bind(batch);
        take(s);
    }
    if (!batch) {
        // Where a hive stood on the day of the visit: in the yard it left by its first move after it, else where it
        // stands.
        const QString common = QStringLiteral(
            "JOIN yard ON yard.id = ry.yard_id WHERE ry.void_reason IS NULL AND ry.visited_on BETWEEN ? AND ? "
            "AND hive.void_reason IS NULL AND (ry.yard_id = ? OR ? = 0) "
            "AND (hive.state = 'alive' OR hive.state_on > ry.visited_on) "
            "AND NOT EXISTS (SELECT 1 FROM placement p WHERE p.hive_id = hive.id AND p.round_id = ry.round_id AND "
            "p.void_reason IS NULL) "
            "AND (SELECT min(seq) FROM change WHERE tbl = 'hive' AND row_id = hive.id) "
            "< (SELECT max(seq) FROM change WHERE tbl = 'round_yard' AND row_id = ry.id) ");
        const QString head = QStringLiteral("SELECT ry.visited_on, hive.id, hive.name, yard.name, CASE hive.untreated "
                                            "WHEN 1 THEN 'untreated' ELSE 'none_hung' END, '' "
                                            "FROM round_yard ry ");
        Statement s(
            workbook.db(),
            head + QStringLiteral("JOIN hive ON hive.yard_id = ry.yard_id ") + common +
                QStringLiteral("AND NOT EXISTS (SELECT 1 FROM hive_move m WHERE m.hive_id = hive.id AND m.on_day > "
                               "ry.visited_on AND m.void_reason IS NULL) "
                               "UNION ALL ") +
                head +
                QStringLiteral("JOIN hive_move m ON m.from_yard_id = ry.yard_id AND m.on_day > ry.visited_on AND "
                               "m.void_reason IS NULL "
                               "JOIN hive ON hive.id = m.hive_id ") +
                common +
                QStringLiteral(
                    "AND NOT EXISTS (SELECT 1 FROM hive_move e WHERE e.hive_id = hive.id AND e.on_day > ry.visited_on "
                    "AND e.void_reason IS NULL AND (e.on_day, e.id) < (m.on_day, m.id))"));
        s.bind(first).bind(last).bind(yard).bind(yard).bind(first).bind(last).bind(yard).bind(yard);
        take(s);
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const HiveStateRow& a, const HiveStateRow& b) { return a.on < b.on; });
    return rows;
}

std::vector<JournalRow> newest_pieces(const Workbook& workbook, int most) {
    std::vector<JournalRow> rows;
    const auto take = [&](Statement& s) {
        s.run();
        while (s.next())
            rows.push_back({s.get<qint64>(0),
                            {s.get<QString>(1), s.get<int>(2), s.get<QString>(3)},
                            s.get<QString>(4),
                            s.get<QString>(5),
                            {s.get<qint64>(6), s.get<int>(7)},
                            s.get<int>(8),
                            s.get<bool>(9)});
    };
    {
        Statement s(
            workbook.db(),
            QStringLiteral("WITH newest AS (SELECT piece FROM change WHERE piece IS NOT NULL GROUP BY piece ORDER BY "
                           "piece DESC LIMIT ?) "
                           "SELECT max(seq), work, count, subject, who, why, at_ms, at_off, "
                           "sum(tbl NOT IN ('given_code', 'shown')), 0 FROM change "
                           "WHERE piece IN (SELECT piece FROM newest) GROUP BY piece"));
        s.bind(most);
        take(s);
    }
    {
        Statement s(
            workbook.db(),
            QStringLiteral(
                "SELECT seq, work, count, subject, who, why, at_ms, at_off, 1, 1 FROM change WHERE piece IS NULL "
                "ORDER BY seq DESC LIMIT ?"));
        s.bind(most);
        take(s);
    }
    std::sort(rows.begin(), rows.end(), [](const JournalRow& a, const JournalRow& b) { return a.seq > b.seq; });
    if (rows.size() > static_cast<std::size_t>(std::max(most, 0)))
        rows.resize(static_cast<std::size_t>(std::max(most, 0)));
    return rows;
}

} // namespace soakbook::book
