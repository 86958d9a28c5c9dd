// SPDX-License-Identifier: GPL-3.0-or-later
// What can still be read of a damaged workbook. The file is only read; each record is held against the change history,
// which tells it a second time, and one that is lost is told by the history alone.
#pragma once

#include "core/book/page_file.h"
#include "core/book/workbook.h"

#include <functional>

namespace soakbook::book {

/// How sure a row is.
enum class Sure {
    agrees,      ///< the record and the history say the same
    from_history,///< the record is lost or damaged; this is what the sealed history says of it
    unproven,    ///< read, but there is nothing to hold it against, or the history of it is damaged too
};

struct SalvagedRow {
    Sure sure{};
    std::vector<std::optional<QString>> cells; ///< by the table's columns; nothing for NULL
};

struct SalvagedTable {
    QString name;
    QStringList columns; ///< without the uid
    qint64 rows = 0;
    qint64 agreeing = 0;
    qint64 from_history = 0;
    qint64 unproven = 0;
    qint64 lost = 0; ///< records of which nothing is left, as far as the numbers given out tell
};

class Salvage {
public:
    /// Reads the file, which nobody may have open. `go_on` is told the hundredths done and stops it by false. Refuses
    /// not_there, not_a_file, empty_file, unreadable, and not_a_workbook where nothing of a workbook is in it.
    static tl::expected<std::unique_ptr<Salvage>, NotOpened> read(const QString& path, const std::function<bool(int)>& go_on = {});
    ~Salvage();

    /// Of records, in the order of the store; those of which nothing is left too.
    const std::vector<SalvagedTable>& tables() const;
    /// One row of a table, in the order of its numbers.
    SalvagedRow row(std::size_t table, qint64 place) const;
    /// Entries of the history that are left, and how many there were as far as can be told.
    qint64 entries_read() const;
    qint64 entries_there_were() const;
    /// Pages that hold nothing which could be understood, of all.
    qint64 pages_lost() const;
    qint64 pages() const;

private:
    struct Inside;
    explicit Salvage(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace soakbook::book
