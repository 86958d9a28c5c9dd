// SPDX-License-Identifier: GPL-3.0-or-later
// Reasons that any form may give, and those of undo.
#include "ui/parts/refusal_words.h"

#include <QtGlobal>

#include <array>

namespace soakbook::ui {

namespace {

using work::Why;

// The comments say to the translator what %1 and %2 stand for.
constexpr std::array texts_of_form{
    //: Beside a field
    RefusalText{Why::missing, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "This is needed.")},
    //: Beside a field
    RefusalText{Why::unreadable, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "This does not read. Write it as in the example beside the field, or "
                                             "leave it empty.")},
    //: Beside a field for an amount
    RefusalText{Why::not_positive, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "There must be more than nothing here.")},
    //: %1 the most that makes sense
    RefusalText{Why::too_large, 1,
                QT_TRANSLATE_NOOP("Refusal", "More than %1 makes no sense here. Check the figure and its unit."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is too much. Check the figure and its unit.")},
    //: %1 the least that makes sense
    RefusalText{Why::too_small, 1,
                QT_TRANSLATE_NOOP("Refusal", "Less than %1 makes no sense here. Check the figure and its unit."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is too little. Check the figure and its unit.")},
    //: %1 a number of letters
    RefusalText{Why::too_long, 1,
                QT_TRANSLATE_NOOP("Refusal", "No more than %1 letters fit here. Shorten it."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is too long. Shorten it.")},
    //: Beside a field for a name
    RefusalText{Why::hidden_signs, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "This name holds characters that cannot be seen, such as come along when text is copied. "
                                             "Type the name by hand.")},
    //: %1 a name
    RefusalText{Why::name_taken, 1,
                QT_TRANSLATE_NOOP("Refusal", "There is a %1 already. Take another name."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This name is taken. Take another.")},
    //: %1 a code or a name
    RefusalText{Why::not_found, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 is not there any more. Choose another."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "It is not there any more. Choose another.")},
    //: Beside a field for a reason
    RefusalText{Why::reason_missing, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "Say why: a correction keeps its reason beside what stood there before.")},
    //: At the foot of a form
    RefusalText{Why::nothing_changed, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "Nothing was changed. Change a field, or leave with Esc.")},
    //: Beside a field for a day or a moment
    RefusalText{Why::in_the_future, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "This has not come yet. Take today or an earlier day.")},
    //: %1 a day
    RefusalText{Why::before_start, 1,
                QT_TRANSLATE_NOOP("Refusal", "This is before the step that comes first, of %1. Take that day or a "
                                             "later one."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is before the step that comes first. Take a later day.")},
    //: %1 a number of days; a question
    RefusalText{Why::long_ago, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 days ago: is the year right?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "More than a year ago: is the year right?")},
    //: %1 the name of a figure, as: the days of rest
    RefusalText{Why::figure_missing, 1,
                QT_TRANSLATE_NOOP("Refusal", "For this, Set-up must know %1. Say it there first."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "For this, a figure in Set-up is not said yet. Say it there first.")},
    //: %1 a program or a person; the file is in use
    RefusalText{Why::busy, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 is writing in this workbook. Nothing is lost: wait until that is "
                                             "done, or close it there, and enter this again."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Another program is writing in this workbook. Nothing is lost: wait "
                                             "until it is done, or close it, and enter this again.")},
    //: Nothing could be saved
    RefusalText{Why::disk_full, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "There is no room left where the workbook is kept, so nothing was saved. "
                                             "Make room and enter this again.")},
    //: Nothing could be saved
    RefusalText{Why::disk_failed, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "The disk failed while the workbook was written or read, so nothing was saved. "
                                             "Enter this again; if it fails again, keep the workbook on another disk.")},
    //: Nothing could be saved
    RefusalText{Why::read_only, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "The workbook, or the folder it is in, may only be read, so nothing was "
                                             "saved. Allow writing there, or keep the workbook elsewhere.")},
    //: Nothing could be saved yet
    RefusalText{Why::being_checked, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "The workbook is still being checked; entries can be made as soon as it "
                                             "is found sound. What you typed is kept.")},
    //: Nothing could be saved
    RefusalText{Why::looking_only, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "The workbook is open only to be looked at, so nothing was saved. Everything "
                                             "in it can be looked at, printed and saved as a table.")},
    //: Nothing could be saved
    RefusalText{Why::replaced, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "Another file was put in the place of this workbook while it was open, so "
                                             "nothing was saved. What you typed is kept: note it down, then open the "
                                             "workbook again, or a safe copy of it.")},
    //: %1 a file
    RefusalText{Why::other_workbook, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 is a workbook of its own, not a copy of this one. Open it by itself."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "That is a workbook of its own, not a copy of this one. Open it by itself.")},
    //: %1 a file
    RefusalText{Why::copy_unsound, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 is damaged or cannot be read. Take another copy."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This copy is damaged or cannot be read. Take another one.")},
    //: %1 an entry, in words or as a code
    RefusalText{Why::not_taken_over, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 does not fit this workbook any more, so nothing was taken over. Leave "
                                             "it out, or enter it here by hand."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "An entry does not fit this workbook any more, so nothing was taken over. "
                                             "Leave it out, or enter it here by hand.")},
    //: Undo has nothing to take back
    RefusalText{Why::nothing_to_undo, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "There is nothing to take back: undo reaches back to when the workbook "
                                             "was opened.")},
    //: Undo cannot go on
    RefusalText{Why::changed_outside, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "Another program has changed the workbook. Its changes are kept, and the "
                                             "journal shows them: look at them, then enter this again. What was done "
                                             "before them can be corrected, but no longer taken back.")},
    //: %1 a code or a name; undo cannot go on
    RefusalText{Why::undo_blocked, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 stands on this by now. Take that back first, or correct this where "
                                             "it stands."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Later work stands on this by now. Take that back first, or correct this "
                                             "where it stands.")},
};

} // namespace

std::span<const RefusalText> form_refusals() {
    return texts_of_form;
}

} // namespace soakbook::ui
