// SPDX-License-Identifier: GPL-3.0-or-later
// What a record said before: who changed it, when, and why.
#pragma once

#include "core/work/register_view.h"
#include "ui/parts/desk.h"

#include <vector>

namespace soakbook::ui {

/// Opens a window over `parent` with these lines, newest first as they come.
void open_history(Desk& desk, const QString& title, const std::vector<work::CorrectionLine>& lines, QWidget* parent);

} // namespace soakbook::ui
