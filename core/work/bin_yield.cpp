// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bin_yield.h"

#include "core/book/queries/soaks.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/maths/sampling.h"
#include "core/maths/yield.h"

#include <algorithm>

namespace soakbook::work {

namespace {

std::optional<maths::Mass> flood_of(const book::Workbook& workbook, const book::Vessel& bin) {
    const auto soak = book::last_flooded_soak(workbook, bin.id);
    return soak ? soak->flood : bin.flood;
}

/// Bins in use that hold as many strips.
std::int64_t bins_like(const book::Workbook& workbook, const book::Vessel& bin) {
    const std::vector<book::Vessel> all = book::fetch_all<book::Vessel>(workbook);
    return std::count_if(all.begin(), all.end(), [&bin](const book::Vessel& other) {
        return other.active && other.kind == book::VesselKind::bin && other.strips_held == bin.strips_held;
    });
}

BinYield as_bin_yield(const maths::Yield& yield) {
    return {static_cast<int>(yield.bins), static_cast<int>(yield.strips), yield.left,
            static_cast<int>(yield.more_days)};
}

} // namespace

std::optional<BinYields> bin_yields(const book::Workbook& workbook, VesselId id, StripKindId kind_id,
                                    maths::Mass batch) {
    const auto bin = book::fetch(workbook, id);
    const auto kind = book::fetch(workbook, kind_id);
    if (!bin || !kind || bin->kind != book::VesselKind::bin || !bin->strips_held)
        return std::nullopt;
    const auto flood = flood_of(workbook, *bin);
    const auto taken = maths::uptake(kind->target, kind->dry);
    if (!flood || !taken)
        return std::nullopt;
    maths::Soaking soaking;
    soaking.batch = batch;
    soaking.uptake = *taken;
    soaking.strips_per_bin = *bin->strips_held;
    soaking.flood = *flood;
    // One bin after another is the same bin again, however many there are.
    const auto in_turn = maths::one_after_another(soaking);
    soaking.bins = std::max<std::int64_t>(bins_like(workbook, *bin), 1);
    const auto at_once = maths::side_by_side(soaking);
    if (!in_turn || !at_once)
        return std::nullopt;
    return BinYields{*bin->strips_held, *flood, *taken, as_bin_yield(*at_once), as_bin_yield(*in_turn)};
}

} // namespace soakbook::work
