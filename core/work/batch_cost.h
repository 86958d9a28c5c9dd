// SPDX-License-Identifier: GPL-3.0-or-later
// What a strip of a batch costs, by what the cost comes from. Leftovers carry their cost into the pail and on into the
// batch that takes it, through any depth.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// A delivery without a cost, or a use of no delivery that was written down.
struct MissingCost {
    std::optional<LotId> lot; ///< empty: nobody wrote down which lot it was
    QString name;
    MaterialKind material{};
    QString batch_code; ///< where it went in: this batch, or one that a pail came from
};
/// What a pail of the batch carries on.
struct PailCost {
    PailId pail;
    QString code;
    maths::Mass mass{};
    std::optional<maths::Money> cost;
};
struct BatchCost {
    BatchId batch;
    QString code;
    bool closed = false; ///< an open batch's cost is as it stands: what is still soaking is not in it
    int strips = 0;      ///< in bags
    int bags = 0;
    // of all strips in bags; each empty while a cost behind it is missing
    std::optional<maths::Money> acid;
    std::optional<maths::Money> glycerine;
    std::optional<maths::Money> carried; ///< by whole pails that went in
    std::optional<maths::Money> dry_strips;
    std::optional<maths::Money> bag_cost;
    std::optional<maths::Money> total; ///< only when nothing is missing and strips are in bags
    std::optional<maths::Money> each;  ///< one strip
    std::vector<PailCost> pails;
    std::optional<maths::Money> still_in_work; ///< liquid of an open batch that is neither in bags nor in pails
    std::vector<MissingCost> missing;
};
/// Liquid is shared over bags and pails by mass; drips, heel and losses are borne by them. A pail that was thrown away
/// keeps its cost. Source: common practice, no source (core/maths/cost.h). Refuses a batch that is not there or not
/// mixed.
Outcome<BatchCost> batch_cost(const book::Workbook& workbook, BatchId batch);

} // namespace soakbook::work
