// SPDX-License-Identifier: GPL-3.0-or-later
// What weighings say: one weighing, and the last ones of the soaks that a bag's strips came from. For core/work's own
// use.
#pragma once

#include "core/book/records/batch.h"
#include "core/book/records/soak.h"
#include "core/book/records/weigh_in.h"
#include "core/work/checks.h"
#include "core/work/weigh.h"

#include <span>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// Against what a weighing is judged.
struct WeighBasis {
    maths::Mass dry{};
    maths::Mass target{};
    maths::Mass tolerance{};
    maths::Fraction strength{};
    bool pulled = false; ///< strips out of a hive: no verdict, and bees may have left less than the dry card
};
WeighBasis basis_of(const book::Soak& soak, maths::Fraction strength);

/// Mean, uptake, acid and verdict. `singles` empty: weighed together. Refuses strips no heavier than dry ones.
Outcome<WeighFigures> weigh_sum(const WeighBasis& basis, int strips, maths::Mass total,
                                std::span<const maths::Mass> singles);
std::vector<maths::Mass> single_masses(const book::Workbook& workbook, book::Id<book::WeighIn> weigh_in);

/// What a bag copies from the soaks its strips came from.
struct StripWeights {
    std::optional<maths::Mass> strip; ///< mean of the last weighing; empty: none was made
    maths::Mass dry{};
    std::optional<maths::Mass> acid; ///< dihydrate in a strip
    maths::Fraction strength{};
    std::optional<WeighVerdict> verdict;
    maths::Mass least{}; ///< target less tolerance
    bool operator==(const StripWeights&) const = default;
};
/// Of one soak, or of all soaks of the batch together: the last weighing of each up to the day sealed.
StripWeights strip_weights(const book::Workbook& workbook, const book::Batch& batch,
                           std::optional<book::Id<book::Soak>> soak, maths::Day sealed);

} // namespace soakbook::work
