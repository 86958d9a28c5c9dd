// SPDX-License-Identifier: GPL-3.0-or-later
// What was copied into bags, placements and pails from weighings that are now put right follows them; a rule that was
// copied does not. For core/work's own use.
#pragma once

#include "core/book/records/bag.h"
#include "core/work/weigh_sums.h"

#include <vector>

namespace soakbook::book {
class Writing;
}

namespace soakbook::work {

/// Remembers what a batch's bags and pails should hold before a correction. Afterwards `follow` brings those that held
/// exactly that to what the records say now, makes printed labels stale, and goes on to batches that took its pails.
class Copies {
public:
    Copies(const book::Workbook& workbook, book::Id<book::Batch> batch);
    void follow(book::Writing& writing) const;
    /// For a weighing written late: only bags that were filled without one take it over.
    void fill_gaps(book::Writing& writing) const;

private:
    struct Copied {
        book::Bag bag;
        StripWeights weights;
    };
    void bring_up(book::Writing& writing, bool only_gaps) const;
    void bring_up_pails(book::Writing& writing) const;

    book::Id<book::Batch> m_batch;
    maths::Fraction m_strength;
    std::vector<Copied> m_bags;
};

/// Reckons a closed batch's account anew after a correction of what went in or out, so that mass is kept.
void rebalance(book::Writing& writing, book::Id<book::Batch> batch);

} // namespace soakbook::work
