// SPDX-License-Identifier: GPL-3.0-or-later
// Which rows of which table stand where in a damaged store: by the trees as far as they hold, and beside them page by page.
#pragma once

#include "core/book/table_shapes.h"

#include <functional>

namespace soakbook::book {

struct FoundRow {
    qint64 id = 0;
    StoredAt at;
    bool in_tree = false; ///< reached from the table's root; otherwise its page may be an old one
    bool alone = true;    ///< it looks like a row of this table and of no other
};

struct PageScan {
    std::map<QString, std::vector<FoundRow>> rows; ///< sorted by number, those in the tree first
    std::map<QString, qint64> highest; ///< numbers given out, by the store's own count
    qint64 pages_lost = 0;
    bool stopped = false;
};

/// `go_on` is told the hundredths of the pages looked at, and stops it by false.
PageScan scan_pages(PageFile& file, TableShapes& shapes, const std::function<bool(int)>& go_on);

} // namespace soakbook::book
