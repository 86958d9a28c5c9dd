// SPDX-License-Identifier: GPL-3.0-or-later
// Changes of the history as the Register shows them. For core/work's own use.
#pragma once

#include "core/book/history.h"
#include "core/work/register_view.h"

namespace soakbook::work {

/// One line a column that says something to people; a weighing's mean stands beside its total.
std::vector<CorrectionLine> lines_of(const book::Workbook& workbook, const book::Change& change);

} // namespace soakbook::work
