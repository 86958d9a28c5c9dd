// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/clear_liquid.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/soaks.h"

namespace soakbook::work {

std::optional<maths::Instant> clear_since(const book::Workbook& workbook, const book::Batch& batch,
                                          std::optional<maths::Instant> by) {
    if (!batch.mixed)
        return std::nullopt;
    maths::Instant earliest = *batch.mixed;
    if (by)
        for (const book::Soak& soak : book::soaks_of(workbook, batch.id))
            if (soak.ended && !(*by < *soak.ended) && earliest < *soak.ended)
                earliest = *soak.ended;
    std::optional<maths::Instant> since;
    for (const book::Stir& stir : book::stirs_of(workbook, batch.id)) {
        if (stir.at < earliest || (by && *by < stir.at))
            continue;
        if (!stir.clear)
            since.reset();
        else if (!since)
            since = stir.at;
    }
    return since;
}

} // namespace soakbook::work
