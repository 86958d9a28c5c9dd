// SPDX-License-Identifier: GPL-3.0-or-later
// The change history as it is read: who, when, what it said before, why.
#pragma once

#include "core/book/workbook.h"

#include <optional>
#include <vector>

namespace soakbook::book {

enum class ChangeWhat { added, changed, removed };

/// One column of a row before and after a change; empty optional: NULL, or the row was not there.
struct ColumnChange {
    QString column;
    std::optional<QString> before;
    std::optional<QString> after;
};

struct Change {
    qint64 seq = 0;
    std::optional<qint64> piece; ///< changes of one piece of work share it; empty: from another program
    Piece work;
    QString who;
    QString why;
    maths::Instant at;
    QString table;
    qint64 row = 0;
    ChangeWhat what{};
    std::vector<ColumnChange> columns; ///< only those that differ; all of them for added and removed
};

/// The history of one record, oldest first.
std::vector<Change> history_of(const Workbook& workbook, const QString& table, qint64 row);
/// All changes with a reason (corrections and voids) among seq from..to, oldest first.
std::vector<Change> changes_with_reason(const Workbook& workbook, qint64 from_seq, qint64 to_seq);
/// The newest changes, newest first.
std::vector<Change> newest_changes(const Workbook& workbook, int most);

} // namespace soakbook::book
