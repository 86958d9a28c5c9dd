// SPDX-License-Identifier: GPL-3.0-or-later
// Bags as lines with the rules asked for once. For core/work's own use.
#pragma once

#include "core/book/queries/bags.h"
#include "core/work/store_view.h"

namespace soakbook::work {

/// The user's figures about bags on the shelf.
struct ShelfRules {
    std::optional<qint64> near_limit_days;
    std::optional<qint64> opened_days;
};
ShelfRules shelf_rules(const book::Workbook& workbook);
BagLine line_of(const book::BagStock& stock, maths::Day today, const ShelfRules& rules);

} // namespace soakbook::work
