// SPDX-License-Identifier: GPL-3.0-or-later
// How the records of the other copy meet those of this one.
#include "core/book/other_copy.h"
#include "core/book/raw_rows.h"
#include "core/book/statement.h"
#include "core/book/take_over.h"

#include <algorithm>

namespace soakbook::book {

TakeOver::TakeOver(const Workbook& here, const OtherCopy& there, const Comparison& comparison)
    : m_here(here), m_there(there), m_comparison(comparison), m_changes(here.db(), there.db(), comparison) {}

// A chosen piece needs every record that it changes or points at as it was when the piece was written.
std::optional<NotTakenOver> TakeOver::stands_on_left_out() const {
    const auto& all = m_changes.of_records();
    const auto refused = [&](const TheirChange& change, const TheirChange& left_out) {
        return NotTakenOver{NotTakenOver::Why::stands_on_left_out, change.piece, left_out.piece, left_out.row.table,
                            record_name(m_there.db(), m_changes, left_out.row)};
    };
    for (const TheirChange& change : all) {
        if (!m_changes.is_chosen(change))
            continue;
        for (const std::size_t place : m_changes.of(change.row)) {
            const TheirChange& before = all[place];
            if (before.seq >= change.seq)
                break;
            if (m_changes.is_chosen(before))
                continue;
            const qint64 here = m_changes.id_here(change.row);
            if (here == 0 || !m_changes.same(change.row.table, m_changes.row_here({change.row.table, here}), change.before))
                return refused(change, before);
        }
        for (const auto& [column, value] : change.after) {
            const QString to = m_changes.link(change.row.table, column);
            if (to.isEmpty() || !value.isValid())
                continue;
            const RowKey target{to, value.toLongLong()};
            const auto& of_target = m_changes.of(target);
            if (of_target.empty() || all[of_target.front()].what != ChangeWhat::added || m_changes.is_chosen(all[of_target.front()]))
                continue;
            if (m_changes.id_here(target) == 0)
                return refused(change, all[of_target.front()]);
        }
    }
    return std::nullopt;
}

QString TakeOver::spoken(const QSqlDatabase& db, const QString& table, const QString& column, const QVariant& value) const {
    if (const QString to = m_changes.link(table, column); !to.isEmpty()) {
        const QString name = record_name(db, m_changes, {to, value.toLongLong()});
        if (!name.isEmpty())
            return name;
    }
    return value.typeId() == QMetaType::QByteArray ? QString::fromLatin1(value.toByteArray().toHex()) : value.toString();
}

void TakeOver::set_side_by_side(MetRecord& record, const Cells& here, const Cells& there) const {
    const QString& table = record.there.table;
    const auto said = [&](const QSqlDatabase& db, const Cells& cells, const QString& column) {
        const QVariant value = cell(cells, column);
        return value.isValid() ? std::optional<QString>(spoken(db, table, column, value)) : std::nullopt;
    };
    for (const QString& column : m_changes.columns(table)) {
        if (column == QStringLiteral("id") || column == QStringLiteral("uid") || column.endsWith(QStringLiteral("_off")))
            continue;
        SideBySide line{column, said(m_here.db(), here, column), said(m_there.db(), there, column)};
        if (line.here == line.there && (line.here.has_value() || here.empty() || there.empty()))
            continue;
        if (!here.empty() && !there.empty() && m_changes.same_cell(table, column, here, there))
            continue;
        record.columns.push_back(std::move(line));
    }
}

bool TakeOver::was_here(const RowKey& here, const Cells& there) const {
    RawRows images(m_here.db(), "SELECT after FROM change WHERE tbl = '" + here.table.toUtf8() + "' AND row_id = ? AND after IS NOT NULL ORDER BY seq");
    images.start({here.id});
    while (images.next())
        if (m_changes.same(here.table, read_cells(QString::fromUtf8(images.bytes(0))), there))
            return true;
    return false;
}

MetRecord TakeOver::meet_record(const RowKey& there) const {
    MetRecord record;
    record.there = there;
    record.uid = m_changes.uid_there(there);
    const auto& all = m_changes.of_records();
    std::vector<const TheirChange*> chosen;
    for (const std::size_t place : m_changes.of(there))
        if (m_changes.is_chosen(all[place]))
            chosen.push_back(&all[place]);
    for (const TheirChange* change : chosen)
        record.pieces.insert(change->piece);
    record.last_seq = chosen.back()->seq;
    const Cells last = chosen.back()->after;
    const bool added_there = chosen.front()->what == ChangeWhat::added;
    record.here = m_changes.id_here(there);
    const Cells here = record.here == 0 ? Cells{} : m_changes.row_here({there.table, record.here});
    record.name = here.empty() ? record_name(m_there.db(), m_changes, there) : record_name(m_here.db(), m_changes, {there.table, record.here});

    // How many of its changes the row here has seen: it stands as one of their images does.
    std::optional<std::size_t> seen;
    if (!here.empty()) {
        if (m_changes.same(there.table, here, chosen.front()->before))
            seen = 0;
        for (std::size_t i = 0; i < chosen.size(); ++i)
            if (m_changes.same(there.table, here, chosen[i]->after))
                seen = i + 1;
    }
    if (here.empty())
        record.meets = added_there ? (last.empty() ? Meets::here_already : Meets::added) : (last.empty() ? Meets::here_already : Meets::gone_here);
    else if (last.empty())
        record.meets = Meets::taken_away;
    else if (seen)
        record.meets = *seen == chosen.size() ? Meets::here_already : Meets::follows;
    else if (m_changes.is_namesake(there, record.here))
        record.meets = Meets::same_name;
    else
        record.meets = was_here({there.table, record.here}, last) ? Meets::here_already : Meets::differs;
    record.first_to_do = seen.value_or(0);
    if (record.meets != Meets::here_already && record.meets != Meets::taken_away)
        set_side_by_side(record, here, last);
    return record;
}

std::optional<NotTakenOver> TakeOver::left_out(const std::set<qint64>& pieces) {
    m_changes.choose(pieces);
    return stands_on_left_out();
}

tl::expected<std::vector<MetRecord>, NotTakenOver> TakeOver::meet(const std::set<qint64>& pieces) {
    if (const auto refused = left_out(pieces))
        return tl::unexpected(*refused);
    std::vector<MetRecord> records;
    std::set<RowKey> met;
    for (const TheirChange& change : m_changes.of_records())
        if (m_changes.is_chosen(change) && met.insert(change.row).second)
            records.push_back(meet_record(change.row));
    return records;
}

std::set<qint64> TakeOver::with_something_new() {
    std::set<qint64> all;
    for (const LonePiece& piece : m_comparison.only_there)
        all.insert(piece.first_seq);
    std::set<qint64> open;
    const auto met = meet(all);
    for (const MetRecord& record : *met) {
        if (record.meets == Meets::here_already || record.meets == Meets::taken_away)
            continue;
        const auto& places = m_changes.of(record.there);
        for (std::size_t i = record.first_to_do; i < places.size(); ++i)
            open.insert(m_changes.of_records()[places[i]].piece);
    }
    for (const TheirChange& change : m_changes.of_growing()) {
        if (change.row.table != QStringLiteral("shown"))
            continue;
        const RowKey there{cell(change.after, QStringLiteral("tbl")).toString(), cell(change.after, QStringLiteral("row_id")).toLongLong()};
        Statement shown(m_here.db(), QStringLiteral("SELECT 1 FROM shown WHERE tbl = ? AND row_id = ? AND paper = ?"));
        shown.bind(there.table).bind(m_changes.id_here(there)).bind(cell(change.after, QStringLiteral("paper"))).run();
        if (m_changes.id_here(there) != 0 && !shown.next())
            open.insert(change.piece);
    }
    return open;
}

} // namespace soakbook::book
