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

} // namespace soakbook::book
