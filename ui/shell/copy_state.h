// SPDX-License-Identifier: GPL-3.0-or-later
// How the safe copies stand: for the status line, and for Due when something is to be done about them.
#pragma once

#include "core/work/due.h"
#include "ui/shell/status_line.h"

#include <vector>

namespace soakbook::ui {

class CopyKeeper;
class Desk;

/// The workbook's name, its last safe copy and the number of its entries, for the status line. Without `keeper` nothing is
/// known of a copy that failed.
StatusFacts status_facts(const Desk& desk, const QString& copy_folder, const CopyKeeper* keeper = nullptr);
/// The same while the worked example is open: it is no workbook to keep.
StatusFacts example_facts(const Desk& desk);
/// Rows for Due: when entries are without a safe copy for more than a day, when the second place does not answer for a week,
/// and when none was chosen three days after the workbook was made.
std::vector<work::DueRow> late_copy(const Desk& desk, const QString& copy_folder);

} // namespace soakbook::ui
