// SPDX-License-Identifier: GPL-3.0-or-later
// The papers that go along to hang strips: the run sheet of a yard, and what is loaded for a whole round.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"
#include "ui/print/yard_sheets.h"

#include <optional>

namespace soakbook::ui {

/// The visit as planned on the round's day, or today where that has gone by. Nothing where there is no such round in the yard.
std::optional<RunSheet> run_sheet(const Desk& desk, work::RoundId round, work::YardId yard);
/// The yards of the round that wait for their strips, and the bags for all of them together. Nothing where there is no such round.
std::optional<LoadOut> load_out(const Desk& desk, work::RoundId round);
/// Opens the preview with printer and PDF, and notes the sheet as printed once it is.
void offer_run_sheet(Desk& desk, work::RoundId round, work::YardId yard, QWidget* parent);
void offer_load_out(Desk& desk, work::RoundId round, QWidget* parent);

} // namespace soakbook::ui
