// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/sampling.h"

#include "core/maths/distributions.h"
#include "core/maths/exact.h"

#include <algorithm>
#include <cmath>

namespace soakbook::maths {
namespace {

Unanswerable unfit(Mass m) {
    return m.count <= 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large;
}

std::optional<Unanswerable> unfit(const Target& target) {
    if (!is_amount(target.weight))
        return unfit(target.weight);
    if (!is_amount_or_none(target.tolerance))
        return target.tolerance.count < 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large;
    return std::nullopt;
}

/// Half-width of the interval of a mean of n strips.
Answer<double> half_width(double deviation, std::int64_t n, Fraction confidence) {
    const double tail = 0.5 + as_number(confidence) / 2.0;
    const auto t = student_quantile(tail, static_cast<double>(n - 1));
    if (!t)
        return unexpected(t.error());
    return *t * deviation / std::sqrt(static_cast<double>(n));
}

} // namespace

Answer<Mass> mean_together(Mass total, std::int64_t strips) {
    if (!is_amount(total))
        return unexpected(unfit(total));
    if (strips < 1)
        return unexpected(Unanswerable::not_a_quantity);
    return Mass{times_over(total.count, 1, strips)};
}

Answer<Spread> spread_of(std::span<const Mass> one_by_one, Fraction confidence) {
    if (!is_confidence(confidence))
        return unexpected(Unanswerable::out_of_range);
    Wide sum = 0;
    for (const Mass weight : one_by_one) {
        if (!is_amount(weight))
            return unexpected(unfit(weight));
        sum += weight.count;
    }
    if (one_by_one.size() < 2)
        return unexpected(Unanswerable::too_few);

    Spread spread;
    spread.strips = static_cast<std::int64_t>(one_by_one.size());
    const auto n = static_cast<double>(spread.strips);
    const double mean = static_cast<double>(sum) / n; // mg
    double squares = 0.0;
    for (const Mass weight : one_by_one) {
        const double off = static_cast<double>(weight.count) - mean;
        squares += off * off;
    }
    spread.mean = mean / 1e3;
    spread.deviation = std::sqrt(squares / (n - 1.0)) / 1e3;
    const auto half = half_width(spread.deviation, spread.strips, confidence);
    if (!half)
        return unexpected(half.error());
    spread.interval = {spread.mean - *half, spread.mean + *half};
    return spread;
}

Answer<Mass> uptake(Mass mean, Mass dry) {
    if (!is_amount(mean))
        return unexpected(unfit(mean));
    if (!is_amount(dry))
        return unexpected(unfit(dry));
    if (mean <= dry)
        return unexpected(Unanswerable::nothing_taken_up);
    return mean - dry;
}

Answer<Mass> acid_per_strip(Mass mean, Mass dry, Fraction strength) {
    if (!is_part(strength))
        return unexpected(Unanswerable::out_of_range);
    const auto taken = uptake(mean, dry);
    if (!taken)
        return taken;
    return Mass{times_over(taken->count, strength.count, 1'000'000)};
}

Answer<Verdict> verdict_together(Mass mean, Target target) {
    if (const auto why = unfit(target))
        return unexpected(*why);
    if (!is_amount(mean))
        return unexpected(unfit(mean));
    if (mean < target.least())
        return Verdict::light;
    return mean > target.most() ? Verdict::heavy : Verdict::on_target;
}

Answer<Judged> judge_one_by_one(std::span<const Mass> one_by_one, Target target, Fraction confidence) {
    if (const auto why = unfit(target))
        return unexpected(*why);
    const auto spread = spread_of(one_by_one, confidence);
    if (!spread)
        return unexpected(spread.error());
    const double least = in_grams(target.least());
    const double most = in_grams(target.most());
    Judged judged{Verdict::weigh_more, *spread, std::nullopt};
    if (spread->interval.high < least)
        judged.verdict = Verdict::light;
    else if (spread->interval.low > most)
        judged.verdict = Verdict::heavy;
    else if (spread->interval.low >= least && spread->interval.high <= most)
        judged.verdict = Verdict::on_target;
    else {
        const double room = std::min(std::abs(spread->mean - least), std::abs(spread->mean - most));
        const auto needed = strips_to_weigh(spread->deviation, room, confidence, 1000 + spread->strips);
        if (needed)
            judged.more = std::max<std::int64_t>(*needed - spread->strips, 1);
    }
    return judged;
}

Answer<std::int64_t> strips_to_weigh(double deviation, double wanted, Fraction confidence, std::int64_t most) {
    if (!std::isfinite(deviation) || !std::isfinite(wanted) || deviation <= 0.0 || wanted <= 0.0)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_confidence(confidence))
        return unexpected(Unanswerable::out_of_range);
    // The half-width falls with every further strip, so the first n that will do is found by halving.
    const auto enough = [&](std::int64_t n) {
        const auto half = half_width(deviation, n, confidence);
        return half && *half <= wanted;
    };
    std::int64_t low = 2;
    std::int64_t high = most;
    if (high < low || !enough(high))
        return unexpected(Unanswerable::not_reached);
    while (low < high) {
        const std::int64_t middle = low + (high - low) / 2;
        if (enough(middle))
            high = middle;
        else
            low = middle + 1;
    }
    return low;
}

} // namespace soakbook::maths
