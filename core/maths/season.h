// SPDX-License-Identifier: GPL-3.0-or-later
// A season: what the rounds need, which bags serve it, what is short, which batches make up for it, when each must
// start at the latest, and what to buy. What is already too late is said first. Source: common practice, no source; the
// days by keeping.h, the amounts by mixing.h.
#pragma once

#include "core/maths/mixing.h"
#include "core/maths/quantities.h"
#include "core/maths/result.h"
#include "core/maths/stock_use.h"
#include "core/maths/workshop_queue.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace soakbook::maths {

struct SeasonQuestion {
    Day today{};
    std::span<const StripNeed> needs;
    std::span<const StockBag> bags;
    Workshop workshop;
    std::int64_t keeps_months = 0; ///< from bagging
    Mass uptake;                   ///< of a strip
    std::optional<Mass> flood;     ///< liquid that floods one bin; none: only what strips take up is reckoned
    Fraction strength;
    Fraction assay;
};
/// A batch to be made.
struct PlannedBatch {
    BatchDays days; ///< days.start is the last day to start, or the first possible one when `late`
    std::int64_t strips = 0;
    Mass liquid;
    std::vector<Missing> serves; ///< needs by their place, and the strips they get of it
    bool late = false;           ///< too late for some of what it serves
};
/// Strips that cannot be there in time.
struct TooLate {
    std::size_t need = 0;
    std::int64_t strips = 0;
    Day last_start{};           ///< when it would have had to start
    std::optional<Day> ready{}; ///< when they can be there instead; none: not within two years
};
struct SeasonPlan {
    std::vector<TooLate> too_late; ///< by day of need
    StockUse stock;
    std::vector<PlannedBatch> batches; ///< by start
    Amounts material;                  ///< acid and glycerine for all batches
    std::int64_t dry_strips = 0;
};
/// Batches are as large as the workshop takes and start as late as they can, the last need first; strips of one serve
/// only needs on which they are still in date. Refuses: as WorkshopQueue, use_stock and amounts_from_total; no months
/// to keep; needs more than twenty years from today (out_of_range), more than ten million strips (too_large).
Answer<SeasonPlan> plan_season(const SeasonQuestion& question);

/// How many containers of `each` have to be bought when so much is at hand. Refuses negative amounts and an empty
/// container.
Answer<std::int64_t> containers_to_buy(Mass needed, Mass at_hand, Mass each);

} // namespace soakbook::maths
