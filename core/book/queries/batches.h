// SPDX-License-Identifier: GPL-3.0-or-later
// One batch and what belongs to it.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/batch.h"
#include "core/book/records/batch_input.h"
#include "core/book/records/batch_loss.h"
#include "core/book/records/reading.h"
#include "core/book/records/stir.h"

#include <map>

namespace soakbook::book {

// Each without void records.
std::vector<BatchInput> inputs_of(const Workbook& workbook, Id<Batch> batch);
std::vector<Reading> readings_of(const Workbook& workbook, Id<Batch> batch); ///< oldest first
std::vector<Stir> stirs_of(const Workbook& workbook, Id<Batch> batch);       ///< oldest first
std::vector<BatchLoss> losses_of(const Workbook& workbook, Id<Batch> batch);

/// Batches in that tank that are planned or mixed, neither void nor closed, and of which no bin was flooded yet.
std::vector<Batch> batches_in_tank(const Workbook& workbook, Id<Vessel> tank);
/// Readings of that tank, all batches, that show dial and probe; oldest first.
std::vector<Reading> dial_readings_of_tank(const Workbook& workbook, Id<Vessel> tank);
/// Open ones first, then the newest.
std::vector<Batch> batches_open_first(const Workbook& workbook, bool also_void);
/// Those that are neither closed nor void, the newest first.
std::vector<Batch> open_batches(const Workbook& workbook);
/// The batch planned last.
std::optional<Batch> newest_batch(const Workbook& workbook);

/// What a list of batches counts.
struct BatchCounts {
    int strips = 0; ///< soaked
    int strips_bagged = 0;
    int soaks_running = 0; ///< not taken out yet
    int bags = 0;          ///< filled
    int resting = 0;       ///< bags that still rest on `today`
};
BatchCounts counts_of(const Workbook& workbook, Id<Batch> batch, maths::Day today);
/// The same of every batch that has any.
std::map<Id<Batch>, BatchCounts> counts_of_all(const Workbook& workbook, maths::Day today);

} // namespace soakbook::book
