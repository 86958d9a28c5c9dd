// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/copy_words.h"

#include <QCoreApplication>
#include <QDir>

namespace soakbook::app {

namespace {
class CopyTexts {
    Q_DECLARE_TR_FUNCTIONS(SafeCopies)
};
} // namespace

QString copy_words(book::NotCopied why, const QString& place) {
    const QString to = QDir::toNativeSeparators(place);
    switch (why) {
    case book::NotCopied::disk_full:
        //: %1 is a folder or file.
        return CopyTexts::tr("No safe copy was made: there is no room in %1, or its disk failed. Your workbook is as it was. Make room there; Soakbook tries again by itself.").arg(to);
    case book::NotCopied::busy:
        //: Another program has the workbook open.
        return CopyTexts::tr("No safe copy was made: another program was writing the workbook. Soakbook tries again by itself.");
    case book::NotCopied::check_failed:
        //: The copy was read back.
        return CopyTexts::tr("No safe copy was made: when it was read back, the copy was not sound. The safe copies made before stay.");
    case book::NotCopied::exists_already:
        //: %1 is a file.
        return CopyTexts::tr("%1 is there already. Choose another name: nothing is written over it.").arg(to);
    case book::NotCopied::unreadable:
        //: Why there is no safe copy.
        return CopyTexts::tr("No safe copy was made: the workbook cannot be read just now. Soakbook tries again by itself.");
    case book::NotCopied::folder:
        break;
    }
    //: %1 is a folder or file.
    return CopyTexts::tr("No safe copy was made: %1 cannot be written. See that it is there and that you may write to it; Soakbook tries again by itself.").arg(to);
}

QString second_place_words(book::NotCopied why, const QString& folder) {
    const QString to = QDir::toNativeSeparators(folder);
    switch (why) {
    case book::NotCopied::disk_full:
        //: %1 is a folder on a stick or another computer.
        return CopyTexts::tr("The second place %1 is full, or its disk failed. The safe copies on this computer are there.").arg(to);
    case book::NotCopied::check_failed:
        //: %1 is a folder on a stick or another computer.
        return CopyTexts::tr("What was written to the second place %1 did not read back the same: do not trust that disk, use another one.").arg(to);
    case book::NotCopied::busy:
    case book::NotCopied::exists_already:
    case book::NotCopied::unreadable:
        //: %1 is a folder on a stick or another computer.
        return CopyTexts::tr("Nothing was carried to the second place %1 this time. Soakbook tries again by itself.").arg(to);
    case book::NotCopied::folder:
        break;
    }
    //: %1 is a folder on a stick or another computer.
    return CopyTexts::tr("The second place %1 did not answer, or cannot be written. Put the stick in or connect it; Soakbook tries again by itself.").arg(to);
}

} // namespace soakbook::app
