// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of the yards come about.
#pragma once

#include "core/work/count.h"
#include "core/work/how.h"
#include "core/work/mite_change.h"
#include "core/work/round.h"
#include "core/work/visit.h"

namespace soakbook::work {

/// The strips that the round's rule gives a hive or a group. Nothing for a hive that is left untreated.
std::optional<How> how_dose(const RoundEntry& round, const VisitLine& line);
/// The same for a round that is being planned, hives alike together; at most a dozen, those of most hives.
std::vector<How> how_dose(const RoundEntry& round, const RoundFigures& figures);
/// A wash or a powder shake by its bees, a drop by its days.
How how_mite_rate(const CountLine& count);
/// Against untreated hives, or without them.
How how_mite_change(const MiteChange& change);
/// For strips that do not hang yet.
How how_pull_window(maths::Day on, maths::Day first, maths::Day last);
/// By the days that were copied into the round. Nothing for a placement that is not there.
std::optional<How> how_pull_window(const book::Workbook& workbook, PlacementId placement);

} // namespace soakbook::work
