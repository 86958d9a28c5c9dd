// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the table of deliveries.
#pragma once

#include "core/work/materials.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"

#include <vector>

namespace soakbook::ui {

std::vector<Column<work::LotLine>> lot_columns(const Desk& desk);
std::vector<int> lot_column_widths();
int lot_stretched_column();

} // namespace soakbook::ui
