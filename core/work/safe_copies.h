// SPDX-License-Identifier: GPL-3.0-or-later
// Safe copies of the workbook, in the folder the edge names.
#pragma once

#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>

namespace soakbook::work {

struct SafeCopyState {
    QString path;             ///< of the newest good copy; empty: none yet
    qint64 entries_behind = 0;///< entries made since it
};
SafeCopyState safe_copy_state(const book::Workbook& workbook, const QString& folder);
/// Makes one now: written aside, checked in full, then named. Refuses as disk_full, busy, or read_only (the folder).
Outcome<SafeCopyState> make_safe_copy(const book::Workbook& workbook, const QString& folder);

} // namespace soakbook::work
