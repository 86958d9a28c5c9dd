// SPDX-License-Identifier: GPL-3.0-or-later
// A delivery counted or weighed anew, and one that is used up.
#pragma once

#include "core/work/materials.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/desk.h"

namespace soakbook::ui {

void open_recount_lot_form(Desk& desk, const work::LotLine& lot, QWidget* parent);
/// Asks once, since a finished delivery is offered no more.
void open_finish_lot_form(Desk& desk, const work::LotLine& lot, QWidget* parent);
/// The history of a delivery, with its amounts in its own unit.
HistoryOf lot_history(const Desk& desk, const work::LotLine& lot);

} // namespace soakbook::ui
