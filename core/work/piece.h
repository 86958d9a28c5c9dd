// SPDX-License-Identifier: GPL-3.0-or-later
// The names of the pieces of work, as they stand in the history. Worded for people in ui/parts/piece_words.
#pragma once

#include "core/book/doing.h"

#include <QString>

namespace soakbook::work {

using book::Doing;
using book::Piece;

namespace piece {
inline const char* const all[] = {
    "set_up",          // subject: the operation
    "figure",          // a figure of Set-up; subject: its key
    "person",          // subject: the name
    "strip_kind",      // subject: the name
    "vessel",          // subject: the name
    "lot",             // a delivery entered; subject: the lot
    "lot_corrected",   // subject: the lot
    "lot_recounted",   // subject: the lot
    "lot_finished",    // subject: the lot
    "mix_planned",     // subject: the batch
    "mix_weighed",     // subject: the batch
    "mix_corrected",   // subject: the batch
    "reading",         // subject: the batch
    "stir",            // subject: the batch
    "soak",            // count: bins; subject: the batch
    "soak_ended",      // subject: the batch
    "weighing",        // count: strips; subject: the batch, bag or hive
    "bags_filled",     // count: bags; subject: the batch
    "labels_reserved", // count: labels; subject: the batch
    "label_filled",    // count: bags; subject: the bag
    "poured",          // count: pails; subject: the batch
    "loss",            // subject: the batch
    "batch_closed",    // subject: the batch
    "batch_reopened",  // subject: the batch
    "bags_moved",      // count: bags; subject: where to
    "bag_opened",      // subject: the bag
    "bag_resealed",    // subject: the bag
    "strips_discarded",// count: strips; subject: the bag
    "bag_recounted",   // subject: the bag
    "pails_moved",     // count: pails
    "pail_used_in_part", // subject: the pail
    "pail_discarded",  // subject: the pail
    "yard",            // subject: the yard
    "yard_time",       // subject: the yard
    "hives",           // count: hives; subject: the yard
    "hive_changed",    // subject: the hive
    "hives_moved",     // count: hives; subject: the yard they go to
    "round_planned",   // subject: the round
    "round_closed",    // subject: the round
    "strips_in",       // count: hives; subject: the yard
    "strips_out",      // count: hives; subject: the yard
    "mites_counted",   // count: hives; subject: the yard
    "corrected",       // subject: what
    "made_void",       // subject: what
    "printed",         // count: things shown; subject: the paper
    "restored",        // an older copy was put in the workbook's place; count: its newest entry; subject: the copy's file
    "taken_over",      // count: entries of another copy of this workbook; subject: that file
};
} // namespace piece

} // namespace soakbook::work
