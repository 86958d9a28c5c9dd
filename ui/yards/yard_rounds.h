// SPDX-License-Identifier: GPL-3.0-or-later
// Which rounds a yard waits for.
#pragma once

#include "core/work/round.h"

namespace soakbook::ui {

/// Rounds that are not closed and hold the yard: those whose strips are not in yet first, each by its day.
std::vector<work::RoundLine> open_rounds(const book::Workbook& workbook, work::YardId yard);
/// Whether the round's strips were put in at that yard.
bool is_visited(const work::RoundLine& round, work::YardId yard);

} // namespace soakbook::ui
