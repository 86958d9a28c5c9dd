// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/apart_words.h"

#include "ui/parts/piece_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QStringList>

#include <algorithm>

namespace soakbook::ui {

namespace {

class ApartTexts {
    Q_DECLARE_TR_FUNCTIONS(ApartWords)
};

int size_of(const std::vector<work::LoneEntry>& entries) { return static_cast<int>(entries.size()); }

} // namespace

QString not_compared_words(work::NotCompared why, const QString& path) {
    const QString file = QDir::toNativeSeparators(path);
    switch (why) {
    case work::NotCompared::not_there:
        //: %1 is a file's path.
        return ApartTexts::tr("There is no file %1. Look whether it was moved, or whether the stick is plugged in.").arg(file);
    case work::NotCompared::not_a_workbook:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 is not a Soakbook workbook, so there is nothing to compare.").arg(file);
    case work::NotCompared::newer:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 was written by a newer Soakbook. Install that version here, then compare.").arg(file);
    case work::NotCompared::unreadable:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 cannot be read. Copy it to this computer and try again.").arg(file);
    case work::NotCompared::damaged:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 is damaged. Nothing is taken over from it. What is left in it can be read in Set-up, under Workbooks.").arg(file);
    case work::NotCompared::rebuilt:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 was rebuilt by another program. Nothing of it was run, and nothing is taken over from it.").arg(file);
    case work::NotCompared::busy:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 is held by another program just now. Close it there and try again.").arg(file);
    case work::NotCompared::no_room:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 must be copied before it can be read, and there is no room for that on this computer. Make room and try again.").arg(file);
    case work::NotCompared::itself:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 is the workbook that is open. Choose the other copy.").arg(file);
    case work::NotCompared::stranger:
        //: %1 is a file's path.
        return ApartTexts::tr("%1 is a workbook of its own, not a copy of this one.").arg(file);
    }
    return {};
}

QString how_apart_words(const work::ApartView& view) {
    switch (view.how) {
    case work::HowApart::same:
        //: Two copies of the workbook were compared.
        return ApartTexts::tr("Both hold the same entries.");
    case work::HowApart::there_older:
        //: The other copy of the workbook is an older one.
        return ApartTexts::tr("The other is older: %n entries are missing there. Nothing stands only there.", nullptr, size_of(view.only_here));
    case work::HowApart::there_newer:
        //: The other copy of the workbook is a newer one.
        return ApartTexts::tr("The other is newer: %n entries are missing here.", nullptr, size_of(view.only_there));
    case work::HowApart::apart:
        break;
    }
    //: Two copies of the workbook were both written in; the second half of the sentence follows.
    return ApartTexts::tr("Both were written in since they were the same: %n entries stand only here,", nullptr, size_of(view.only_here)) + QLatin1Char(' ') +
           //: The second half of a sentence: so many entries stand only here, ...
           ApartTexts::tr("%n only there.", nullptr, size_of(view.only_there));
}

QString record_meets_words(work::RecordMeets meets, bool theirs) {
    switch (meets) {
    case work::RecordMeets::added:
        //: What becomes of a record of the other copy.
        return ApartTexts::tr("is added here");
    case work::RecordMeets::follows:
        //: What becomes of a record of the other copy.
        return ApartTexts::tr("will say what it says there");
    case work::RecordMeets::here_already:
        //: What becomes of a record of the other copy.
        return ApartTexts::tr("stands here already");
    case work::RecordMeets::taken_away:
        //: What becomes of a record of the other copy: it was taken back there.
        return ApartTexts::tr("was taken back there; stays here");
    case work::RecordMeets::differs:
        //: What becomes of a record that was changed in both copies.
        return theirs ? ApartTexts::tr("changed in both: as it is there") : ApartTexts::tr("changed in both: stays as it is");
    case work::RecordMeets::gone_here:
        //: What becomes of a record that was taken back here and changed in the other copy.
        return theirs ? ApartTexts::tr("taken back here: is added again") : ApartTexts::tr("taken back here: stays away");
    case work::RecordMeets::same_name:
        //: What becomes of a record that was entered in both copies under the same name.
        return theirs ? ApartTexts::tr("same name in both: as it is there")
                      : ApartTexts::tr("same name in both: stays as it is");
    }
    return {};
}

QString stands_on_words(const work::LoneEntry& entry, const work::LoneEntry& left_out) {
    //: %1 and %2 are entries in words.
    return ApartTexts::tr("\"%1\" rests on \"%2\", which is left out. Take over both, or leave out both.").arg(entry_words(entry), entry_words(left_out));
}

QString entry_words(const work::LoneEntry& entry) {
    //: In place of an entry's name.
    return entry.outside ? ApartTexts::tr("changed outside Soakbook") : piece_words(entry.piece);
}

QString taken_over_words(const work::TakenOver& taken) {
    QStringList sentences;
    if (taken.added + taken.changed > 0)
        //: Entries of another copy were written into this one; %n is how many.
        sentences << ApartTexts::tr("%n entries were taken over as one; undo takes them back together.", nullptr, taken.entries);
    else
        //: Entries of another copy were to be written into this one.
        sentences << ApartTexts::tr("There was nothing to take over: it stands here already, or stays as it is here.");
    for (const work::CodeGivenTwice& code : taken.codes)
        //: %1 and %2 are codes of bags, pails or batches.
        sentences << ApartTexts::tr("%1 is given out twice: the one taken over is now %2. Write or print the label of %2.").arg(code.code, code.now);
    if (taken.left > 0)
        //: %n records were changed in both copies.
        sentences << ApartTexts::tr("%n records that differ stay as they are here.", nullptr, taken.left);
    return sentences.join(QLatin1Char('\n'));
}

} // namespace soakbook::ui
