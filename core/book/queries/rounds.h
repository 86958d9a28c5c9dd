// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds and the yards that belong to them.
#pragma once

#include "core/book/record_io.h"
#include "core/book/records/round.h"
#include "core/book/records/round_yard.h"

namespace soakbook::book {

/// Rounds that are not void, newest first.
std::vector<Round> rounds_newest_first(const Workbook& workbook);
/// Yards of a round (0: of all rounds) that still belong to it, in the order they were chosen.
std::vector<RoundYard> yards_of_round(const Workbook& workbook, Id<Round> round);
/// Yards of rounds that are neither closed nor void, where strips are still to be put in.
std::vector<RoundYard> yards_to_visit(const Workbook& workbook);

} // namespace soakbook::book
