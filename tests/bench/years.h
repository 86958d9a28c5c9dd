// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook as an invented outfit of any size would have it after so many years: every entry is a real piece of work of
// core/work, made in the order of its days. For benchmarks, and for tests that need a file of some size.
#pragma once

#include "core/book/workbook.h"
#include "core/maths/quantities.h"

#include <functional>
#include <memory>

namespace soakbook::tests {

struct YearsWish {
    int years = 1;
    int hives = 40;
    int rounds = 2; ///< in a season, from April to August
    unsigned seed = 1;
    maths::Day last = maths::day(2026, 9, 15); ///< the newest day in it; strips of the last round still hang
    std::function<void(int)> told = {};        ///< how many seasons are begun
};

/// What was done, counted from what the pieces of work gave back.
struct YearsMade {
    int pieces = 0; ///< each with an entry in the history; an undo is one of its own
    int yards = 0;
    int hives = 0;
    int hives_dead = 0;
    int hives_moved = 0;
    int lots = 0;
    int batches = 0;
    int soaks = 0;
    int weighings = 0;
    int bags = 0;
    int bags_void = 0;
    int pails = 0;
    int rounds = 0;
    int visits = 0;
    int strips_hung = 0; ///< less what was corrected and made void
    int strips_out = 0;  ///< counted at the pull
    int strips_missing = 0;
    int strips_discarded = 0;
    int placements_void = 0;
    int counts = 0;
    int corrections = 0; ///< pieces of work with a reason, voids among them
    int undone = 0;
};

/// A new workbook at `path`, filled. The same wish gives the same numbers. Throws std::runtime_error when an entry is
/// refused, which is a fault of the generator or of the work.
std::unique_ptr<book::Workbook> workbook_of_years(const QString& path, const YearsWish& wish, YearsMade* made = nullptr);

} // namespace soakbook::tests
