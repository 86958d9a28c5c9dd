// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bagged_strips.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/soaks.h"

#include <algorithm>

namespace soakbook::work {

namespace {
Bagged count(const book::Workbook& workbook, BatchId batch, BagId without) {
    Bagged all;
    const auto soaks = book::soaks_of(workbook, batch);
    for (const book::Soak& soak : soaks) {
        all.soaked += soak.strips;
        all.by_soak[soak.id.value] = 0;
    }
    int from_any = 0;
    for (const book::Bag& bag : book::bags_of(workbook, batch)) {
        if (bag.void_reason || !bag.packed || bag.id == without)
            continue;
        all.bagged += *bag.packed;
        if (bag.soak)
            all.by_soak[bag.soak->value] += *bag.packed;
        else
            from_any += *bag.packed;
    }
    for (const book::Soak& soak : soaks) {
        const int fit = std::clamp(soak.strips - all.by_soak[soak.id.value], 0, from_any);
        all.by_soak[soak.id.value] += fit;
        from_any -= fit;
    }
    return all;
}
} // namespace

Bagged bagged_of(const book::Workbook& workbook, BatchId batch) {
    return count(workbook, batch, {});
}

int to_bag(const book::Workbook& workbook, BatchId batch, std::optional<SoakId> soak, BagId without) {
    const Bagged all = count(workbook, batch, without);
    if (!soak)
        return all.soaked - all.bagged;
    const auto one = book::fetch(workbook, *soak);
    if (!one)
        return 0;
    int named = 0;
    for (const book::Bag& bag : book::bags_of(workbook, batch))
        if (!bag.void_reason && bag.packed && bag.soak == *soak && bag.id != without)
            named += *bag.packed;
    // Bags that name no soak may have taken this one's strips already.
    return std::min(one->strips - named, all.soaked - all.bagged);
}

int least_strips_of(const book::Workbook& workbook, const book::Soak& soak) {
    const Bagged all = count(workbook, soak.batch, {});
    int named = 0;
    for (const book::Bag& bag : book::bags_of(workbook, soak.batch))
        if (!bag.void_reason && bag.packed && bag.soak == soak.id)
            named += *bag.packed;
    return std::max({1, named, soak.strips - (all.soaked - all.bagged)});
}

} // namespace soakbook::work
