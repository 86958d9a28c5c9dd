// SPDX-License-Identifier: GPL-3.0-or-later
// A batch as a piece of work needs it, and the liquid that is in it. For core/work's own use.
#pragma once

#include "core/book/records/batch.h"
#include "core/maths/mixing.h"
#include "core/work/checks.h"

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// The batch; refuses one that is not there or void (not_found).
Outcome<book::Batch> batch_there(const book::Workbook& workbook, book::Id<book::Batch> id);
/// The same, and refuses a closed one.
Outcome<book::Batch> open_batch(const book::Workbook& workbook, book::Id<book::Batch> id);
/// The same, and refuses one that is only planned.
Outcome<book::Batch> mixed_batch(const book::Workbook& workbook, book::Id<book::Batch> id);

/// What was weighed in; nothing while the batch is planned.
maths::Mixture liquid_of(const book::Workbook& workbook, book::Id<book::Batch> id);
/// What was planned to go in.
maths::Mass planned_of(const book::Workbook& workbook, book::Id<book::Batch> id);
/// Liquid that is not spoken for: weighed in, less what all soaked strips hold at their target, pails and named losses.
maths::Mass not_spoken_for(const book::Workbook& workbook, book::Id<book::Batch> id);

/// How far a strength may be off and still be right: 0.1 per cent points. Common practice, no source.
constexpr maths::Fraction right_to = maths::ppm(1'000);
constexpr bool is_right(maths::Fraction got, maths::Fraction wanted) {
    const maths::Fraction off = got - wanted;
    return off <= right_to && -off <= right_to;
}

} // namespace soakbook::work
