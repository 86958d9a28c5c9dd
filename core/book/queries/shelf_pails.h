// SPDX-License-Identifier: GPL-3.0-or-later
// Pails with the batch they came from and the one that took them.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/pail.h"
#include "core/book/records/pour.h"

namespace soakbook::book {

struct PailRow {
    Pail pail;
    QString batch_code;
    bool warm_and_clear = false;
    bool scraped = false;
    QString planned_in; ///< code of the batch it is planned for
    QString used_in;    ///< code of the batch it went into
};
/// Every pail, oldest liquid first.
std::vector<PailRow> all_pails(const Workbook& workbook);
/// The pails of each pour of which at least one still stands there, neither used nor discarded nor void; in the same order.
std::vector<PailRow> pails_of_pours_at_hand(const Workbook& workbook);
/// The pails of the pour that this one came from.
std::vector<PailRow> pails_poured_with(const Workbook& workbook, Id<Pail> pail);

} // namespace soakbook::book
