// SPDX-License-Identifier: GPL-3.0-or-later
// Who does a piece of work, when, and why: handed in from the edge, since nothing below ui looks at a clock.
#pragma once

#include "core/maths/quantities.h"

#include <QString>

namespace soakbook::book {

/// The circumstances of one piece of work, written beside every change it makes.
struct Doing {
    maths::Instant at;   ///< now, on the wall of whoever does it
    QString who;         ///< the name chosen in the status line
    QString why;         ///< reason, for corrections and voids; otherwise empty
    bool clock_doubtful = false;

    maths::Day today() const { return at.local_day(); }
};

/// The name of one piece of work, for the history, undo and the status line: what was done, to how many, to which. It is
/// worded in ui/parts/piece_words.
struct Piece {
    QString key;     ///< one of the keys in core/work/piece.h
    int count = 1;   ///< bags filled, hives visited ...
    QString subject; ///< a code or a name

    bool operator==(const Piece&) const = default;
};

} // namespace soakbook::book
