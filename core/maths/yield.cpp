// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/yield.h"

#include "core/maths/exact.h"

#include <algorithm>

namespace soakbook::maths {
namespace {

Unanswerable unfit(Mass m) {
    return m.count <= 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large;
}

/// What one bin takes for good: its strips' uptake and its drip.
Answer<Mass> taken_per_bin(const Soaking& soaking) {
    for (const Mass needed : {soaking.batch, soaking.uptake, soaking.flood})
        if (!is_amount(needed))
            return unexpected(unfit(needed));
    if (soaking.strips_per_bin < 1 || soaking.drip_per_bin.count < 0 || (soaking.bins && *soaking.bins < 0))
        return unexpected(Unanswerable::not_a_quantity);
    const Wide taken = static_cast<Wide>(soaking.uptake.count) * soaking.strips_per_bin + soaking.drip_per_bin.count;
    if (taken > heaviest.count)
        return unexpected(Unanswerable::too_large);
    if (taken > soaking.flood.count)
        return unexpected(Unanswerable::out_of_range);
    return Mass{static_cast<std::int64_t>(taken)};
}

Yield yield_of(const Soaking& soaking, std::int64_t bins, Mass taken, std::int64_t more_days) {
    return {bins, bins * soaking.strips_per_bin, soaking.batch - bins * taken, more_days};
}

} // namespace

Answer<std::int64_t> strips_by_mass(Mass batch, Mass uptake) {
    if (batch.count < 0 || uptake.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    return batch.count / uptake.count;
}

Answer<Mass> liquid_for_strips(std::int64_t strips, Mass uptake) {
    if (strips < 1 || uptake.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    const Wide liquid = static_cast<Wide>(strips) * uptake.count;
    if (liquid > heaviest.count)
        return unexpected(Unanswerable::too_large);
    return Mass{static_cast<std::int64_t>(liquid)};
}

Answer<Mass> most_left(Mass batch, std::int64_t strips, Mass uptake) {
    if (!is_amount(batch))
        return unexpected(unfit(batch));
    if (strips == 0)
        return batch;
    const auto taken = liquid_for_strips(strips, uptake);
    if (!taken)
        return taken;
    if (*taken > batch)
        return unexpected(Unanswerable::not_reached);
    return batch - *taken;
}

Answer<Yield> side_by_side(const Soaking& soaking) {
    const auto taken = taken_per_bin(soaking);
    if (!taken)
        return unexpected(taken.error());
    std::int64_t bins = soaking.batch.count / soaking.flood.count;
    if (soaking.bins)
        bins = std::min(bins, *soaking.bins);
    return yield_of(soaking, bins, *taken, 0);
}

Answer<Yield> one_after_another(const Soaking& soaking) {
    const auto taken = taken_per_bin(soaking);
    if (!taken)
        return unexpected(taken.error());
    if (soaking.batch < soaking.flood || (soaking.bins && *soaking.bins == 0))
        return yield_of(soaking, 0, *taken, 0);
    const std::int64_t bins = (soaking.batch - soaking.flood).count / taken->count + 1;
    return yield_of(soaking, bins, *taken, bins - 1);
}

} // namespace soakbook::maths
