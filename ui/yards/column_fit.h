// SPDX-License-Identifier: GPL-3.0-or-later
// Tables on narrow pages: what can be spared goes first, and rows stay high enough to touch.
#pragma once

#include <vector>

namespace soakbook::ui {

class RecordTable;

/// Hides the columns of `may_go`, the first ones first, while the columns at these widths (for 100 % text) have no room;
/// shows them again where there is room. Other hidden columns stay hidden.
void fit_columns(RecordTable& table, const std::vector<int>& widths, const std::vector<int>& may_go);
/// Lets the table take whatever height the page has, but never less than so many rows.
void keep_rows(RecordTable& table, int rows);

} // namespace soakbook::ui
