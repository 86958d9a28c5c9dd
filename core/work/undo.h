// SPDX-License-Identifier: GPL-3.0-or-later
// Undo and redo of this session's pieces of work.
#pragma once

#include "core/work/outcome.h"
#include "core/work/piece.h"

#include <optional>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

std::optional<Piece> next_undo(const book::Workbook& workbook);
std::optional<Piece> next_redo(const book::Workbook& workbook);
/// Takes the last piece of work back; gives its name. What was printed or exported is made void instead.
Outcome<Piece> undo(book::Workbook& workbook, const Doing& doing);
Outcome<Piece> redo(book::Workbook& workbook, const Doing& doing);

} // namespace soakbook::work
