// SPDX-License-Identifier: GPL-3.0-or-later
// The Shed: left the batches, open ones first; right one batch as its course.
//
// Wishes it knows (Intent::task); ids[0] is the batch, ids[1], where it is said, the soak:
//   "new_batch"      a new batch; prefill "strips" (a number) or "total" (milligrams)
//   "show"           that batch, its current step open
//   "weigh_mix"      its weigh-in
//   "reading"        the tank's temperature
//   "stir"           a stir
//   "soak"           strips into bins
//   "weigh"          strips of that soak on the scale
//   "bag"            strips into bags
//   "fill_reserved"  bags whose labels were printed before
//   "leftovers"      pails, and the end of the batch
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/place.h"

namespace soakbook::ui {

Place* make_shed_place(Desk& desk);

} // namespace soakbook::ui
