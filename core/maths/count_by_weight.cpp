// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/count_by_weight.h"

#include "core/maths/distributions.h"
#include "core/maths/exact.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace soakbook::maths {
namespace {

constexpr std::int64_t most_strips = 100'000;

bool is_known(const std::optional<KnownSpread>& spread) {
    return spread && std::isfinite(spread->deviation) && spread->deviation > 0.0 && spread->degrees >= 1;
}

/// Logarithm of how well n strips explain the weight, up to a constant.
double log_likelihood(std::int64_t n, double net, double mean, double mean_strips, const KnownSpread& spread) {
    const auto count = static_cast<double>(n);
    const double variance = spread.deviation * spread.deviation * (count + count * count / mean_strips);
    const double off = net - count * mean;
    const auto degrees = static_cast<double>(spread.degrees);
    return -0.5 * std::log(variance) - 0.5 * (degrees + 1.0) * std::log1p(off * off / (variance * degrees));
}

} // namespace

Answer<KnownSpread> pooled_spread(std::span<const Spread> samples) {
    double squares = 0.0;
    KnownSpread pooled;
    for (const Spread& sample : samples) {
        if (sample.strips < 2 || !std::isfinite(sample.deviation) || sample.deviation < 0.0)
            return unexpected(Unanswerable::not_a_quantity);
        squares += static_cast<double>(sample.strips - 1) * sample.deviation * sample.deviation;
        pooled.degrees += sample.strips - 1;
    }
    if (!(squares > 0.0))
        return unexpected(Unanswerable::no_spread_known);
    pooled.deviation = std::sqrt(squares / static_cast<double>(pooled.degrees));
    return pooled;
}

Answer<CountEstimate> count_by_weight(Mass net, KnownMean mean, const std::optional<KnownSpread>& spread) {
    if (net.count <= 0 || mean.mean.count <= 0 || mean.strips < 1)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_known(spread))
        return unexpected(Unanswerable::no_spread_known);
    const std::int64_t middle = times_over(net.count, 1, mean.mean.count);
    if (middle > most_strips || net > heaviest)
        return unexpected(Unanswerable::too_large);
    // Far enough to both sides that nothing of weight is left out even with a heavy-tailed spread.
    const auto count = static_cast<double>(std::max<std::int64_t>(middle, 1));
    const double reach = spread->deviation * std::sqrt(count + count * count / static_cast<double>(mean.strips));
    const double strips = std::min(20.0 + 40.0 * reach / in_grams(mean.mean), 1e5);
    const std::int64_t first = std::max<std::int64_t>(1, middle - static_cast<std::int64_t>(strips));
    const std::int64_t last = std::max<std::int64_t>(1, middle) + static_cast<std::int64_t>(strips);

    std::vector<double> weights;
    for (std::int64_t n = first; n <= last; ++n)
        weights.push_back(
            log_likelihood(n, in_grams(net), in_grams(mean.mean), static_cast<double>(mean.strips), *spread));
    const double highest = *std::max_element(weights.begin(), weights.end());
    double sum = 0.0;
    for (double& weight : weights) {
        weight = std::exp(weight - highest);
        sum += weight;
    }
    CountEstimate estimate;
    const auto best = std::max_element(weights.begin(), weights.end());
    estimate.likeliest = first + (best - weights.begin());
    estimate.sureness = *best / sum;
    // Grow to the likelier side until 95 % lies within.
    auto low = best;
    auto high = best;
    double within = *best;
    while (within < 0.95 * sum) {
        const double below = low != weights.begin() ? *(low - 1) : -1.0;
        const double above = high + 1 != weights.end() ? *(high + 1) : -1.0;
        within += std::max(below, above);
        if (above >= below)
            ++high;
        else
            --low;
    }
    estimate.least = first + (low - weights.begin());
    estimate.most = first + (high - weights.begin());
    return estimate;
}

Answer<CountVerdict> count_verdict(Mass net, std::int64_t packed, KnownMean mean,
                                   const std::optional<KnownSpread>& spread, Fraction needed) {
    if (packed < 1)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_confidence(needed))
        return unexpected(Unanswerable::out_of_range);
    const auto estimate = count_by_weight(net, mean, spread);
    if (!estimate)
        return estimate.error() == Unanswerable::no_spread_known ? Answer<CountVerdict>(CountVerdict::cannot_tell)
                                                                 : unexpected(estimate.error());
    if (estimate->sureness < as_number(needed))
        return CountVerdict::cannot_tell;
    if (estimate->likeliest == packed)
        return CountVerdict::as_packed;
    return estimate->likeliest < packed ? CountVerdict::fewer : CountVerdict::more;
}

Answer<JudgedTogether> judge_together(KnownMean mean, Target target, const std::optional<KnownSpread>& spread,
                                      Fraction confidence) {
    const auto by_mean = verdict_together(mean.mean, target);
    if (!by_mean)
        return unexpected(by_mean.error());
    if (mean.strips < 1)
        return unexpected(Unanswerable::not_a_quantity);
    if (!is_known(spread))
        return unexpected(Unanswerable::no_spread_known);
    if (!is_confidence(confidence))
        return unexpected(Unanswerable::out_of_range);
    const auto t = student_quantile(0.5 + as_number(confidence) / 2.0, static_cast<double>(spread->degrees));
    if (!t)
        return unexpected(t.error());
    const double middle = in_grams(mean.mean);
    const double half = *t * spread->deviation / std::sqrt(static_cast<double>(mean.strips));
    JudgedTogether judged;
    judged.interval = {middle - half, middle + half};
    const double least = in_grams(target.least());
    const double most = in_grams(target.most());
    const bool straddles_least = judged.interval.low < least && judged.interval.high >= least;
    const bool straddles_most = judged.interval.high > most && judged.interval.low <= most;
    if (!straddles_least && !straddles_most) {
        judged.verdict = *by_mean;
        return judged;
    }
    const double room = std::min(std::abs(middle - least), std::abs(middle - most));
    const double needed = room > 0.0 ? std::ceil(std::pow(*t * spread->deviation / room, 2.0)) : 1e9;
    if (needed - static_cast<double>(mean.strips) <= 1000.0)
        judged.more = std::max<std::int64_t>(1, static_cast<std::int64_t>(needed) - mean.strips);
    return judged;
}

} // namespace soakbook::maths
