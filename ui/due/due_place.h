// SPDX-License-Identifier: GPL-3.0-or-later
// Due: what must be done now, today, this week, over the whole workbook; above it the year as one band. It knows no tasks: an
// Intent just shows it.
#pragma once

#include "core/work/due.h"
#include "ui/parts/place.h"

#include <functional>

namespace soakbook::ui {

class Desk;

/// Rows that the workbook itself cannot know, as a safe copy that is late.
using MoreDue = std::function<std::vector<work::DueRow>()>;
Place* make_due_place(Desk& desk, MoreDue more);

} // namespace soakbook::ui
