// SPDX-License-Identifier: GPL-3.0-or-later
// Safe copies of the workbook, in the folders that the edge names.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

struct SafeCopyState {
    QString path;             ///< of the newest good copy; empty: none yet
    qint64 entries_behind = 0;///< entries made since it
};
SafeCopyState safe_copy_state(const book::Workbook& workbook, const QString& folder);
/// Makes one now: written aside, checked in full, then named. Refuses as disk_full, busy, or read_only (the folder).
Outcome<SafeCopyState> make_safe_copy(const book::Workbook& workbook, const QString& folder);

/// One safe copy as a list shows it. Each was checked in full before it got its name.
struct CopyLine {
    QString path;
    qint64 newest_entry = 0;
    QString seal;             ///< the beginning of its newest seal, as hex digits
    qint64 bytes = 0;
    maths::Instant made;      ///< by the file; only for reading, never for the order
    bool elsewhere = false;   ///< in the second place
    bool of_this_line = true; ///< false: it holds entries that the workbook left behind
    qint64 entries_since = 0; ///< made in the workbook since it; 0 unless of_this_line
};
/// The copies of the workbook with that mark in a folder, the newest entry first; by their names alone. Any thread: a folder
/// on a slow disk is read there. `of_this_line` and `entries_since` are not said yet.
std::vector<CopyLine> copies_in(const QString& folder, const QString& mark, const QString& live);
/// Says of each how it stands to the workbook.
void place_in_line(const book::Workbook& workbook, std::vector<CopyLine>& lines);
/// Both at once.
std::vector<CopyLine> safe_copies(const book::Workbook& workbook, const QString& folder);

/// The copy to go back to where the workbook itself cannot be asked: the newest of a state that was not left behind. Nothing
/// when there is none.
std::optional<CopyLine> newest_copy(const QString& folder, const QString& mark, const QString& live);

/// What tells this workbook's copies from those of others, by name.
QString mark_of_copies(const book::Workbook& workbook);
/// When the workbook was made.
maths::Instant workbook_made(const book::Workbook& workbook);

} // namespace soakbook::work
