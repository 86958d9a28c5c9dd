// SPDX-License-Identifier: GPL-3.0-or-later
// Reasons of mixing, heating and leftovers.
#include "ui/parts/refusal_words.h"

#include <QtGlobal>

#include <array>

namespace soakbook::ui {

namespace {

using work::Why;

// The comments say to the translator what %1 and %2 stand for.
constexpr std::array texts_of_batch{
    //: %1 the content of the acid, %2 the strength wanted, both in per cent
    RefusalText{Why::assay_below_strength, 2,
                QT_TRANSLATE_NOOP("Refusal", "Acid of %1 cannot make a liquid of %2. Lower the strength or take a "
                                             "purer lot."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This acid is weaker than the strength wanted. Lower the strength or "
                                             "take a purer lot.")},
    //: %1 the amount, %2 what the tank holds
    RefusalText{Why::overfills_tank, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 is more than the %2 this tank holds. Make less, or take another tank."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is more than the tank holds. Make less, or take another tank.")},
    //: %1 a lot, %2 what is left of it, %3 what is wanted
    RefusalText{Why::lot_short, 3,
                QT_TRANSLATE_NOOP("Refusal", "Of lot %1 only %2 is left, and %3 is wanted. Add another lot, make "
                                             "less, or recount the lot in Store."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "The lot has less left than is wanted. Add another lot, make less, or "
                                             "recount the lot in Store.")},
    //: %1 a lot
    RefusalText{Why::lot_wrong_material, 1,
                QT_TRANSLATE_NOOP("Refusal", "Lot %1 is another material. Choose a lot of what this line is for."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This lot is another material. Choose a lot of what this line is for.")},
    //: %1 a lot
    RefusalText{Why::lot_finished, 1,
                QT_TRANSLATE_NOOP("Refusal", "Lot %1 is used up. Choose another, or recount it in Store."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This lot is used up. Choose another, or recount it in Store.")},
    //: %1 a lot, %2 its date; a question
    RefusalText{Why::lot_past_date, 2,
                QT_TRANSLATE_NOOP("Refusal", "The date on lot %1 was %2. Use it all the same?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This lot is past the date on it. Use it all the same?")},
    //: %1 a pail, %2 a batch
    RefusalText{Why::pail_used, 2,
                QT_TRANSLATE_NOOP("Refusal", "Pail %1 went whole into batch %2. Choose another pail."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This pail went into another batch. Choose another pail.")},
    //: %1 a pail
    RefusalText{Why::pail_used_in_part, 1,
                QT_TRANSLATE_NOOP("Refusal", "Pail %1 was used in part. Acid settles, so the strength of the rest is "
                                             "unknown and it goes into no mix."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This pail was used in part. Acid settles, so the strength of the rest "
                                             "is unknown and it goes into no mix.")},
    //: %1 a pail, %2 the mass in it
    RefusalText{Why::pail_part_wanted, 2,
                QT_TRANSLATE_NOOP("Refusal", "Pail %1 goes in whole, with all of its %2, or not at all: the acid "
                                             "settles, so a part of it may be almost pure glycerine. Take the whole "
                                             "pail, scraped out, or leave it."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "A pail goes in whole or not at all: the acid settles, so a part of it "
                                             "may be almost pure glycerine. Take the whole pail, scraped out, or "
                                             "leave it.")},
    //: %1 a pail
    RefusalText{Why::pail_strength_unknown, 1,
                QT_TRANSLATE_NOOP("Refusal", "The strength of pail %1 is not known, so it goes into no mix. Choose "
                                             "another pail."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "The strength of this pail is not known, so it goes into no mix. Choose "
                                             "another pail.")},
    //: %1 the codes of pails
    RefusalText{Why::pail_set_incomplete, 1,
                QT_TRANSLATE_NOOP("Refusal", "These pails were poured together from a bin that was not scraped out, "
                                             "so acid may be in any of them. Add %1 as well, or leave them all out."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These pails were poured together from a bin that was not scraped out. "
                                             "Add the rest of them, or leave them all out.")},
    //: %1 a pail
    RefusalText{Why::pail_gone, 1,
                QT_TRANSLATE_NOOP("Refusal", "Pail %1 is gone: it was thrown away or its entry was made void. Choose "
                                             "another pail."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This pail is gone: it was thrown away or its entry was made void. "
                                             "Choose another pail.")},
    //: %1 a strength in per cent
    RefusalText{Why::too_strong_without_water, 1,
                QT_TRANSLATE_NOOP("Refusal", "These pails are stronger than %1, and nothing in the mix thins them. "
                                             "Add glycerine, or ask for the strength they have."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "These pails are stronger than wanted, and nothing in the mix thins "
                                             "them. Add glycerine, or ask for the strength they have.")},
    //: %1 the strength that the weighings give, %2 the one planned; a question
    RefusalText{Why::strength_off, 2,
                QT_TRANSLATE_NOOP("Refusal", "As weighed the liquid comes to %1 instead of %2. Were the weighings "
                                             "right?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "As weighed the liquid has another strength than planned. Were the "
                                             "weighings right?")},
    //: %1 a tank, %2 a batch; a question
    RefusalText{Why::tank_in_use, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 still holds batch %2. Is it empty?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This tank still holds another batch. Is it empty?")},
    //: %1 a temperature, %2 the highest allowed
    RefusalText{Why::over_ceiling, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 is over the ceiling of %2. Turn the dial down now, stay out of the "
                                             "vapour and air the room: hot acid gives off gas."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is over the ceiling. Turn the dial down now, stay out of the "
                                             "vapour and air the room: hot acid gives off gas.")},
    //: %1 a temperature; a question
    RefusalText{Why::odd_temperature, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 in the tank: is that right?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "An odd temperature for a tank: is it right?")},
    //: Beside the question whether the liquid is clear
    RefusalText{Why::no_reading, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "Nobody has read the probe yet. Enter one reading first, then say that "
                                             "the liquid is clear.")},
    //: When strips are to be soaked
    RefusalText{Why::not_clear, 0,
                nullptr,
                QT_TRANSLATE_NOOP("Refusal", "The liquid was not seen clear yet, so acid may still lie at the bottom. "
                                             "Stir until it is clear and enter that first.")},
    //: %1 a batch
    RefusalText{Why::batch_closed, 1,
                QT_TRANSLATE_NOOP("Refusal", "Batch %1 is closed. Open it again with a reason, then enter this."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This batch is closed. Open it again with a reason, then enter this.")},
    //: %1 a batch
    RefusalText{Why::batch_not_mixed, 1,
                QT_TRANSLATE_NOOP("Refusal", "Batch %1 is planned but not weighed in yet. Enter what went into the "
                                             "tank first."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This batch is not weighed in yet. Enter what went into the tank first.")},
    //: %1 what was poured, %2 what can be left
    RefusalText{Why::more_than_left, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 is more than the %2 that can be left over. Check the weights, and "
                                             "take off the empty pails."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "This is more than can be left over. Check the weights, and take off the "
                                             "empty pails.")},
    //: %1 a mass, %2 the limit; a question
    RefusalText{Why::loss_unexplained, 2,
                QT_TRANSLATE_NOOP("Refusal", "%1 is not accounted for, more than the %2 that Set-up allows. Was "
                                             "something spilt, left in the bins, or weighed wrong?"),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "More is not accounted for than Set-up allows. Was something spilt, left "
                                             "in the bins, or weighed wrong?")},
    //: %1 a number of strips
    RefusalText{Why::strips_not_bagged, 1,
                QT_TRANSLATE_NOOP("Refusal", "%1 strips of this batch are not bagged yet. Bag them, or enter them as "
                                             "thrown away, then close the batch."),
                //: As before, without the facts
                QT_TRANSLATE_NOOP("Refusal", "Strips of this batch are not bagged yet. Bag them, or enter them as "
                                             "thrown away, then close the batch.")},
};

} // namespace

std::span<const RefusalText> batch_refusals() {
    return texts_of_batch;
}

} // namespace soakbook::ui
