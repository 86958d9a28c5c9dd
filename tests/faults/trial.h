// SPDX-License-Identifier: GPL-3.0-or-later
// One piece of work, tried again and again while something fails: it is down whole or not at all, what was there before is
// the same, and it can be done again.
#pragma once

#include "ground.h"
#include "piece_of_work.h"

#include <functional>
#include <string>

namespace soakbook::faults {

/// What fails: `at` counts from 1, and heal() ends it.
struct Failing {
    std::string name;
    std::function<void(int at, bool once)> begin;
    std::function<bool()> came;
    std::function<int()> moments; ///< that went by since `begin`
    std::function<void()> heal;
};

/// Lets it fail at the 1st, 2nd ... moment of the piece; of more than `most` moments at so many of them, evenly. Gives how
/// often the piece was not acknowledged.
int try_every_failure(const PieceOfWork& piece, const Failing& failing, bool once, int most);

} // namespace soakbook::faults
