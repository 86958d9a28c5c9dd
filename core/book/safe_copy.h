// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy: made by SQLite itself, checked in full, and given its name only when it is good.
#pragma once

#include "core/book/workbook.h"

#include <optional>
#include <vector>

namespace soakbook::book {

enum class NotCopied {
    folder,         ///< the place for it cannot be written
    disk_full,
    busy,           ///< another program is writing the workbook just now
    check_failed,   ///< what was copied is not sound
    exists_already, ///< a file of that name is there
    unreadable,     ///< the workbook cannot be read, or other work on it was broken off and waits to be put right
};

struct SafeCopy {
    QString path;
    qint64 last_seq = 0;
    bool of_this_line = true; ///< false: it holds entries that the workbook left behind, or that another copy of it went on with
};

/// Copies the workbook into `folder`, which it makes, at once and before anything else (CopyUnderWay does it in steps). A
/// sound copy of the same state that is there already is kept. Copies that need not stay go once the new one has its name.
tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder);
/// Copies the workbook at `from`, which is opened for reading alone, to the new file `to`: checked in full before it gets
/// its name. One of an older version stays of that version.
tl::expected<SafeCopy, NotCopied> make_safe_copy_at(const QString& from, const QString& to);
/// Copies the pages of the file at `from`, as they are, to the new file `to`, so that they can be checked there.
tl::expected<void, NotCopied> copy_for_checking(const QString& from, const QString& to);
/// Every safe copy of this workbook in `folder`, the one with the highest number first; by names alone.
std::vector<SafeCopy> safe_copies_of(const Workbook& workbook, const QString& folder);
/// The newest one of a state that the workbook went through.
std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder);

} // namespace soakbook::book
