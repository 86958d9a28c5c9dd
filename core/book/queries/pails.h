// SPDX-License-Identifier: GPL-3.0-or-later
// Pails: where they came from and where they went.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/batch_input.h"
#include "core/book/records/pail.h"
#include "core/book/records/pour.h"

namespace soakbook::book {

/// Pails filled from that batch, not void.
std::vector<Pail> pails_of(const Workbook& workbook, Id<Batch> batch);
/// All pails of one pour, void ones too.
std::vector<Pail> pails_of_pour(const Workbook& workbook, Id<Pour> pour);
/// Pails that stand on the shelf with a known strength: not used, not planned, not discarded, not void; oldest liquid
/// first.
std::vector<Pail> pails_at_hand(const Workbook& workbook);
/// The input by which the pail went, or is planned to go, into a batch.
std::optional<BatchInput> input_of_pail(const Workbook& workbook, Id<Pail> pail);

} // namespace soakbook::book
