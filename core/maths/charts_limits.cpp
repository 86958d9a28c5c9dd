// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/charts_limits.h"

#include <algorithm>
#include <cmath>

namespace soakbook::maths {
namespace {

constexpr std::size_t run_length = 8;

bool all_finite(std::span<const double> figures) {
    return std::all_of(figures.begin(), figures.end(),
                       [](double x) { return std::isfinite(x) && std::abs(x) < 1e150; });
}

} // namespace

Answer<IndividualsLimits> individuals_limits(std::span<const double> figures, double d2) {
    if (!all_finite(figures) || !std::isfinite(d2) || d2 <= 0.0)
        return unexpected(Unanswerable::not_a_quantity);
    if (figures.size() < 2)
        return unexpected(Unanswerable::too_few);
    IndividualsLimits limits;
    const auto n = static_cast<double>(figures.size());
    for (std::size_t i = 0; i < figures.size(); ++i) {
        limits.mean += figures[i] / n;
        if (i > 0)
            limits.mean_range += std::abs(figures[i] - figures[i - 1]) / (n - 1.0);
    }
    const double reach = 3.0 * limits.mean_range / d2;
    limits.lower = limits.mean - reach;
    limits.upper = limits.mean + reach;
    // D4 = 1 + 3 d3 / d2 with d3 = sqrt(2 - d2^2) for two readings.
    limits.range_upper = (1.0 + 3.0 * std::sqrt(2.0 - range_of_two * range_of_two) / range_of_two) * limits.mean_range;
    return limits;
}

Answer<SubgroupConstants> subgroup_constants(std::int64_t n) {
    if (n < 2 || n > 1000)
        return unexpected(n < 2 ? Unanswerable::too_few : Unanswerable::out_of_range);
    const auto size = static_cast<double>(n);
    // lgamma writes a global sign in C libraries; the quotient is built up by its recurrence instead.
    double c4 = n % 2 == 0 ? std::sqrt(2.0 / std::numbers::pi) : std::sqrt(std::numbers::pi) / 2.0;
    for (std::int64_t m = n % 2 == 0 ? 4 : 5; m <= n; m += 2) {
        const auto k = static_cast<double>(m);
        c4 *= std::sqrt((k - 3.0) / (k - 1.0)) * (k - 2.0) / (k - 3.0);
    }
    const double spread = 3.0 * std::sqrt(1.0 - c4 * c4) / c4;
    return SubgroupConstants{c4, 3.0 / (c4 * std::sqrt(size)), std::max(0.0, 1.0 - spread), 1.0 + spread};
}

Answer<SubgroupLimits> subgroup_limits(std::span<const Subgroup> subgroups, std::int64_t n) {
    const auto constants = subgroup_constants(n);
    if (!constants)
        return unexpected(constants.error());
    if (subgroups.size() < 2)
        return unexpected(Unanswerable::too_few);
    SubgroupLimits limits;
    for (const Subgroup& subgroup : subgroups) {
        if (!std::isfinite(subgroup.mean) || !std::isfinite(subgroup.deviation) || subgroup.deviation < 0.0)
            return unexpected(Unanswerable::not_a_quantity);
        limits.mean += subgroup.mean / static_cast<double>(subgroups.size());
        limits.mean_deviation += subgroup.deviation / static_cast<double>(subgroups.size());
    }
    limits.lower = limits.mean - constants->a3 * limits.mean_deviation;
    limits.upper = limits.mean + constants->a3 * limits.mean_deviation;
    limits.deviation_lower = constants->b3 * limits.mean_deviation;
    limits.deviation_upper = constants->b4 * limits.mean_deviation;
    if (!std::isfinite(limits.lower) || !std::isfinite(limits.upper) || !std::isfinite(limits.deviation_upper))
        return unexpected(Unanswerable::too_large);
    return limits;
}

Answer<std::vector<ChartMark>> chart_marks(std::span<const double> figures, double mean, double lower, double upper) {
    if (!all_finite(figures) || !(lower <= mean) || !(mean <= upper) || !std::isfinite(lower) || !std::isfinite(upper))
        return unexpected(Unanswerable::not_a_quantity);
    std::vector<ChartMark> marks;
    std::size_t run = 0;
    int side = 0;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const int now = figures[i] > mean ? 1 : figures[i] < mean ? -1 : 0;
        run = now == 0 ? 0 : now == side ? run + 1 : 1;
        side = now;
        if (figures[i] < lower || figures[i] > upper)
            marks.push_back({i, ChartSignal::outside});
        if (run >= run_length)
            marks.push_back({i, ChartSignal::run_of_eight});
    }
    return marks;
}

} // namespace soakbook::maths
