// SPDX-License-Identifier: GPL-3.0-or-later
// What a sample of strips says: mean, spread and its interval, uptake, acid per strip, and the verdict against the
// target. Strips weighed together give a mean and nothing about their spread; strips weighed one by one give both.
// Source of the interval: mean +- t s / sqrt(n), NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace soakbook::maths {

constexpr Fraction usual_confidence{950'000}; ///< 95 %

/// From one number to another, both included, in the unit of whoever gives it.
struct Interval {
    double low = 0.0;
    double high = 0.0;

    constexpr bool operator==(const Interval&) const = default;
    constexpr bool contains(double x) const { return low <= x && x <= high; }
};

/// Mean of strips weighed together, to the nearest milligram. Refuses a mass of zero or less and no strips.
Answer<Mass> mean_together(Mass total, std::int64_t strips);

/// What strips weighed one by one come to, in grams.
struct Spread {
    std::int64_t strips = 0;
    double mean = 0.0;      ///< g
    double deviation = 0.0; ///< standard deviation of single strips (n - 1), g
    Interval interval;      ///< of the mean, g

    Mass mean_mass() const { return grams(mean); }
};
/// Refuses fewer than two strips (too_few), a weight of zero or less, a confidence outside 50 to 100 %.
Answer<Spread> spread_of(std::span<const Mass> one_by_one, Fraction confidence = usual_confidence);

/// What a strip took up: mean weight less dry weight. Refuses wet strips no heavier than dry ones, and no dry weight.
Answer<Mass> uptake(Mass mean, Mass dry);
/// Dihydrate in a strip: (mean - dry) x strength. Refuses as uptake, and a strength outside 0 to 1.
Answer<Mass> acid_per_strip(Mass mean, Mass dry, Fraction strength);

/// What to do with the strips.
enum class Verdict {
    on_target,
    light,      ///< soak on
    heavy,      ///< drain on
    weigh_more, ///< the interval lies across a limit: this sample cannot tell
};

/// Target weight of a strip, and how far off is still good. Both limits are good.
struct Target {
    Mass weight;
    Mass tolerance;

    constexpr Mass least() const { return weight - tolerance; }
    constexpr Mass most() const { return weight + tolerance; }
};

/// From the mean alone: strips weighed together have no interval. Refuses a mean or target of zero or less and a
/// negative tolerance.
Answer<Verdict> verdict_together(Mass mean, Target target);

/// The verdict on strips weighed one by one.
struct Judged {
    Verdict verdict = Verdict::weigh_more;
    Spread spread;
    /// With weigh_more: how many more of such strips would settle it if the mean and spread stay; none when the mean
    /// sits so near a limit that a thousand would not.
    std::optional<std::int64_t> more;
};
/// On target when the whole interval lies within the tolerance, light or heavy when the whole of it lies outside, else
/// weigh more. Refuses as spread_of and verdict_together.
Answer<Judged> judge_one_by_one(std::span<const Mass> one_by_one, Target target,
                                Fraction confidence = usual_confidence);

/// How many strips in all a sample needs so that its interval half-width is at most `half_width` grams, when single
/// strips spread by `deviation` grams. Refuses a spread or width not above zero, and not_reached beyond `most`.
Answer<std::int64_t> strips_to_weigh(double deviation, double half_width, Fraction confidence = usual_confidence,
                                     std::int64_t most = 1000);

} // namespace soakbook::maths
