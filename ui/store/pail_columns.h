// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the table of pails.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"

#include <vector>

namespace soakbook::ui {

std::vector<Column<work::PailLine>> pail_columns(const Desk& desk);
std::vector<int> pail_column_widths();
int pail_stretched_column();

} // namespace soakbook::ui
