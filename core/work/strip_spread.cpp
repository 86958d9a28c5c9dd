// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strip_spread.h"

#include "core/book/queries/soaks.h"
#include "core/maths/count_by_weight.h"

#include <vector>

namespace soakbook::work {

std::optional<StripSpread> known_spread(const book::Workbook& workbook, StripKindId kind, std::optional<LotId> lot) {
    StripSpread known;
    std::vector<maths::Spread> samples;
    for (const std::vector<maths::Mass>& one_by_one : book::single_masses_of_kind(workbook, kind, lot))
        if (const auto spread = maths::spread_of(one_by_one)) {
            samples.push_back(*spread);
            known.strips += static_cast<int>(spread->strips);
        }
    const auto pooled = maths::pooled_spread(samples);
    if (!pooled)
        return std::nullopt;
    known.deviation = pooled->deviation;
    known.degrees = static_cast<int>(pooled->degrees);
    known.weighings = static_cast<int>(samples.size());
    return known;
}

} // namespace soakbook::work
