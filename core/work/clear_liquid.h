// SPDX-License-Identifier: GPL-3.0-or-later
// When a batch's liquid was seen clear. For core/work's own use.
#pragma once

#include "core/book/records/batch.h"
#include "core/maths/quantities.h"

#include <optional>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// The moment from which the liquid is known to be clear at `by`: the first of the last unbroken run of stirs that saw
/// it clear, since it was mixed and since the last bin was emptied back. Nothing when it is not.
std::optional<maths::Instant> clear_since(const book::Workbook& workbook, const book::Batch& batch,
                                          std::optional<maths::Instant> by = std::nullopt);

} // namespace soakbook::work
