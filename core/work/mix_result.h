// SPDX-License-Identifier: GPL-3.0-or-later
// What a weighed liquid comes to against its batch's plan. For core/work's own use.
#pragma once

#include "core/book/records/batch.h"
#include "core/maths/mixing.h"
#include "core/work/mix.h"

namespace soakbook::work {

/// Strength got and wanted, and what would bring it there with the acid lot used (or the newest one open).
MixResult mix_result(const book::Workbook& workbook, const book::Batch& batch, maths::Mixture liquid);

} // namespace soakbook::work
