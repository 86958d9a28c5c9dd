// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/opening_words.h"

#include "ui/papers/record_words.h"

#include <QCoreApplication>
#include <QDir>

namespace soakbook::app {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Opening)
};

maths::Instant instant_of(const QDateTime& at) {
    const QDateTime here = at.toLocalTime();
    return {here.toMSecsSinceEpoch(), here.offsetFromUtc() / 60};
}

QString why_words(LookingWhy why) {
    switch (why) {
    case LookingWhy::medium_kept:
        //: After "Open only to be looked at:"
        return Words::tr("nothing on this medium can be written.");
    case LookingWhy::folder_kept:
        //: After "Open only to be looked at:"
        return Words::tr("nothing may be written in its folder.");
    case LookingWhy::file_kept:
        //: After "Open only to be looked at:"
        return Words::tr("the file may only be read.");
    case LookingWhy::held:
        //: After "Open only to be looked at:"
        return Words::tr("it is open elsewhere.");
    case LookingWhy::damaged:
        //: After "Open only to be looked at:"
        return Words::tr("the file is damaged; what can still be read of it is shown.");
    case LookingWhy::newer:
        //: After "Open only to be looked at:"
        return Words::tr("a newer Soakbook wrote it.");
    case LookingWhy::safe_copy:
        //: After "Open only to be looked at:"
        return Words::tr("this is a safe copy, which stays as it is.");
    case LookingWhy::wished:
        break;
    }
    //: After "Open only to be looked at:"
    return Words::tr("you wished it so.");
}

QString way_out(LookingWhy why) {
    switch (why) {
    case LookingWhy::medium_kept:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, copy it to a folder of this computer and open it there.");
    case LookingWhy::folder_kept:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, allow writing in that folder, or keep the workbook in another one.");
    case LookingWhy::file_kept:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, allow writing in the file.");
    case LookingWhy::held:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, close it there and open it here again.");
    case LookingWhy::damaged:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To go on, put a safe copy in its place.");
    case LookingWhy::newer:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, install that version.");
    case LookingWhy::safe_copy:
        //: The way out of a workbook that can only be looked at
        return Words::tr("To make entries, open the workbook itself.");
    case LookingWhy::wished:
        break;
    }
    //: The way out of a workbook that can only be looked at
    return Words::tr("To make entries, open it again.");
}

} // namespace

QString holder_words(const Holder& holder, const Moments& moments) {
    const QString since = moments(instant_of(holder.since));
    const Holder here = Holder::here(holder.since);
    if (holder.host != here.host)
        //: Who has a workbook open: %1 a person's name on that computer, %2 the computer's name, %3 a day and time
        return Words::tr("%1 has it open on the computer %2, since %3.").arg(holder.user, holder.host, since);
    if (holder.user != here.user)
        //: Who has a workbook open: %1 a person's name on this computer, %2 a day and time
        return Words::tr("%1 has it open on this computer, since %2.").arg(holder.user, since);
    //: %1 a day and time
    return Words::tr("It is open on this computer in another Soakbook window, since %1.").arg(since);
}

QString held_words(const NotLocked& lock, const QString& file, const Moments& moments) {
    if (!lock.holder)
        //: %1 a file
        return Words::tr("The file %1 says that this workbook is open, but not where. If two make entries in one workbook, entries are lost: "
                         "see that it is closed everywhere else, or look at it here without making entries.")
            .arg(QDir::toNativeSeparators(Lock::path_of(file)));
    //: Why a workbook is not opened: %1 who has it open, a sentence
    return Words::tr("%1 If two make entries in one workbook, entries are lost: go on there, or close it there and try again. It can be "
                     "looked at here without making entries.")
        .arg(holder_words(*lock.holder, moments));
}

QString looking_words(LookingWhy why, const std::optional<Holder>& holder, const Moments& moments) {
    const QString reason = why == LookingWhy::held && holder ? holder_words(*holder, moments) : why_words(why);
    //: Above the pages of a workbook that can only be looked at: %1 why, %2 the way out; both are sentences
    return Words::tr("Open only to be looked at: %1 %2").arg(reason, way_out(why));
}

QString looking_hint(LookingWhy why) {
    //: Beside a button that cannot be used: %1 why, a sentence
    return Words::tr("No entry can be made, for the workbook is open only to be looked at: %1").arg(why_words(why));
}

QString refused_title(book::NotOpened why) {
    switch (why) {
    case book::NotOpened::damaged:
    case book::NotOpened::changed_structure:
        //: Title of a window
        return Words::tr("This workbook is damaged");
    case book::NotOpened::empty_file:
        //: Title of a window
        return Words::tr("This file is empty");
    case book::NotOpened::not_there:
        //: Title of a window
        return Words::tr("The workbook is not there");
    case book::NotOpened::not_a_file:
    case book::NotOpened::not_a_workbook:
    case book::NotOpened::other_program:
        //: Title of a window
        return Words::tr("This is not a workbook");
    case book::NotOpened::newer:
        //: Title of a window
        return Words::tr("A newer Soakbook wrote this workbook");
    case book::NotOpened::busy:
        //: Title of a window
        return Words::tr("Another program has this workbook");
    case book::NotOpened::broken_off:
        //: Title of a window
        return Words::tr("Work on this workbook was broken off");
    case book::NotOpened::not_copied:
    case book::NotOpened::not_brought_up:
        //: Title of a window
        return Words::tr("This workbook must be put in order first");
    case book::NotOpened::unreadable:
    case book::NotOpened::read_only:
    case book::NotOpened::exists_already:
        break;
    }
    //: Title of a window
    return Words::tr("The workbook could not be opened");
}

QString missing_words(const MissingEntries& missing, const Moments& moments) {
    const QString when = moments(missing.seen);
    if (!missing.place.isEmpty())
        //: %1 a file, %2 the number of an entry, %3 a day and time
        return Words::tr("This is another copy of the workbook %1. That one had come to entry %2 on %3, and what stood in it then is "
                         "not in this one.")
            .arg(QDir::toNativeSeparators(missing.place))
            .arg(missing.newest_then)
            .arg(when);
    if (missing.entries == 0)
        //: %1 the number of an entry, %2 a day and time
        return Words::tr("This is not the workbook that stood here: that one had come to entry %1 on %2, and this one holds other "
                         "entries in its place. It seems that entries were made in two copies.")
            .arg(missing.newest_then)
            .arg(when);
    //: %n entries, %1 a day and time
    return Words::tr("%n entry(ies) that stood here on %1 are missing: this seems to be an older copy.", nullptr, static_cast<int>(missing.entries)).arg(when);
}

QString not_restored_words(book::NotRestored why, const QString& copy, const QString& file) {
    const QString from = QDir::toNativeSeparators(copy);
    const QString to = QDir::toNativeSeparators(file);
    switch (why) {
    case book::NotRestored::itself:
        //: %1 a file
        return Words::tr("%1 is the workbook itself. Choose a safe copy of it.").arg(from);
    case book::NotRestored::not_a_workbook:
        //: %1 a file
        return Words::tr("%1 is not a workbook. Nothing was changed.").arg(from);
    case book::NotRestored::newer:
        //: %1 a file
        return Words::tr("A newer Soakbook made %1. Install that version to put it back; nothing was changed.").arg(from);
    case book::NotRestored::other_workbook:
        //: %1 a file
        return Words::tr("%1 is a copy of another workbook. Nothing was changed.").arg(from);
    case book::NotRestored::copy_unsound:
        //: %1 a file
        return Words::tr("%1 is damaged itself. Nothing was changed: take another copy.").arg(from);
    case book::NotRestored::copy_unreadable:
        //: %1 a file
        return Words::tr("%1 cannot be read. Nothing was changed: see that it is there, or take another copy.").arg(from);
    case book::NotRestored::busy:
        //: %1 a file
        return Words::tr("Another program holds %1 or the copy. Nothing was changed: close it there and try again.").arg(to);
    case book::NotRestored::present_not_kept:
        //: %1 a file
        return Words::tr("What is in %1 now could not be kept as a copy first, so nothing was changed. Make room for safe copies and try again.").arg(to);
    case book::NotRestored::disk_full:
        //: %1 a file
        return Words::tr("There is no room beside %1. Nothing was changed: make room and try again.").arg(to);
    case book::NotRestored::folder:
        break;
    }
    //: %1 a file
    return Words::tr("Nothing may be written beside %1. Nothing was changed: allow writing in that folder and try again.").arg(to);
}

QString damage_words(const book::Verdict& verdict) {
    const book::CheckResult* bad = verdict.first_bad();
    for (const book::CheckResult& result : verdict.checks)
        if (result.bad > 0 && result.first && result.first->seq > 0) {
            bad = &result;
            break;
        }
    if (!bad || !bad->first)
        //: What is wrong with a workbook
        return Words::tr("Parts of the file do not read as they were written.");
    if (bad->first->seq > 0)
        //: What is wrong with a workbook; %1 the number of an entry
        return Words::tr("Entry %1 is the first that is not as it was written.").arg(bad->first->seq);
    //: What is wrong with a workbook; %1 a kind of record and its number, as in: bag 17
    return Words::tr("A record is not as the history has it: %1.").arg(ui::record_kind_words(bad->first->table) + QLatin1Char(' ') + QString::number(bad->first->row));
}

} // namespace soakbook::app
