// SPDX-License-Identifier: GPL-3.0-or-later
// Register: can I show it to an inspector? Tasks of an Intent: "" shows the treatments; "corrections", "hives", "journal" open
// those pages; "outside" the journal of what other programs changed; "batch" with ids[0] narrows the treatments to one batch.
#pragma once

#include "ui/parts/place.h"

namespace soakbook::ui {

class Desk;
Place* make_register_place(Desk& desk);

} // namespace soakbook::ui
