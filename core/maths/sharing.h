// SPDX-License-Identifier: GPL-3.0-or-later
// How a whole is shared out so that the parts add up to it exactly: each gets its share rounded down, and what is left
// over goes one unit each to the largest remainders, the first of equals first (the method of largest remainders).
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <span>
#include <vector>

namespace soakbook::maths {

/// `total` over weights, in whole units. A negative total gives negative parts. Refuses: no weights, a negative weight,
/// weights that are all zero, more than ten million weights.
Answer<std::vector<std::int64_t>> share_out_count(std::int64_t total, std::span<const std::int64_t> weights);

/// Any quantity over weights (strips in each bag, say). Refuses as above.
template <class Tag>
Answer<std::vector<Quantity<Tag>>> share_out(Quantity<Tag> total, std::span<const std::int64_t> weights) {
    const auto counts = share_out_count(total.count, weights);
    if (!counts)
        return unexpected(counts.error());
    std::vector<Quantity<Tag>> parts;
    parts.reserve(counts->size());
    for (const std::int64_t count : *counts)
        parts.push_back({count});
    return parts;
}

/// Any quantity over `n` equal shares. Refuses n below 1 and above ten million.
template <class Tag> Answer<std::vector<Quantity<Tag>>> share_out(Quantity<Tag> total, std::int64_t n) {
    if (n < 1)
        return unexpected(Unanswerable::not_a_quantity);
    if (n > 10'000'000)
        return unexpected(Unanswerable::too_large);
    const std::vector<std::int64_t> equal(static_cast<std::size_t>(n), 1);
    return share_out(total, std::span<const std::int64_t>(equal));
}

} // namespace soakbook::maths
