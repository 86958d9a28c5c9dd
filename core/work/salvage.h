// SPDX-License-Identifier: GPL-3.0-or-later
// What can still be read of a damaged workbook, as a list and as tables for a spreadsheet. The file itself is only read.
#pragma once

#include "core/exchange/csv.h"
#include "core/work/outcome.h"

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace soakbook::work {

enum class NotSalvaged {
    not_there,
    empty,          ///< cut to nothing
    not_a_workbook, ///< nothing in it looks like a workbook's record
    unreadable,     ///< no right to read it, or the disk failed
    stopped,        ///< by whoever waited for it
};

/// How sure a row is.
enum class HowSure {
    agrees,       ///< the record and the history say the same
    from_history, ///< the record is lost or damaged; the sealed history tells it
    unproven,     ///< read, but nothing is left to hold it against
};

struct LeftTable {
    QString name;        ///< as the store calls it
    QStringList columns; ///< as the store calls them; worded by ui/papers/record_words
    qint64 rows = 0;
    qint64 agreeing = 0;
    qint64 from_history = 0;
    qint64 unproven = 0;
    qint64 lost = 0;     ///< records of which nothing is left, as far as can be told
};

struct LeftRow {
    HowSure sure{};
    std::vector<std::optional<QString>> cells;
};

class WhatIsLeft {
public:
    /// Reads the file, which nobody may have open. `go_on` is told the hundredths done and stops it by false.
    static tl::expected<std::unique_ptr<WhatIsLeft>, NotSalvaged> read(const QString& path, const std::function<bool(int)>& go_on = {});
    ~WhatIsLeft();
    WhatIsLeft(const WhatIsLeft&) = delete;
    WhatIsLeft& operator=(const WhatIsLeft&) = delete;

    const QString& path() const;
    const std::vector<LeftTable>& tables() const;
    LeftRow row(std::size_t table, qint64 place) const;
    /// A key stands as the code or the name of what it points at, where that is left.
    QString spoken(std::size_t table, qsizetype column, const QString& value) const;
    /// Entries of the history that are left, and how many there were as far as can be told.
    qint64 entries_read() const;
    qint64 entries_there_were() const;

private:
    struct Inside;
    explicit WhatIsLeft(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

/// How the tables are worded for people.
struct TableWording {
    std::function<QString(const QString& table)> table;
    std::function<QString(const QString& column)> column;
    std::function<exchange::CsvCell(const QString& column, const QString& value)> value;
    std::function<QString(HowSure sure)> sure;
    QString sure_column;
    exchange::CsvStyle style;
};

/// Writes one file for each table that holds a row into the folder, named after the workbook and the table; gives how
/// many. No file is written over. Refuses name_taken (facts: file), read_only (facts: folder), disk_full; then none of
/// them is there.
Outcome<int> save_as_tables(const WhatIsLeft& left, const QString& folder, const TableWording& wording);

/// Whether both paths name one file. Neither is opened.
bool is_one_file(const QString& one, const QString& other);

} // namespace soakbook::work
