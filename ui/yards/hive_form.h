// SPDX-License-Identifier: GPL-3.0-or-later
// One hive or group put right, and hives moved to another yard.
#pragma once

#include "core/work/hives.h"

#include <vector>

class QWidget;

namespace soakbook::ui {

class Desk;

/// Opens the form of a hive as it stands in the workbook.
void open_hive_form(QWidget* parent, Desk& desk, work::HiveId hive);
/// Opens the form that moves these hives, with what hangs in them.
void open_move_form(QWidget* parent, Desk& desk, const std::vector<work::HiveId>& hives);

} // namespace soakbook::ui
