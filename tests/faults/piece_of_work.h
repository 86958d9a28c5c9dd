// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of work that is done while something fails.
#pragma once

#include "core/book/workbook.h"

#include <QByteArray>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace soakbook::faults {

struct PieceOfWork {
    std::string name;
    std::function<QByteArray()> workbook; ///< the file it is done in
    std::function<void(book::Workbook&)> before; ///< in peace; may be empty
    /// Nothing when it was done, else how it was refused. What it throws counts as broken.
    std::function<std::optional<std::string>(book::Workbook&)> work;
};

/// Entries, corrections, a void, a paper and an undo, written through the records alone.
const std::vector<PieceOfWork>& plain_pieces();
/// Six pieces of the trade, through core/work: a mix weighed, bags filled, strips in, a pull, counts, a correction.
const std::vector<PieceOfWork>& pieces_of_the_trade();

} // namespace soakbook::faults
