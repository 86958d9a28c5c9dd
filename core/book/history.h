// SPDX-License-Identifier: GPL-3.0-or-later
// The change history as it is read: who, when, what it said before, why.
#pragma once

#include "core/book/workbook.h"

#include <functional>
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
/// A row of the store.
struct RowRef {
    QString table;
    qint64 id = 0;

    bool operator==(const RowRef&) const = default;
};
/// Of which record a change is, and when it was made.
struct ChangeHead {
    QString table;
    qint64 row = 0;
    maths::Instant at;
};
/// Changes of rows of these tables that were there, made with a reason or by undo, oldest first; all, or those that are
/// wanted.
std::vector<Change> changes_of_corrected(const Workbook& workbook, const QStringList& tables, const std::function<bool(const ChangeHead&)>& wanted);
/// The history of several records together, oldest first.
std::vector<Change> history_of(const Workbook& workbook, const std::vector<RowRef>& rows);
/// A record and what was entered for it: of a batch its inputs, readings, stirs, soaks, weighings, bags, pours, pails and
/// losses; of a hive its strips, counts and moves; of a bag or delivery its changes, and so on; void ones too.
std::vector<RowRef> rows_around(const Workbook& workbook, const RowRef& row);
/// All changes of the piece of work that made change `seq`, oldest first; that change alone where another program made it.
std::vector<Change> changes_of_entry(const Workbook& workbook, qint64 seq);
/// The newest changes by other programs after change `after`, newest first.
std::vector<Change> changes_outside(const Workbook& workbook, qint64 after, int most);
/// How many those are.
int count_outside(const Workbook& workbook, qint64 after);
/// The newest changes, newest first.
std::vector<Change> newest_changes(const Workbook& workbook, int most);

} // namespace soakbook::book
