// SPDX-License-Identifier: GPL-3.0-or-later
// A batch as a line of the Shed's list. For core/work's own use.
#pragma once

#include "core/book/records/batch.h"
#include "core/work/shed_view.h"

namespace soakbook::work {

BatchLine batch_line(const book::Workbook& workbook, const book::Batch& batch, maths::Day today);

} // namespace soakbook::work
