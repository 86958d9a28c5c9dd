// SPDX-License-Identifier: GPL-3.0-or-later
// Yards: which hives carry strips, since when, until when; rounds, strips in and out, mite counts.
//
// Tasks of an Intent, and the ids they take (each may be left out, the last yard is shown then):
//   ""            ids: yard            looks at the yard
//   "show"        ids: yard            the same
//   "strips_in"   ids: yard, round     the visit of that yard; without a round, the one that waits there
//   "strips_out"  ids: yard            what hangs there as a grid
//   "pull_list"   ids: yard            the pull list, to print
//   "count"       ids: yard            the mite count of that yard
//   "edit_yard"   ids: yard            the form of that yard
//   "move_hives"  ids: hives           the form that moves them
//   "new_yard"                         the form of a new yard
//   "plan_round"  ids: yards           the form of a new round, with those yards ticked
//   "round"       ids: round           the rounds, with that one chosen
//   "hive"        ids: hive            the hive's story, in its yard
#pragma once

#include "ui/parts/place.h"

namespace soakbook::ui {

class Desk;

Place* make_yards_place(Desk& desk);

} // namespace soakbook::ui
