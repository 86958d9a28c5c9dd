// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of Due that the window knows and the workbook does not: drafts that wait, and changes by other programs that nobody
// looked at yet.
#pragma once

#include "core/work/due.h"

#include <vector>

namespace soakbook::ui {

class Desk;

/// Keeps drafts for this desk's workbook, beside the folder of its safe copies.
void keep_drafts(Desk& desk, const QString& copy_folder);
/// A row for each draft of this workbook, the one typed last first.
std::vector<work::DueRow> waiting_drafts(const Desk& desk);
/// One row while changes by other programs were not looked at.
std::vector<work::DueRow> changes_to_look_at(const Desk& desk);

} // namespace soakbook::ui
