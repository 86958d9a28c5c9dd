// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a safe copy in the place of a workbook that nobody has open. Whatever happens on the way, the old file or the new
// one lies there whole, and no good copy is lost.
#pragma once

#include "core/book/safe_copy.h"
#include "core/book/seal.h"

namespace soakbook::book {

struct RestoreRequest {
    QString file;   ///< the workbook's file; it may be damaged, or not be there any more
    QString copy;   ///< the safe copy
    QString copies; ///< the folder of safe copies, where the present file is kept
};

enum class NotRestored {
    itself,          ///< the copy and the workbook are one file
    not_a_workbook,
    newer,           ///< the copy was made by a newer Soakbook
    other_workbook,  ///< a copy of another one
    copy_unsound,
    copy_unreadable, ///< no right to read it, its disk failed, or it is not there
    busy,            ///< another program holds the workbook or the copy
    present_not_kept, ///< the present file could not be copied first
    disk_full,       ///< no room beside the workbook
    folder,          ///< nothing can be written beside the workbook
};

/// A copy that was found good and lies beside the workbook, ready for its place.
struct Restored {
    qint64 copied_seq = 0;  ///< the newest entry of the copy
    qint64 last_seq = 0;    ///< the newest entry now: that of the restoring itself
    Seal head;              ///< the newest seal now
    QByteArray uid;
    int codes = 0;          ///< given out after the copy was made, and carried over
    QString kept;           ///< where the present file is kept; empty when there was none
    bool kept_is_sound = false; ///< false: it was damaged, and was kept as it was
};

/// Does it. The present file is kept first, in `copies`: as a safe copy, or, if it is damaged, as it is. The copy is checked
/// whole beside the workbook; codes given out since are written into it, since labels bear them, as one entry "restored" with
/// the reason in `doing`; then it takes the file's place in one step.
tl::expected<Restored, NotRestored> restore(const RestoreRequest& request, const Doing& doing);

} // namespace soakbook::book
