// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the table of bags.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"

#include <vector>

namespace soakbook::ui {

std::vector<Column<work::BagLine>> bag_columns(const Desk& desk);
/// The widths they start with, and the one that takes what is left.
std::vector<int> bag_column_widths();
int bag_stretched_column();

} // namespace soakbook::ui
