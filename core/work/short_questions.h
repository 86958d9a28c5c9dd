// SPDX-License-Identifier: GPL-3.0-or-later
// Short questions of pages and forms, answered without the lists of all years.
#pragma once

#include "core/work/count.h"
#include "core/work/register_view.h"

namespace soakbook::work {

/// Corrections of the filter as `corrections` gives them; with a range of days alone, those too that were made in it to
/// other records. Oldest first.
std::vector<CorrectionLine> corrections_and_those_made_then(const book::Workbook& workbook, const RegisterFilter& filter);

/// Whether strips were ever hung in that yard (0: in any), what was made void counted too.
bool was_anything_hung(const book::Workbook& workbook, YardId yard = {});

/// How many bees the count of that kind had that was written last, if one had any.
std::optional<int> bees_used_last(const book::Workbook& workbook, MiteCountKind kind);

/// How many bags there ever were: on the shelf, reserved, gone and void.
int bags_ever(const book::Workbook& workbook);

} // namespace soakbook::work
