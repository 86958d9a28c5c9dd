// SPDX-License-Identifier: GPL-3.0-or-later
// Deliveries, and what of each went where.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/lot_change.h"
#include "core/book/records/material_lot.h"

namespace soakbook::book {

/// Every lot that is not void, newest first.
std::vector<MaterialLot> lots_newest_first(const Workbook& workbook);
/// What of the lot went into batches, soaks or bags. A planned amount counts until it is weighed; a burst bag counts, a
/// filling that was undone does not.
qint64 used_of_lot(const Workbook& workbook, const MaterialLot& lot);
/// What counting anew and throwing away changed, with a sign.
qint64 changes_of_lot(const Workbook& workbook, Id<MaterialLot> lot);
/// The lot of that material that was used last in a batch.
std::optional<Id<MaterialLot>> lot_used_last(const Workbook& workbook, Material material);

} // namespace soakbook::book
