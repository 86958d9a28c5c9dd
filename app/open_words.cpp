// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_words.h"

#include <QCoreApplication>
#include <QDir>

namespace soakbook::app {

namespace {
class OpenTexts {
    Q_DECLARE_TR_FUNCTIONS(OpenWorkbook)
};
} // namespace

QString words_for(book::NotOpened why, const QString& path) {
    const QString file = QDir::toNativeSeparators(path);
    switch (why) {
    case book::NotOpened::not_there:
        //: %1 is a file's path.
        return OpenTexts::tr("There is no file %1. Look whether it was moved or renamed, or whether the stick or "
                             "network folder is there.")
            .arg(file);
    case book::NotOpened::not_a_file:
        //: %1 is a path.
        return OpenTexts::tr("%1 is not a file. Name the workbook inside it.").arg(file);
    case book::NotOpened::empty_file:
        //: %1 is a file's path.
        return OpenTexts::tr(
                   "%1 is empty: its content was lost, perhaps when it was copied. Open the newest safe copy instead.")
            .arg(file);
    case book::NotOpened::not_a_workbook:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 is not a Soakbook workbook. Nothing in it was changed.").arg(file);
    case book::NotOpened::other_program:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 belongs to another program. Nothing in it was changed.").arg(file);
    case book::NotOpened::newer:
        //: %1 is a file's path.
        return OpenTexts::tr(
                   "%1 was written by a newer Soakbook. Install that version to open it; nothing in it was changed.")
            .arg(file);
    case book::NotOpened::unreadable:
        //: %1 is a file's path.
        return OpenTexts::
            tr("%1 cannot be read. Ask whoever looks after this computer for the right to open it, or check the disk.")
                .arg(file);
    case book::NotOpened::read_only:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 cannot be written there. Choose a folder that you may write to and that has room.")
            .arg(file);
    case book::NotOpened::changed_structure:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 was rebuilt by another program and is no longer sound. Open the newest safe copy "
                             "instead; nothing was changed.")
            .arg(file);
    case book::NotOpened::damaged:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 is damaged. Open the newest safe copy instead; nothing was changed.").arg(file);
    case book::NotOpened::exists_already:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 is there already, and Soakbook writes over no file. Choose another name.").arg(file);
    case book::NotOpened::busy:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 is held by another program just now. Close it there and try again.").arg(file);
    case book::NotOpened::not_copied:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 must be put in order before it is opened: an older Soakbook wrote it, or another "
                             "program changed how it is stored. The safe copy that comes before could not be made: "
                             "nothing was changed. Make room on the disk and try again.")
            .arg(file);
    case book::NotOpened::not_brought_up:
        //: %1 is a file's path.
        return OpenTexts::tr("%1 must be put in order before it is opened: an older Soakbook wrote it, or another "
                             "program changed how it is stored. That could not be done where it is; all that is in it "
                             "is as it was. Copy it, and any file beside it whose name begins the same, to a folder "
                             "that you may write to and that has room, and open it there.")
            .arg(file);
    case book::NotOpened::broken_off:
        //: %1 is a file's path; the file beside it has the same name with "-journal" behind it.
        return OpenTexts::tr("Work on %1 was broken off, as when the power fails, and half of it stands in the file. "
                             "Soakbook puts that right by itself, but here nothing may be written. Copy the workbook and "
                             "the file beside it whose name ends in -journal to a folder that you may write to, and open "
                             "it there.")
            .arg(file);
    }
    return {};
}

} // namespace soakbook::app
