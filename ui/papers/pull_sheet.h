// SPDX-License-Identifier: GPL-3.0-or-later
// The pull list of a yard: what hangs there and until when, with room to write what was found.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"
#include "ui/print/yard_sheets.h"

namespace soakbook::ui {

/// Everything that hangs in that yard (0: in every yard), the earliest last day first.
PullList pull_list(const Desk& desk, work::YardId yard);
/// Opens the preview with printer and PDF, and notes the list as printed once it is.
void offer_pull_list(Desk& desk, work::YardId yard, QWidget* parent);

} // namespace soakbook::ui
