// SPDX-License-Identifier: GPL-3.0-or-later
// Reasons of soaking, weighing and bagging.
#include "ui/parts/refusal_words.h"

#include <QtGlobal>

#include <array>

namespace soakbook::ui {

namespace {

using work::Why;

// The comments say to the translator what %1 and %2 stand for.
constexpr std::array texts_of_soak{
    //: %1 a bin, %2 a batch
    RefusalText{Why::bin_in_use, 2,
                QT_TRANSLATE_NOOP("Refusal", "In %1 strips of batch %2 still soak. End that soak, or take another bin."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "In this bin strips of another batch still soak. End that soak, or take "
                                             "another bin.")},
    //: %1 a number of strips, %2 the most this bin takes; a question
    RefusalText{Why::bin_overfull, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 strips in a bin for %2: will the liquid reach them all?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "More strips than this bin is for: will the liquid reach them all?")},
    //: %1 the liquid left, %2 the liquid needed
    RefusalText{Why::liquid_short, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 of liquid is left and these bins take %2. Fill fewer bins, or mix "
                                             "more."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These bins take more liquid than is left. Fill fewer bins, or mix more.")},
    //: %1 a bin
    RefusalText{Why::soak_ended, 1,
                QT_TRANSLATE_NOOP("Refusal", "The soak in %1 has ended. Choose one that is still going on."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This soak has ended. Choose one that is still going on.")},
    //: %1 the mean weight, %2 the weight of a dry strip
    RefusalText{Why::lighter_than_dry, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 a strip is less than a dry one weighs (%2). Check the number on the "
                                             "scale, the weight and its unit, and the tare."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "A wet strip cannot weigh less than a dry one. Check the number on the "
                                             "scale, the weight and its unit, and the tare.")},
    //: %1 the mean weight, %2 the target; a question
    RefusalText{Why::heavier_than_possible, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 a strip is far above the target of %2. Are the number of strips, the "
                                             "weight and the tare right?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is far above the target. Are the number of strips, the weight and "
                                             "the tare right?")},
    //: %1 a number of strips, %2 the most there can be
    RefusalText{Why::more_than_soaked, 2,
                QT_TRANSLATE_NOOP("Refusal", "There are %2 strips and not %1. Correct the number here, or the number "
                                             "that went into soak."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "There are not so many strips. Correct the number here, or the number "
                                             "that went into soak.")},
    //: A question before strips are bagged
    RefusalText{Why::no_weigh_in, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "These strips were never weighed, so the acid in them is not known. Bag "
                                             "them all the same?")},
    //: %1 the mean weight, %2 the least wanted; a question
    RefusalText{Why::light_strips, 2,
                QT_TRANSLATE_NOOP("Refusal", "At the last weighing a strip had %1, under the %2 wanted. Bag them as "
                                             "they are, rather than soak on?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "At the last weighing the strips were light. Bag them as they are, "
                                             "rather than soak on?")},
    //: %1 a bag
    RefusalText{Why::already_filled, 1,
                QT_TRANSLATE_NOOP("Refusal", "Bag %1 is filled already. Take the code of an empty one."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This bag is filled already. Take the code of an empty one.")},
    //: %1 a bag
    RefusalText{Why::not_filled, 1,
                QT_TRANSLATE_NOOP("Refusal", "Label %1 was printed ahead and has no strips behind it yet. Enter the "
                                             "filled bag first."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This label was printed ahead and has no strips behind it yet. Enter the "
                                             "filled bag first.")},
    //: %1 the weight, %2 the weight expected; a question
    RefusalText{Why::odd_bag_weight, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 in the bag, where its strips should weigh about %2. Are the number "
                                             "and the weight right?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "The weight does not fit the number of strips. Are both right?")},
};

} // namespace

std::span<const RefusalText> soak_refusals() {
    return texts_of_soak;
}

} // namespace soakbook::ui
