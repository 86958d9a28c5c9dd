// SPDX-License-Identifier: GPL-3.0-or-later
// Batch to batch: limits of a control chart and what stands out on it.
// Sources: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (individuals) and 6.3.2.1 (X-bar and s); constants
// as in ASTM E2587 and Montgomery, Introduction to Statistical Quality Control, appendix VI; runs of eight: Western
// Electric rules.
#pragma once

#include "core/maths/result.h"

#include <cstdint>
#include <numbers>
#include <span>
#include <vector>

namespace soakbook::maths {

/// Mean range of two normal readings, 2 / sqrt(pi).
constexpr double range_of_two = 2.0 * std::numbers::inv_sqrtpi;

/// Limits for single figures, one a batch, in the figures' own unit.
struct IndividualsLimits {
    double mean = 0.0;
    double mean_range = 0.0; ///< of the moving range of two
    double lower = 0.0;      ///< mean - 3 range / d2
    double upper = 0.0;
    double range_upper = 0.0; ///< limit of the moving range
};
/// `d2` is the constant for two readings; handbooks round it to 1.128. Refuses fewer than two figures and what is not
/// finite.
Answer<IndividualsLimits> individuals_limits(std::span<const double> figures, double d2 = range_of_two);

/// Constants of the X-bar and s charts for subgroups of n.
struct SubgroupConstants {
    double c4 = 0.0;
    double a3 = 0.0;
    double b3 = 0.0;
    double b4 = 0.0;
};
/// Refuses subgroups of fewer than 2 and more than 1000.
Answer<SubgroupConstants> subgroup_constants(std::int64_t n);

/// One batch of which several strips were weighed one by one.
struct Subgroup {
    double mean = 0.0;
    double deviation = 0.0;
};
struct SubgroupLimits {
    double mean = 0.0;
    double lower = 0.0;
    double upper = 0.0;
    double mean_deviation = 0.0;
    double deviation_lower = 0.0;
    double deviation_upper = 0.0;
};
/// Limits for subgroups that all have n strips. Refuses fewer than two subgroups, n as above, negative deviations.
Answer<SubgroupLimits> subgroup_limits(std::span<const Subgroup> subgroups, std::int64_t n);

enum class ChartSignal {
    outside,      ///< beyond a limit
    run_of_eight, ///< the eighth or later in a row on one side of the mean
};
struct ChartMark {
    std::size_t index = 0;
    ChartSignal signal = ChartSignal::outside;

    constexpr bool operator==(const ChartMark&) const = default;
};
/// What stands out; a figure on the mean ends a run. Refuses limits that are not finite or crossed, and figures that
/// are not finite.
Answer<std::vector<ChartMark>> chart_marks(std::span<const double> figures, double mean, double lower, double upper);

} // namespace soakbook::maths
