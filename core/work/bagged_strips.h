// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips of a batch and of each of its soaks are in bags. For core/work's own use.
#pragma once

#include "core/book/records/soak.h"
#include "core/work/ids.h"

#include <map>
#include <optional>

namespace soakbook::work {

/// Strips and bags of one batch.
struct Bagged {
    int soaked = 0;
    int bagged = 0;
    std::map<qint64, int> by_soak; ///< a bag that names no soak is counted to the oldest soak that has strips left
};
Bagged bagged_of(const book::Workbook& workbook, BatchId batch);
/// Strips still to be bagged: of one soak, or of the batch. `without`: a bag that is left out of the count.
int to_bag(const book::Workbook& workbook, BatchId batch, std::optional<SoakId> soak, BagId without = {});
/// The fewest strips a soak can have held, going by what was bagged.
int least_strips_of(const book::Workbook& workbook, const book::Soak& soak);

} // namespace soakbook::work
