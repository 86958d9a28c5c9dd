// SPDX-License-Identifier: GPL-3.0-or-later
// What was printed or exported: noted, since from then on a record is made void instead of taken away.
#pragma once

#include "core/book/doing.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <vector>

namespace soakbook::work {

// In a workbook that is open for looking alone a paper can be made, and nothing is noted: the paper itself says so.

/// Labels were printed or saved: their records count as shown, and their label state becomes "printed".
Outcome<int> labels_printed(book::Workbook& workbook, const std::vector<BagId>& bags, const std::vector<PailId>& pails, const book::Doing& doing);
/// A sheet that shows these records was printed or saved. `paper`: "mixing sheet", "batch sheet", "run sheet", "pull list",
/// "register", "register csv".
Outcome<int> sheet_printed(book::Workbook& workbook, const QString& paper, const std::vector<BatchId>& batches, const std::vector<BagId>& bags,
                           const std::vector<PlacementId>& placements, const book::Doing& doing);

} // namespace soakbook::work
