// SPDX-License-Identifier: GPL-3.0-or-later
// What every bag of one filling has in common, and the bags themselves. For core/work's own use.
#pragma once

#include "core/book/records/bag.h"
#include "core/book/records/strip_kind.h"
#include "core/work/bag.h"
#include "core/work/weigh_sums.h"

namespace soakbook::book {
class Writing;
}

namespace soakbook::work {

struct Filling {
    book::Batch batch;
    book::StripKind kind;
    std::optional<SoakId> soak;
    StripWeights weights;
    maths::Day sealed{};
    std::optional<int> rest_days;
    std::optional<maths::Day> rest_until;
    int use_months = 0;
    maths::Day use_by{};
};
/// Looks up the batch, its last weighings and the rules of Set-up. Refuses a day before its soak began.
Outcome<Filling> filling_of(const book::Workbook& workbook, BatchId batch, std::optional<SoakId> soak,
                            std::optional<maths::Day> sealed, const book::Doing& doing, const Confirmed& confirmed);
/// Rest and limit from the day sealed by the rules copied in.
Not date_bag(Filling& filling);
/// Asks about strips that were not weighed, or were light at the last weighing.
Not not_weighed_well(const Filling& filling, const Confirmed& confirmed);
/// Refuses a net weight under that of the dry strips; asks for one a tenth off count times mean.
Not odd_net(const Filling& filling, int strips, std::optional<maths::Mass> net, const QString& field,
            const Confirmed& confirmed);
/// Puts strips and everything that is copied into a bag.
void fill(book::Bag& bag, const Filling& filling, int strips, std::optional<maths::Mass> net);
/// What the form shows.
BagFigures figures_of(const book::Workbook& workbook, const Filling& filling, int bags, int strips, int last_bag,
                      int per_bag);
/// Soaks of which every strip is bagged are out of their bins.
void end_bagged_soaks(book::Writing& writing, const Filling& filling);

} // namespace soakbook::work
