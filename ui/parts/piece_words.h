// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of work in words, for undo, redo and the change history.
#pragma once

#include "core/book/doing.h"

namespace soakbook::ui {

/// "3 bags moved", "batch B7K mixed". A key without words of its own gives "an entry".
QString piece_words(const book::Piece& piece);
/// Whether the key has words of its own.
bool has_piece_words(const QString& key);

} // namespace soakbook::ui
