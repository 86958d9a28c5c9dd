// SPDX-License-Identifier: GPL-3.0-or-later
// What the other of two copies wrote since they were the same, and how its records are found again in this one: by their
// uid, since the two count their rows apart.
#pragma once

#include "core/book/compare.h"
#include "core/book/history.h"
#include "core/book/row_image.h"

#include <map>

namespace soakbook::book {

/// A row of one copy.
struct RowKey {
    QString table;
    qint64 id = 0;
    auto operator<=>(const RowKey& other) const { return std::pair(table, id) <=> std::pair(other.table, other.id); }
    bool operator==(const RowKey&) const = default;
};

struct TheirChange {
    qint64 seq = 0;
    qint64 piece = 0; ///< first_seq of the piece of work
    RowKey row;
    ChangeWhat what{};
    Cells before;
    Cells after;
};

class TheirChanges {
public:
    /// Reads them; both stores are to live as long as this. Throws StoreError.
    TheirChanges(const QSqlDatabase& here, const QSqlDatabase& there, const Comparison& comparison);

    /// Of records alone, oldest first.
    const std::vector<TheirChange>& of_records() const { return m_records; }
    /// Of the codes given out and the papers shown.
    const std::vector<TheirChange>& of_growing() const { return m_growing; }
    /// The places in of_records() of one record's changes.
    const std::vector<std::size_t>& of(const RowKey& there) const;

    const QStringList& columns(const QString& table) const { return m_columns.at(table); }
    /// The table that a column points at; empty for a plain one.
    QString link(const QString& table, const QString& column) const;

    /// Which pieces count as there from now on. Forgets what was found before.
    void choose(const std::set<qint64>& pieces);
    bool is_chosen(const TheirChange& change) const { return m_chosen.count(change.piece) > 0; }

    QByteArray uid_there(const RowKey& there) const;
    /// The row here that is the same record, or the one that bears its name; 0 if there is none.
    qint64 id_here(const RowKey& there) const;
    /// Whether the row found here is another record of the same name.
    bool is_namesake(const RowKey& there, qint64 here) const;
    void set_id_here(const RowKey& there, qint64 id);
    /// The row here as the history would have it; empty when it is not there.
    Cells row_here(const RowKey& here) const;
    /// Whether both rows say the same. A code that was given anew here, and its label, may differ.
    bool same(const QString& table, const Cells& here, const Cells& there) const;
    bool same_cell(const QString& table, const QString& column, const Cells& here, const Cells& there) const;
    /// The last chosen image of a record there; empty when it was taken away.
    Cells last_there(const RowKey& there) const;

private:
    void learn_tables();
    void read(const Comparison& comparison);
    qint64 namesake(const RowKey& there) const;

    const QSqlDatabase& m_here;
    const QSqlDatabase& m_there;
    std::map<QString, QStringList> m_columns;
    std::map<QString, std::map<QString, QString>> m_links;
    std::vector<TheirChange> m_records;
    std::vector<TheirChange> m_growing;
    std::map<RowKey, std::vector<std::size_t>> m_of_row;
    std::set<qint64> m_chosen;
    mutable std::map<RowKey, qint64> m_ids_here;
};

/// What people call a record: its code or its name, or that of what it belongs to; empty when it is not there.
QString record_name(const QSqlDatabase& db, const TheirChanges& tables, const RowKey& row);

} // namespace soakbook::book
