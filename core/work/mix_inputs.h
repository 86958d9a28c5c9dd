// SPDX-License-Identifier: GPL-3.0-or-later
// What a weight in a mix stands for, and what a weighed liquid comes to against its batch's plan. For core/work's own
// use.
#pragma once

#include "core/book/records/batch.h"
#include "core/book/records/batch_input.h"
#include "core/maths/mixing.h"
#include "core/work/checks.h"
#include "core/work/mix.h"

namespace soakbook::work {

/// The acid, as dihydrate, in a mass of an input. Refuses a pail that does not go in whole.
Outcome<maths::Mass> acid_in(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass,
                             const QString& field);
/// Whether the lot of an input has that much, when what was put down for it so far is held back.
Not lot_lacks(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass, const QString& field);
/// Refuses more liquid than the batch's tank holds.
Not overfills(const book::Workbook& workbook, const book::Batch& batch, maths::Mass total, const QString& field);
/// Strength got and wanted, and what would bring it there with the acid lot used (or the newest one open).
MixResult mix_result(const book::Workbook& workbook, const book::Batch& batch, maths::Mixture liquid);

} // namespace soakbook::work
