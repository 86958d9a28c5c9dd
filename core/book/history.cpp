// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/history.h"

#include "core/book/row_image.h"
#include "core/book/statement.h"

#include <algorithm>
#include <array>

namespace soakbook::book {

namespace {

// A cell as text; nothing for NULL. A key in bytes stands as SQL writes it.
std::optional<QString> text_of(const Cells& cells, const QString& column) {
    const QVariant value = cell(cells, column);
    if (!value.isValid())
        return std::nullopt;
    return value.typeId() == QMetaType::QByteArray ? QStringLiteral("X'%1'").arg(QString::fromLatin1(value.toByteArray().toHex().toUpper())) : value.toString();
}

constexpr const char* select = "SELECT seq, piece, work, count, subject, who, why, at_ms, at_off, tbl, row_id, what, before, after FROM change ";

Change read_change(const Statement& s) {
    Change c;
    c.seq = s.get<qint64>(0);
    c.piece = s.get<std::optional<qint64>>(1);
    c.work = {s.get<QString>(2), s.get<int>(3), s.get<QString>(4)};
    c.who = s.get<QString>(5);
    c.why = s.get<QString>(6);
    c.at = {s.get<qint64>(7), s.get<int>(8)};
    c.table = s.get<QString>(9);
    c.row = s.get<qint64>(10);
    const QString what = s.get<QString>(11);
    c.what = what == QStringLiteral("added") ? ChangeWhat::added : what == QStringLiteral("changed") ? ChangeWhat::changed : ChangeWhat::removed;
    const Cells before = read_cells(s.get<QString>(12));
    const Cells after = read_cells(s.get<QString>(13));
    for (const auto& [name, value] : c.what == ChangeWhat::removed ? before : after) {
        if (name == QStringLiteral("uid") || name == QStringLiteral("id"))
            continue;
        ColumnChange column{name, text_of(before, name), text_of(after, name)};
        if (c.what != ChangeWhat::changed || column.before != column.after)
            c.columns.push_back(std::move(column));
    }
    return c;
}

std::vector<Change> read_all(Statement& s) {
    std::vector<Change> changes;
    s.run();
    while (s.next())
        changes.push_back(read_change(s));
    return changes;
}

} // namespace

std::vector<Change> history_of(const Workbook& workbook, const QString& table, qint64 row) {
    Statement s(workbook.db(), QLatin1String(select) + QStringLiteral("WHERE tbl = ? AND row_id = ? ORDER BY seq"));
    s.bind(table).bind(row);
    return read_all(s);
}

std::vector<Change> changes_with_reason(const Workbook& workbook, qint64 from_seq, qint64 to_seq) {
    Statement s(workbook.db(), QLatin1String(select) + QStringLiteral("WHERE why <> '' AND seq BETWEEN ? AND ? ORDER BY seq"));
    s.bind(from_seq).bind(to_seq);
    return read_all(s);
}

std::vector<Change> changes_of_corrected(const Workbook& workbook, const QStringList& tables, const std::function<bool(const ChangeHead&)>& wanted) {
    // An index holds just these; of what nobody wants the images are not read.
    Statement s(workbook.db(), QLatin1String(select) + QStringLiteral("WHERE tbl IN ('%1') AND what = 'changed' AND "
                                                                      "(why <> '' OR work GLOB 'undo:*' OR work GLOB 'redo:*')")
                                                           .arg(tables.join(QStringLiteral("','"))));
    s.run();
    std::vector<Change> changes;
    while (s.next())
        if (!wanted || wanted({s.get<QString>(9), s.get<qint64>(10), {s.get<qint64>(7), s.get<int>(8)}}))
            changes.push_back(read_change(s));
    std::sort(changes.begin(), changes.end(), [](const Change& a, const Change& b) { return a.seq < b.seq; });
    return changes;
}

std::vector<Change> history_of(const Workbook& workbook, const std::vector<RowRef>& rows) {
    std::vector<Change> changes;
    for (const RowRef& row : rows)
        for (Change& change : history_of(workbook, row.table, row.id))
            changes.push_back(std::move(change));
    std::sort(changes.begin(), changes.end(), [](const Change& a, const Change& b) { return a.seq < b.seq; });
    return changes;
}

std::vector<RowRef> rows_around(const Workbook& workbook, const RowRef& row) {
    struct Inside {
        const char* of;
        const char* table;
        const char* where;
    };
    static constexpr std::array all{
        Inside{"batch", "batch_input", "batch_id = ?"},
        Inside{"batch", "reading", "batch_id = ?"},
        Inside{"batch", "stir", "batch_id = ?"},
        Inside{"batch", "soak", "batch_id = ?"},
        Inside{"batch", "weigh_in", "soak_id IN (SELECT id FROM soak WHERE batch_id = ?)"},
        Inside{"batch", "bag", "batch_id = ?"},
        Inside{"batch", "pour", "batch_id = ?"},
        Inside{"batch", "pail", "batch_id = ?"},
        Inside{"batch", "batch_loss", "batch_id = ?"},
        Inside{"bag", "bag_change", "bag_id = ?"},
        Inside{"bag", "weigh_in", "bag_id = ?"},
        Inside{"pail", "pour", "id = (SELECT pour_id FROM pail WHERE id = ?)"},
        Inside{"material_lot", "lot_change", "lot_id = ?"},
        Inside{"yard", "yard_time", "yard_id = ?"},
        Inside{"hive", "placement", "hive_id = ?"},
        Inside{"hive", "mite_count", "hive_id = ?"},
        Inside{"hive", "hive_move", "hive_id = ?"},
        Inside{"round", "round_yard", "round_id = ?"},
        Inside{"placement", "weigh_in", "placement_id = ?"},
    };
    std::vector<RowRef> rows{row};
    for (const Inside& inside : all) {
        if (row.table != QLatin1String(inside.of))
            continue;
        Statement s(workbook.db(), QStringLiteral("SELECT id FROM %1 WHERE %2 ORDER BY id").arg(QLatin1String(inside.table), QLatin1String(inside.where)));
        s.bind(row.id).run();
        while (s.next())
            rows.push_back({QLatin1String(inside.table), s.get<qint64>(0)});
    }
    return rows;
}

std::vector<Change> changes_of_entry(const Workbook& workbook, qint64 seq) {
    Statement s(workbook.db(), QLatin1String(select) +
                                   QStringLiteral("WHERE seq = ? UNION ") + QLatin1String(select) +
                                   QStringLiteral("WHERE piece = (SELECT piece FROM change WHERE seq = ?) ORDER BY seq"));
    s.bind(seq).bind(seq);
    return read_all(s);
}

std::vector<Change> changes_outside(const Workbook& workbook, qint64 after, int most) {
    Statement s(workbook.db(), QLatin1String(select) + QStringLiteral("WHERE piece IS NULL AND seq > ? ORDER BY seq DESC LIMIT ?"));
    s.bind(after).bind(most);
    return read_all(s);
}

int count_outside(const Workbook& workbook, qint64 after) {
    Statement s(workbook.db(), QStringLiteral("SELECT count(*) FROM change WHERE piece IS NULL AND seq > ?"));
    s.bind(after).run();
    return s.next() ? s.get<int>(0) : 0;
}

std::vector<Change> newest_changes(const Workbook& workbook, int most) {
    Statement s(workbook.db(), QLatin1String(select) + QStringLiteral("ORDER BY seq DESC LIMIT ?"));
    s.bind(most);
    return read_all(s);
}

} // namespace soakbook::book
