// SPDX-License-Identifier: GPL-3.0-or-later
// The form that says where bags or pails stand from now on.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"

#include <vector>

namespace soakbook::ui {

/// `stands`: where they stand now, where that is one place.
void open_move_bags(Desk& desk, const std::vector<work::BagId>& bags, const QString& stands, QWidget* parent);
void open_move_pails(Desk& desk, const std::vector<work::PailId>& pails, const QString& stands, QWidget* parent);

} // namespace soakbook::ui
