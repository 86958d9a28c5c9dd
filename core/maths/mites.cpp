// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/mites.h"

#include "core/maths/distributions.h"
#include "core/maths/exact.h"

#include <algorithm>
#include <cmath>

namespace soakbook::maths {
namespace {

bool is_count(double x) {
    return std::isfinite(x) && x >= 0.0;
}

Answer<double> finite(double x) {
    if (!std::isfinite(x))
        return unexpected(Unanswerable::out_of_range);
    return x;
}

Answer<double> checked_rate(std::int64_t mites, std::int64_t bees, Fraction confidence) {
    if (!is_confidence(confidence) || mites > bees)
        return unexpected(Unanswerable::out_of_range);
    return mite_rate(mites, bees);
}

} // namespace

Answer<double> mite_rate(std::int64_t mites, std::int64_t bees) {
    if (mites < 0 || bees < 1)
        return unexpected(Unanswerable::not_a_quantity);
    return static_cast<double>(mites) / static_cast<double>(bees);
}

Answer<Interval> mite_rate_wilson(std::int64_t mites, std::int64_t bees, Fraction confidence) {
    const auto rate = checked_rate(mites, bees, confidence);
    if (!rate)
        return unexpected(rate.error());
    const auto z = normal_quantile(0.5 + as_number(confidence) / 2.0);
    if (!z)
        return unexpected(z.error());
    const auto n = static_cast<double>(bees);
    const double z2 = *z * *z;
    const double middle = *rate + z2 / (2.0 * n);
    const double reach = *z * std::sqrt(*rate * (1.0 - *rate) / n + z2 / (4.0 * n * n));
    const double below = 1.0 + z2 / n;
    // Rounding must not push an end past the rate itself, nor a bound of 0 or 1 off it.
    const double low = mites == 0 ? 0.0 : std::clamp((middle - reach) / below, 0.0, *rate);
    const double high = mites == bees ? 1.0 : std::clamp((middle + reach) / below, *rate, 1.0);
    return Interval{low, high};
}

Answer<Interval> mite_rate_exact(std::int64_t mites, std::int64_t bees, Fraction confidence) {
    const auto rate = checked_rate(mites, bees, confidence);
    if (!rate)
        return unexpected(rate.error());
    const double tail = (1.0 - as_number(confidence)) / 2.0;
    const auto x = static_cast<double>(mites);
    const auto n = static_cast<double>(bees);
    Interval interval{0.0, 1.0};
    if (mites > 0) {
        const auto low = beta_quantile(tail, x, n - x + 1.0);
        if (!low)
            return unexpected(low.error());
        interval.low = std::clamp(*low, 0.0, *rate);
    }
    if (mites < bees) {
        const auto high = beta_quantile(1.0 - tail, x + 1.0, n - x);
        if (!high)
            return unexpected(high.error());
        interval.high = std::clamp(*high, *rate, 1.0);
    }
    return interval;
}

Answer<double> natural_drop(std::int64_t mites, double days) {
    if (mites < 0 || !std::isfinite(days) || days <= 0.0)
        return unexpected(Unanswerable::not_a_quantity);
    return finite(static_cast<double>(mites) / days);
}

Answer<AgainstThreshold> against_threshold(Interval rate, double threshold) {
    if (!is_count(rate.low) || !is_count(rate.high) || !is_count(threshold) || rate.low > rate.high)
        return unexpected(Unanswerable::not_a_quantity);
    if (rate.high < threshold)
        return AgainstThreshold::below;
    return rate.low > threshold ? AgainstThreshold::above : AgainstThreshold::cannot_tell;
}

Answer<double> henderson_tilton(BeforeAfter treated, BeforeAfter untreated) {
    for (const double count : {treated.before, treated.after, untreated.before, untreated.after})
        if (!is_count(count))
            return unexpected(Unanswerable::not_a_quantity);
    if (treated.before == 0.0 || untreated.before == 0.0 || untreated.after == 0.0)
        return unexpected(Unanswerable::zero_below_the_line);
    return finite(1.0 - (treated.after / treated.before) * (untreated.before / untreated.after));
}

Answer<double> abbott(double untreated, double treated) {
    if (!is_count(untreated) || !is_count(treated))
        return unexpected(Unanswerable::not_a_quantity);
    if (untreated == 0.0)
        return unexpected(Unanswerable::zero_below_the_line);
    return finite((untreated - treated) / untreated);
}

Answer<double> fall_without_control(BeforeAfter treated) {
    return abbott(treated.before, treated.after);
}

} // namespace soakbook::maths
