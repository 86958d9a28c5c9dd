// SPDX-License-Identifier: GPL-3.0-or-later
// How the last safe copy stands: for the status line, and for Due when it is late.
#pragma once

#include "core/work/due.h"
#include "ui/shell/status_line.h"

#include <vector>

namespace soakbook::ui {

class Desk;

/// The workbook's name, its last safe copy and the number of its entries, for the status line.
StatusFacts status_facts(const Desk& desk, const QString& copy_folder);
/// The same while the worked example is open: it is no workbook to keep.
StatusFacts example_facts(const Desk& desk);
/// One row for Due when entries are without a safe copy for more than a day; otherwise nothing.
std::vector<work::DueRow> late_copy(const Desk& desk, const QString& copy_folder);

} // namespace soakbook::ui
