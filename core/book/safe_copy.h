// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy: made by SQLite itself, checked in full, and given its name only when it is good.
#pragma once

#include "core/book/workbook.h"

#include <optional>

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
};

/// Copies the workbook into `folder` as "<name> <uid> <number of the newest change>.soakbook"; makes the folder. A copy of
/// the same state that is there already is kept. Keeps the newest `keep` copies of this workbook in the folder.
tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder, int keep = 20);
/// Copies the workbook at `from`, which is opened for reading alone, to the new file `to`: checked in full before it gets
/// its name. One of an older version stays of that version.
tl::expected<SafeCopy, NotCopied> make_safe_copy_at(const QString& from, const QString& to);
/// Copies the pages of the file at `from`, as they are, to the new file `to`, so that they can be checked there.
tl::expected<void, NotCopied> copy_for_checking(const QString& from, const QString& to);
/// The newest safe copy of this workbook in `folder`.
std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder);

} // namespace soakbook::book
