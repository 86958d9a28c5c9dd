// SPDX-License-Identifier: GPL-3.0-or-later
// The change history of a damaged store as far as it is left: the last change of each record, and which entries a seal
// proves.
#pragma once

#include "core/book/page_scan.h"

namespace soakbook::book {

struct LastChange {
    qint64 seq = 0;
    StoredAt at;
    bool removed = false;
};

class HistoryLeft {
public:
    /// `file` is to live as long as this.
    HistoryLeft(PageFile& file, const PageScan& scan);

    qint64 entries() const { return static_cast<qint64>(m_seqs.size()); }
    /// The number of the newest entry there was, as far as anything tells it.
    qint64 highest() const { return m_highest; }
    /// Whether no entry is lost.
    bool is_whole() const { return m_whole_from <= 1; }
    /// Whether no later entry is lost.
    bool is_last(qint64 seq) const { return seq + 1 >= m_whole_from; }
    bool is_proven(qint64 seq) const;
    /// The last change of each record of a table, by the record's number.
    const std::map<qint64, LastChange>& of(const QString& table) const;
    /// The record's image that the change left.
    QByteArray after(const LastChange& change) const;
    static QByteArray after_in(const StoredRow& change);

private:
    void read_changes(const PageScan& scan);
    void prove(const PageScan& scan);
    void join_proven();
    QByteArray hash_before_first(const PageScan& scan) const;

    PageFile& m_file;
    std::vector<std::pair<qint64, StoredAt>> m_seqs;
    std::map<QString, std::map<qint64, LastChange>> m_last;
    std::vector<std::pair<qint64, qint64>> m_proven; ///< after the first, up to the second
    qint64 m_highest = 0;
    qint64 m_whole_from = 1;
};

} // namespace soakbook::book
