// SPDX-License-Identifier: GPL-3.0-or-later
// Which safe copies stay when there are many. A sum: no clock, no file.
#pragma once

#include "core/maths/quantities.h"

#include <vector>

namespace soakbook::book {

struct DatedCopy {
    std::int64_t seq = 0; ///< of its newest entry: the higher, the newer, whatever its day says
    maths::Day day{};     ///< on which it was made, by a clock that may be wrong
    bool verified = true; ///< false: found unsound, or cut short
};

/// For each of `copies`, in their order, whether it stays. Of the verified ones the 20 newest by number, and the newest of
/// each of the last 14 days, 8 weeks, 24 months and 10 years that have one: a day is one only by the copy's date, so a wrong
/// clock puts a copy into another of these, and never makes an older state outrank a newer. One that is not verified takes
/// no verified one's place, and goes once 20 verified ones are newer.
std::vector<bool> which_copies_stay(const std::vector<DatedCopy>& copies);

} // namespace soakbook::book
