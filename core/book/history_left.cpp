// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/history_left.h"

#include <QCryptographicHash>

#include <algorithm>

namespace soakbook::book {

namespace {

// Columns of `change`, in the order of the store.
enum ChangeColumn : std::size_t { change_piece = 1, change_table = 11, change_row = 12, change_what = 13, change_after = 15 };

} // namespace

HistoryLeft::HistoryLeft(PageFile& file, const PageScan& scan) : m_file(file) {
    read_changes(scan);
    prove(scan);
}

bool HistoryLeft::is_proven(qint64 seq) const {
    return std::any_of(m_proven.begin(), m_proven.end(), [seq](const auto& range) { return seq > range.first && seq <= range.second; });
}

const std::map<qint64, LastChange>& HistoryLeft::of(const QString& table) const {
    static const std::map<qint64, LastChange> none;
    const auto found = m_last.find(table);
    return found == m_last.end() ? none : found->second;
}

QByteArray HistoryLeft::after_in(const StoredRow& change) { return change.cells.size() > change_after ? change.cells[change_after].bytes : QByteArray(); }

QByteArray HistoryLeft::after(const LastChange& change) const {
    const auto row = m_file.row(change.at);
    return row ? after_in(*row) : QByteArray();
}

void HistoryLeft::read_changes(const PageScan& scan) {
    const auto changes = scan.rows.find(QStringLiteral("change"));
    if (changes != scan.rows.end()) {
        for (const FoundRow& found : changes->second) {
            if (!m_seqs.empty() && m_seqs.back().first == found.id)
                continue;
            const auto row = m_file.row(found.at);
            if (!row || row->id < 1)
                continue;
            m_seqs.emplace_back(row->id, found.at);
            LastChange& last = m_last[QString::fromUtf8(row->cells[change_table].bytes)][row->cells[change_row].number];
            last = {row->id, found.at, row->cells[change_what].bytes == "removed"};
        }
    }
    if (!m_seqs.empty())
        m_highest = m_seqs.back().first;
    if (const auto counted = scan.highest.find(QStringLiteral("change")); counted != scan.highest.end())
        m_highest = std::max(m_highest, counted->second);
    if (const auto seals = scan.rows.find(QStringLiteral("seal")); seals != scan.rows.end() && !seals->second.empty())
        m_highest = std::max(m_highest, seals->second.back().id);
    m_whole_from = m_highest + 1;
    for (auto change = m_seqs.rbegin(); change != m_seqs.rend() && change->first == m_whole_from - 1; ++change)
        m_whole_from = change->first;
}

// As the seals are made: the hash before, the cells of the changes between, the closing line.
void HistoryLeft::prove(const PageScan& scan) {
    const auto seals = scan.rows.find(QStringLiteral("seal"));
    if (seals == scan.rows.end())
        return;
    qint64 from = 0;
    QByteArray before = hash_before_first(scan);
    auto change = m_seqs.begin();
    for (const FoundRow& found : seals->second) {
        const auto seal = m_file.row(found.at);
        if (!seal || seal->id <= from || seal->cells.size() < 3)
            continue;
        QCryptographicHash hash(QCryptographicHash::Sha256);
        hash.addData(before);
        qint64 outside = 0;
        for (; change != m_seqs.end() && change->first <= seal->id; ++change) {
            const auto row = m_file.row(change->second);
            if (!row || row->cells.size() <= change_after)
                continue;
            outside += row->cells[change_piece].kind == 'n' ? 1 : 0;
            hash.addData(canonical_of(*row));
        }
        hash.addData(QByteArray(QByteArray("seal ") + QByteArray::number(seal->id) + ' ' + QByteArray::number(outside)));
        before = seal->cells[2].bytes;
        if (hash.result() == before)
            m_proven.emplace_back(from, seal->id);
        from = seal->id;
    }
    join_proven();
}

void HistoryLeft::join_proven() {
    std::vector<std::pair<qint64, qint64>> joined;
    for (const auto& range : m_proven) {
        if (!joined.empty() && joined.back().second == range.first)
            joined.back().second = range.second;
        else
            joined.push_back(range);
    }
    m_proven = std::move(joined);
}

QByteArray HistoryLeft::hash_before_first(const PageScan& scan) const {
    QByteArray text("soakbook");
    if (const auto own = scan.rows.find(QStringLiteral("workbook")); own != scan.rows.end() && !own->second.empty())
        if (const auto row = m_file.row(own->second.front().at))
            text += canonical_of(*row);
    return QCryptographicHash::hash(text, QCryptographicHash::Sha256);
}

} // namespace soakbook::book
