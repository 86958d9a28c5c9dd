// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips a bag holds, going by its weight: one short?
#pragma once

#include "core/work/outcome.h"
#include "core/work/strip_spread.h"

namespace soakbook::work {

enum class CountSays { as_packed, fewer, more, cannot_tell };
/// What lies on the scale. Free liquid poured into the bag weighs too and would count as strips: weigh before it.
struct CountWish {
    BatchId batch;
    std::optional<SoakId> soak;       ///< the bin the strips came from; empty: any of the batch
    maths::Mass net{};                ///< contents without the bag
    int packed = 0;                   ///< as counted
    std::optional<maths::Day> sealed; ///< weighings after it do not count; empty: all count
};
struct CountCheck {
    CountSays says = CountSays::cannot_tell;
    int packed = 0;
    maths::Mass net{};
    maths::Mass mean{};                ///< of a strip, by the last weighing of each bin
    int mean_strips = 0;               ///< it comes from so many
    std::optional<StripSpread> spread; ///< none known: cannot tell
    std::optional<int> likeliest;      ///< only with a spread
    std::optional<double> sureness;    ///< of the likeliest count, 0 to 1
    std::optional<int> least;          ///< other counts have less than 5 % together
    std::optional<int> most;
};
/// What the strips of a batch tell of the weight of one.
struct CountBasis {
    maths::Mass mean{};                ///< of a strip, by the last weighing of each bin
    int mean_strips = 0;               ///< it comes from so many
    std::optional<StripSpread> spread; ///< of single strips; empty: none known
};
/// `soak` and `sealed` as in the wish. Refuses a batch or soak that is not there (not_found), and strips that were never
/// weighed (no_weigh_in).
Outcome<CountBasis> count_basis(const book::Workbook& workbook, BatchId batch, std::optional<SoakId> soak,
                                std::optional<maths::Day> sealed);
/// Sure at 95 %, else it cannot tell. `net`: contents without the bag; `packed`: as counted. Refuses either of zero or
/// less (fields net, packed), and a weight that is too large (field net).
Outcome<CountCheck> count_check(const CountBasis& basis, maths::Mass net, int packed);
/// Both in one, with the refusals of both.
Outcome<CountCheck> count_check(const book::Workbook& workbook, const CountWish& wish);
/// The same for a filled bag by its own net weight. Refuses not_filled, and missing (field net) when it was not
/// weighed.
Outcome<CountCheck> count_check(const book::Workbook& workbook, BagId bag);

} // namespace soakbook::work
