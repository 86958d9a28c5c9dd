// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/safe_copies.h"

#include "core/book/safe_copy.h"

namespace soakbook::work {

SafeCopyState safe_copy_state(const book::Workbook& workbook, const QString& folder) {
    const auto newest = book::newest_safe_copy(workbook, folder);
    const qint64 now = workbook.last_seq();
    return newest ? SafeCopyState{newest->path, now - newest->last_seq} : SafeCopyState{{}, now};
}

Outcome<SafeCopyState> make_safe_copy(const book::Workbook& workbook, const QString& folder) {
    const auto made = book::make_safe_copy(workbook, folder);
    if (made)
        return SafeCopyState{made->path, workbook.last_seq() - made->last_seq};
    switch (made.error()) {
    case book::NotCopied::disk_full:
        return refuse(Why::disk_full);
    case book::NotCopied::busy:
        return refuse(Why::busy);
    case book::NotCopied::folder:
    case book::NotCopied::check_failed:
    case book::NotCopied::exists_already:
    case book::NotCopied::unreadable:
        break;
    }
    return refuse(Why::read_only, {}, {folder});
}

} // namespace soakbook::work
