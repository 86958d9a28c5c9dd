// SPDX-License-Identifier: GPL-3.0-or-later
// Papers that show what was done: the batch sheet and the register of treatments.
#pragma once

#include "ui/print/sheet_head.h"

#include <vector>

namespace soakbook::ui {

/// A part of a batch's course as a table: "Mix", "Heat and clear", "Soak", "Weigh", "Bag", "Leftovers", "Changes".
struct BatchPart {
    QString title;
    QString sentence; ///< what came of it; may be empty
    SheetTable table; ///< its own title stays empty; no columns: no table
};

struct BatchSheet {
    QString batch;
    QString state;   ///< "closed 3 Oct 2026"
    std::vector<SheetFact> facts;
    std::vector<BatchPart> parts;
};
PaperSheet sheet_of(const BatchSheet& batch, const SheetHead& head);

/// One treatment as a register wants it; texts as the user reads them.
struct RegisterLine {
    QString day_in;
    QString day_out;     ///< empty: still hanging
    QString yard;
    QString hives;       ///< number or group, and how many colonies
    QString product;     ///< what it is, strength
    QString bag;         ///< code
    QString batch;       ///< code
    QString strips;
    QString acid;        ///< with the unit in the header
    QString pulled;      ///< "11 of 12, 1 missing"
    QString withdrawal;  ///< waiting time as entered
    QString by;
    QString note;        ///< reasons, supers, past its limit
    bool made_void = false; ///< printed with a line through, its reason in the note
};

struct RegisterSheet {
    QString range;       ///< "1 Jan 2026 to 31 Dec 2026, all yards"
    QString acid_unit;   ///< "g"
    QString keeper;      ///< who keeps the animals: name and place
    QString total;       ///< a sentence: "14 treatments, 212 strips, 1.5 kg acid"
    std::vector<RegisterLine> lines;
};
PaperSheet sheet_of(const RegisterSheet& book, const SheetHead& head);

} // namespace soakbook::ui
