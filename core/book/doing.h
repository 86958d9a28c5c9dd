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

} // namespace soakbook::book
