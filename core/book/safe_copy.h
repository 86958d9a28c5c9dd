// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy: made by SQLite itself, checked in full, and given its name only when it is good.
#pragma once

#include "core/book/workbook.h"

#include <optional>

namespace soakbook::book {

enum class NotCopied { folder, disk_full, busy, check_failed };

struct SafeCopy {
    QString path;
    qint64 last_seq = 0;
};

/// Copies the workbook into `folder` as "<name> <uid> <number of the newest change>.soakbook"; makes the folder. A copy of
/// the same state that is there already is kept. Keeps the newest `keep` copies of this workbook in the folder.
tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder, int keep = 20);
/// The newest safe copy of this workbook in `folder`.
std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder);

} // namespace soakbook::book
