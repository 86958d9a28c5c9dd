// SPDX-License-Identifier: GPL-3.0-or-later
// The list at the left of Yards.
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/side_list.h"

namespace soakbook::ui {

/// Entries that are no yard; a yard's entry has the yard's own id.
constexpr qint64 all_entry = -1;
constexpr qint64 rounds_entry = -2;
constexpr int fixed_entries = 2;

/// All yards, the rounds, then each yard with its hives, its latest day to pull, and the state of its worst hive.
std::vector<SideItem> yard_items(const Desk& desk);
/// The entry to begin with: the yard whose strips are the most urgent, otherwise the first.
qint64 first_entry(const Desk& desk);

} // namespace soakbook::ui
