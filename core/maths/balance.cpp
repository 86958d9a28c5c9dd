// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/balance.h"

#include "core/maths/exact.h"

namespace soakbook::maths {

Answer<Mass> liquid_in_bag(Mass net_at_sealing, std::int64_t strips, Mass dry) {
    if (net_at_sealing.count <= 0 || strips < 1 || dry.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (net_at_sealing > heaviest)
        return unexpected(Unanswerable::too_large);
    const Wide dry_strips = static_cast<Wide>(strips) * dry.count;
    if (dry_strips >= net_at_sealing.count)
        return unexpected(Unanswerable::nothing_taken_up);
    return Mass{net_at_sealing.count - static_cast<std::int64_t>(dry_strips)};
}

Answer<Balance> balance_of(const BatchFlow& flow, Fraction limit) {
    if (!is_part(limit))
        return unexpected(Unanswerable::out_of_range);
    if (flow.went_in.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    for (const Mass part : {flow.went_in, flow.in_bags, flow.in_pails, flow.drips, flow.heel}) {
        if (part.count < 0)
            return unexpected(Unanswerable::not_a_quantity);
        if (part > heaviest)
            return unexpected(Unanswerable::too_large);
    }
    Balance balance;
    balance.accounted = flow.in_bags + flow.in_pails + flow.drips + flow.heel;
    balance.unexplained = flow.went_in - balance.accounted;
    const Wide parts = static_cast<Wide>(balance.unexplained.count) * 1'000'000;
    const Wide of_input = rounded_ratio(parts, flow.went_in.count);
    if (of_input < -1'000'000'000'000'000)
        return unexpected(Unanswerable::too_large);
    balance.of_input = Fraction{static_cast<std::int64_t>(of_input)};
    const Wide size = parts < 0 ? -parts : parts;
    balance.beyond_limit = size > static_cast<Wide>(limit.count) * flow.went_in.count;
    return balance;
}

} // namespace soakbook::maths
