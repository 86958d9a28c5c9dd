// SPDX-License-Identifier: GPL-3.0-or-later
// The Store: left bags, pails and deliveries; right what is chosen of them, by limit or by day.
//
// Wishes it knows (Intent::task):
//   ""         looks at what was looked at last
//   "bags"     the bags; ids: those to choose
//   "bag"      ids[0], chosen
//   "move"     ids: bags, chosen, with the form that moves them
//   "discard"  ids: bags, chosen, with the form that throws them away
//   "labels"   ids: bags, or pails where prefill["pails"] is true, with the preview of their labels
//   "pails"    the pails; ids: those to choose
//   "pail"     ids[0], chosen
//   "lots"     the deliveries
//   "lot"      ids[0], chosen
//   "new_lot"  the form of a delivery; prefill["material"] as a number of work::MaterialKind, or nothing
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/place.h"

namespace soakbook::ui {

Place* make_store_place(Desk& desk);

} // namespace soakbook::ui
