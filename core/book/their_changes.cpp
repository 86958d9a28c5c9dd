// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/their_changes.h"

#include "core/book/history_triggers.h"
#include "core/book/raw_rows.h"
#include "core/book/statement.h"

#include <algorithm>

namespace soakbook::book {

namespace {

// Tables in which a name stands for one thing alone: entered in both copies, it is one and the same.
const std::map<QString, QStringList>& names_of_one_thing() {
    static const std::map<QString, QStringList> names{
        {QStringLiteral("operation"), {}},
        {QStringLiteral("person"), {QStringLiteral("name")}},
        {QStringLiteral("figure"), {QStringLiteral("key")}},
        {QStringLiteral("strip_kind"), {QStringLiteral("name")}},
        {QStringLiteral("vessel"), {QStringLiteral("name")}},
        {QStringLiteral("yard"), {QStringLiteral("name")}},
        {QStringLiteral("hive"), {QStringLiteral("yard_id"), QStringLiteral("name")}},
        {QStringLiteral("round_yard"), {QStringLiteral("round_id"), QStringLiteral("yard_id")}},
    };
    return names;
}

// A hive that died may leave its number to another one, and what was made void stands for nothing.
bool bears_its_name(const QString& table, const Cells& cells) {
    return !cell(cells, QStringLiteral("void_reason")).isValid() &&
           (table != QStringLiteral("hive") || cell(cells, QStringLiteral("state")) == QVariant(QStringLiteral("alive")));
}

Cells image_of_row(const QSqlDatabase& db, const QStringList& columns, const RowKey& row) {
    RawRows image(db, QStringLiteral("SELECT %1 FROM %2 t WHERE id = ?").arg(row_image(columns, QStringLiteral("t")), row.table).toUtf8());
    image.start({row.id});
    return image.next() ? read_cells(QString::fromUtf8(image.bytes(0))) : Cells{};
}

} // namespace

TheirChanges::TheirChanges(const QSqlDatabase& here, const QSqlDatabase& there, const Comparison& comparison) : m_here(here), m_there(there) {
    learn_tables();
    read(comparison);
}

void TheirChanges::learn_tables() {
    for (const QString& table : record_tables()) {
        m_columns[table] = columns_of(m_here, table);
        Statement links(m_here, QStringLiteral("SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?) WHERE \"to\" = 'id'"));
        links.bind(table).run();
        while (links.next())
            m_links[table][links.get<QString>(0)] = links.get<QString>(1);
    }
}

void TheirChanges::read(const Comparison& comparison) {
    const QStringList growing = growing_tables();
    auto piece = comparison.only_there.begin();
    RawRows rows(m_there, "SELECT seq, tbl, row_id, what, before, after FROM change WHERE seq > ? ORDER BY seq");
    rows.start({comparison.common_seq});
    while (rows.next()) {
        TheirChange change;
        change.seq = rows.number(0);
        while (piece != comparison.only_there.end() && piece->last_seq < change.seq)
            ++piece;
        if (piece == comparison.only_there.end())
            break;
        change.piece = piece->first_seq;
        change.row = {QString::fromUtf8(rows.bytes(1)), rows.number(2)};
        const QByteArray what = rows.bytes(3);
        change.what = what == "added" ? ChangeWhat::added : what == "changed" ? ChangeWhat::changed : ChangeWhat::removed;
        change.before = read_cells(QString::fromUtf8(rows.bytes(4)));
        change.after = read_cells(QString::fromUtf8(rows.bytes(5)));
        if (growing.contains(change.row.table)) {
            m_growing.push_back(std::move(change));
        } else if (m_columns.count(change.row.table)) {
            m_of_row[change.row].push_back(m_records.size());
            m_records.push_back(std::move(change));
        }
    }
}

const std::vector<std::size_t>& TheirChanges::of(const RowKey& there) const {
    static const std::vector<std::size_t> none;
    const auto found = m_of_row.find(there);
    return found == m_of_row.end() ? none : found->second;
}

QString TheirChanges::link(const QString& table, const QString& column) const {
    const auto links = m_links.find(table);
    if (links == m_links.end())
        return {};
    const auto found = links->second.find(column);
    return found == links->second.end() ? QString() : found->second;
}

void TheirChanges::choose(const std::set<qint64>& pieces) {
    m_chosen = pieces;
    m_ids_here.clear();
}

QByteArray TheirChanges::uid_there(const RowKey& there) const {
    for (const std::size_t place : of(there)) {
        const TheirChange& change = m_records[place];
        const QVariant uid = cell(change.what == ChangeWhat::removed ? change.before : change.after, QStringLiteral("uid"));
        if (uid.isValid())
            return uid.toByteArray();
    }
    RawRows row(m_there, QStringLiteral("SELECT uid FROM %1 WHERE id = ?").arg(there.table).toUtf8());
    row.start({there.id});
    return row.next() ? row.bytes(0) : QByteArray();
}

Cells TheirChanges::last_there(const RowKey& there) const {
    const auto& places = of(there);
    for (auto place = places.rbegin(); place != places.rend(); ++place)
        if (is_chosen(m_records[*place]))
            return m_records[*place].after;
    return {};
}

qint64 TheirChanges::namesake(const RowKey& there) const {
    const auto names = names_of_one_thing().find(there.table);
    const auto& places = of(there);
    if (names == names_of_one_thing().end() || places.empty() || m_records[places.front()].what != ChangeWhat::added)
        return 0;
    const Cells cells = last_there(there);
    if (cells.empty() || !bears_its_name(there.table, cells))
        return 0;
    QString sql = QStringLiteral("SELECT id FROM ") + there.table + QStringLiteral(" WHERE 1");
    std::vector<QVariant> values;
    for (const QString& name : names->second) {
        QVariant value = cell(cells, name);
        if (const QString to = link(there.table, name); !to.isEmpty())
            value = id_here({to, value.toLongLong()});
        sql += QStringLiteral(" AND %1 = ?").arg(name);
        values.push_back(value);
    }
    if (m_columns.at(there.table).contains(QStringLiteral("void_reason")))
        sql += QStringLiteral(" AND void_reason IS NULL");
    if (there.table == QStringLiteral("hive"))
        sql += QStringLiteral(" AND state = 'alive'");
    Statement found(m_here, sql);
    for (const QVariant& value : values)
        found.bind(value);
    found.run();
    return found.next() ? found.get<qint64>(0) : 0;
}

qint64 TheirChanges::id_here(const RowKey& there) const {
    if (const auto known = m_ids_here.find(there); known != m_ids_here.end())
        return known->second;
    if (!m_columns.count(there.table))
        return 0;
    Statement row(m_here, QStringLiteral("SELECT id FROM %1 WHERE uid = ?").arg(there.table));
    row.bind(QVariant(uid_there(there))).run();
    const qint64 id = row.next() ? row.get<qint64>(0) : namesake(there);
    if (id != 0)
        m_ids_here[there] = id;
    return id;
}

bool TheirChanges::is_namesake(const RowKey& there, qint64 here) const {
    Statement row(m_here, QStringLiteral("SELECT 1 FROM %1 WHERE id = ? AND uid <> ?").arg(there.table));
    row.bind(here).bind(QVariant(uid_there(there))).run();
    return row.next();
}

void TheirChanges::set_id_here(const RowKey& there, qint64 id) {
    if (id == 0)
        m_ids_here.erase(there);
    else
        m_ids_here[there] = id;
}

Cells TheirChanges::row_here(const RowKey& here) const { return image_of_row(m_here, m_columns.at(here.table), here); }

bool TheirChanges::same_cell(const QString& table, const QString& column, const Cells& here, const Cells& there) const {
    const QVariant mine = cell(here, column);
    const QVariant theirs = cell(there, column);
    const QString to = link(table, column);
    if (to.isEmpty() || !theirs.isValid())
        return mine == theirs && mine.isValid() == theirs.isValid();
    return mine.isValid() && mine.toLongLong() == id_here({to, theirs.toLongLong()});
}

bool TheirChanges::same(const QString& table, const Cells& here, const Cells& there) const {
    if (here.empty() || there.empty())
        return here.empty() == there.empty();
    const bool renamed = cell(here, QStringLiteral("code")) != cell(there, QStringLiteral("code"));
    const QStringList& all = m_columns.at(table);
    return std::all_of(all.begin(), all.end(), [&](const QString& column) {
        if (column == QStringLiteral("id") || column == QStringLiteral("uid"))
            return true;
        if (renamed && (column == QStringLiteral("code") || column == QStringLiteral("label")))
            return true;
        return same_cell(table, column, here, there);
    });
}

QString record_name(const QSqlDatabase& db, const TheirChanges& tables, const RowKey& row) {
    RowKey at = row;
    // From a weighing to its soak, from there to its batch: a record without a name is told by what it belongs to.
    for (int steps = 0; steps < 4 && at.id != 0; ++steps) {
        const QStringList& columns = tables.columns(at.table);
        const Cells cells = image_of_row(db, columns, at);
        for (const char* name : {"code", "name"})
            if (const QVariant said = cell(cells, QLatin1String(name)); said.isValid())
                return said.toString();
        RowKey next;
        for (const QString& column : columns) {
            const QVariant value = cell(cells, column);
            if (const QString to = tables.link(at.table, column); !to.isEmpty() && value.isValid()) {
                next = {to, value.toLongLong()};
                break;
            }
        }
        at = next;
    }
    return {};
}

} // namespace soakbook::book
