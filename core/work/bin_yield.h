// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips a batch soaks with the bins there are, which must be flooded as well: all at once, or one bin after
// another.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <optional>

namespace soakbook::work {

/// What one way of soaking gives.
struct BinYield {
    int bins = 0; ///< fillings
    int strips = 0;
    maths::Mass most_left{}; ///< in pails at most: drips, heel and free liquid are still in it
    int more_days = 0;       ///< beyond the first
};
struct BinYields {
    int strips_per_bin = 0;
    maths::Mass flood{};  ///< that floods one bin, as measured
    maths::Mass uptake{}; ///< of one strip at its target
    BinYield side_by_side;
    /// Only if after each bin all the liquid goes back to the tank, is warmed, stirred clear, and that is logged.
    BinYield one_after_another;
};
/// For bins like that one, as many of them as there are. The flood mass is the one measured at its last soak, else the
/// one said for the bin; a bin without any, or of unknown size, gives no such figure. Nothing either for a batch of
/// nothing, or a flood that is less than what its strips take up.
std::optional<BinYields> bin_yields(const book::Workbook& workbook, VesselId bin, StripKindId kind, maths::Mass batch);

} // namespace soakbook::work
