// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that the pages ask of a workbook, one read a line, as a page asks it when it is opened.
#pragma once

#include "core/book/workbook.h"
#include "core/maths/quantities.h"

#include <functional>
#include <vector>

namespace soakbook::tests {

struct PageRead {
    const char* name;
    std::function<std::size_t()> read; ///< how many lines came back
};
/// `today`: the day on which the pages are opened.
std::vector<PageRead> page_reads(const book::Workbook& workbook, maths::Day today);

} // namespace soakbook::tests
