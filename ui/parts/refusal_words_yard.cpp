// SPDX-License-Identifier: GPL-3.0-or-later
// Reasons of the yards.
#include "ui/parts/refusal_words.h"

#include <QtGlobal>

#include <array>

namespace soakbook::ui {

namespace {

using work::Why;

// The comments say to the translator what %1 and %2 stand for.
constexpr std::array texts_of_yard{
    //: %1 a bag, %2 the strips left in it, %3 the strips wanted
    RefusalText{Why::bag_short, 3,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 has %2 strips left, and %3 are wanted. Take the rest from "
                                             "another bag, or recount this one in Store."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "The bag has fewer strips left. Take the rest from another bag, or "
                                             "recount this one in Store.")},
    //: %1 a bag, %2 a day; a question
    RefusalText{Why::bag_resting, 2,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 rests until %2: its strips still take up what is wet. Use it now?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag still rests: its strips still take up what is wet. Use it now?")},
    //: %1 a bag, %2 a day
    RefusalText{Why::bag_resting_refused, 2,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 rests until %2, and your rule in Set-up is to wait. Take another "
                                             "bag."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag still rests, and your rule in Set-up is to wait. Take another "
                                             "bag.")},
    //: %1 a bag, %2 a day
    RefusalText{Why::bag_past_limit, 2,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 was to be used by %2. Take another bag, or give a reason: the "
                                             "register will show it."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag is past its use-by day. Take another bag, or give a reason: "
                                             "the register will show it.")},
    //: %1 a bag, %2 the day it was opened, %3 the days allowed; a question
    RefusalText{Why::bag_opened_long, 3,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 was opened on %2, longer ago than the %3 days of your rule. Use "
                                             "it all the same?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag has been open longer than your rule allows. Use it all the "
                                             "same?")},
    //: %1 a bag
    RefusalText{Why::bag_gone, 1,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 is gone: used up, thrown away or made void. Take another bag."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag is gone: used up, thrown away or made void. Take another bag.")},
    //: %1 a bag, %2 a day
    RefusalText{Why::before_sealed, 2,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 was sealed on %2, so nothing was taken from it before. Check the "
                                             "day and the bag."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "The bag was not sealed yet on that day. Check the day and the bag.")},
    //: %1 a hive or a yard; a question
    RefusalText{Why::supers_on, 1,
                QT_TRANSLATE_NOOP("Refusal", "There are honey supers on %1. The label, your vet and local rules say "
                                             "whether strips may hang then. Enter it all the same?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "There are honey supers on. The label, your vet and local rules say "
                                             "whether strips may hang then. Enter it all the same?")},
    //: %1 the name of a flow, %2 and %3 days; a question
    RefusalText{Why::in_flow, 3,
                QT_TRANSLATE_NOOP("Refusal", "That day is within the flow %1, from %2 to %3. Enter it all the same?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "That day is within a flow. Enter it all the same?")},
    //: %1 the name of a time, %2 and %3 days; a question
    RefusalText{Why::yard_closed, 3,
                QT_TRANSLATE_NOOP("Refusal", "This yard is not to be opened from %2 to %3 (%1). Enter it all the same?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This yard is not to be opened on that day. Enter it all the same?")},
    //: %1 a hive
    RefusalText{Why::hive_dead, 1,
                QT_TRANSLATE_NOOP("Refusal", "Hive %1 is dead. Leave its strips at 0, or enter first that it lives."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This hive is dead. Leave its strips at 0, or enter first that it lives.")},
    //: %1 a hive, %2 a number of strips, %3 a day; a question
    RefusalText{Why::hive_has_strips, 3,
                QT_TRANSLATE_NOOP("Refusal", "In hive %1 hang %2 strips since %3. Hang more beside them?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Strips hang in this hive already. Hang more beside them?")},
    //: %1 a number of strips, %2 the least and %3 the most of the rule; a question
    RefusalText{Why::dose_outside, 3,
                QT_TRANSLATE_NOOP("Refusal", "%1 strips in this hive, where your rule says %2 to %3. Is that meant?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Another number of strips than your rule says. Is that meant?")},
    //: %1 a hive, %2 a day
    RefusalText{Why::already_pulled, 2,
                QT_TRANSLATE_NOOP("Refusal", "The strips of hive %1 came out on %2. To change that, correct that "
                                             "entry."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These strips are out already. To change that, correct that entry.")},
    //: %1 a day
    RefusalText{Why::before_placed, 1,
                QT_TRANSLATE_NOOP("Refusal", "These strips went in on %1, so they did not come out before. Check the "
                                             "day."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These strips were not in yet on that day. Check the day.")},
    //: %1 the strips counted, %2 the strips that hang
    RefusalText{Why::counted_more, 2,
                QT_TRANSLATE_NOOP("Refusal", "Out and missing make %1, and %2 hang in the hive. Count again: every "
                                             "strip is either out or missing."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Out and missing together are not what hangs in the hive. Count again: "
                                             "every strip is either out or missing.")},
    //: %1 a day; a question
    RefusalText{Why::window_not_open, 1,
                QT_TRANSLATE_NOOP("Refusal", "These strips should hang until %1 at least. Were they taken out early?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These strips should hang longer. Were they taken out early?")},
    //: Beside the number of mites in a wash
    RefusalText{Why::mites_without_bees, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "A wash counts mites in a number of bees. Say how many bees were in it.")},
    //: When hives are moved
    RefusalText{Why::same_yard, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "They stand in that yard already. Choose another.")},
    //: %1 the strips ready, %2 the strips wanted
    RefusalText{Why::not_enough_strips, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 strips are ready and this round wants %2. Leave out hives, or wait "
                                             "until more are ready."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Fewer strips are ready than this round wants. Leave out hives, or wait "
                                             "until more are ready.")},
};

} // namespace

std::span<const RefusalText> yard_refusals() {
    return texts_of_yard;
}

} // namespace soakbook::ui
