// SPDX-License-Identifier: GPL-3.0-or-later
// The paper that goes into the shed before a batch is mixed: what is planned, and room for what was done.
#pragma once

#include "ui/print/sheet_head.h"

#include <vector>

namespace soakbook::ui {

/// One thing that goes in. All quantities are texts in the user's units.
struct MixingLine {
    QString what;       ///< "Acid", "Glycerine", "Pail P3F, whole"
    QString lot;
    QString planned;    ///< "25 kg"
    QString containers; ///< "1 can of 25 kg and 12.5 kg"
};

struct MixingSheet {
    QString batch;      ///< code
    QString day;        ///< planned for
    QString vessel;
    QString strength;   ///< "42 % by mass, as dihydrate"
    QString total;
    QString level_mark; ///< how high it will stand; empty: not said
    QString ceiling;    ///< the tank is kept under it; empty: not said
    QString room_left;  ///< "9.5 kg under the brim"
    std::vector<MixingLine> lines;
    int reading_lines = 7;
};

PaperSheet sheet_of(const MixingSheet& mixing, const SheetHead& head);

} // namespace soakbook::ui
