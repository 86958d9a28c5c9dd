// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/sharing.h"

#include "core/maths/exact.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace soakbook::maths {

Answer<std::vector<std::int64_t>> share_out_count(std::int64_t total, std::span<const std::int64_t> weights) {
    if (weights.empty())
        return unexpected(Unanswerable::not_a_quantity);
    if (weights.size() > 10'000'000 || total == std::numeric_limits<std::int64_t>::min())
        return unexpected(Unanswerable::too_large);
    Wide sum = 0;
    for (const std::int64_t weight : weights) {
        if (weight < 0)
            return unexpected(Unanswerable::not_a_quantity);
        sum += weight;
    }
    if (sum == 0)
        return unexpected(Unanswerable::zero_below_the_line);

    const std::int64_t sign = total < 0 ? -1 : 1;
    const Wide whole = static_cast<Wide>(total) * sign;
    std::vector<std::int64_t> parts(weights.size());
    std::vector<Wide> remainders(weights.size());
    Wide left = whole;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Wide exact = whole * weights[i];
        parts[i] = static_cast<std::int64_t>(exact / sum);
        remainders[i] = exact % sum;
        left -= parts[i];
    }
    std::vector<std::size_t> order(weights.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&remainders](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
    for (std::size_t i = 0; left > 0; ++i, --left)
        ++parts[order[i]];
    for (std::int64_t& part : parts)
        part *= sign;
    return parts;
}

} // namespace soakbook::maths
