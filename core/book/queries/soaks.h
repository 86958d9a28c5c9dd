// SPDX-License-Identifier: GPL-3.0-or-later
// Soaks and what their strips weighed.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/soak.h"
#include "core/book/records/weigh_in.h"
#include "core/book/records/weigh_single.h"

#include <set>

namespace soakbook::book {

// Each without void records, oldest first.
std::vector<Soak> soaks_of(const Workbook& workbook, Id<Batch> batch);
std::vector<WeighIn> weigh_ins_of(const Workbook& workbook, Id<Soak> soak);
/// The single weights of a weighing, in their order; none when it was done together.
std::vector<WeighSingle> singles_of(const Workbook& workbook, Id<WeighIn> weigh_in);
/// Single weights of wet strips of a kind, soaking or out of a bag, one list for each weighing, oldest key first. `lot`
/// empty: of every lot. Void weighings, bags, soaks and batches count for nothing.
std::vector<std::vector<maths::Mass>> single_masses_of_kind(const Workbook& workbook, Id<StripKind> kind,
                                                            std::optional<Id<MaterialLot>> lot);
void remove_single(Writing& writing, Id<WeighSingle> id);

/// A soak that stands in that bin: not taken out, of a batch that is neither void nor closed.
std::optional<Soak> soak_in_bin(const Workbook& workbook, Id<Vessel> bin);
/// The soak begun last in that bin for which it was written how much liquid flooded it.
std::optional<Soak> last_flooded_soak(const Workbook& workbook, Id<Vessel> bin);
/// Weighings of that soak whose first writing said something else.
std::set<qint64> corrected_weigh_ins(const Workbook& workbook, Id<Soak> soak);

} // namespace soakbook::book
