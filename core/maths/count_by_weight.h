// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips lie in a bag, from its weight, and how sure that is. It needs the spread of single strips, learned
// from one-by-one weighings of that kind and lot; without one it cannot tell. Source: Bayes' rule with every count
// equally likely beforehand; n strips weigh n times the mean, with variance n s^2 + n^2 s^2 / m when the mean comes
// from m strips; Student's t with the degrees of freedom of s.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"
#include "core/maths/sampling.h"

#include <cstdint>
#include <optional>
#include <span>

namespace soakbook::maths {

/// The spread of single strips, pooled over weighings.
struct KnownSpread {
    double deviation = 0.0;   ///< standard deviation of single strips, g
    std::int64_t degrees = 0; ///< degrees of freedom behind it
};
/// Pooled over samples that may differ in their means: `sqrt(sum (n_i - 1) s_i^2 / sum (n_i - 1))`. Refuses
/// no_spread_known when there is no sample, or no two strips differ.
Answer<KnownSpread> pooled_spread(std::span<const Spread> samples);

/// The mean strip of this bag's batch, and how many strips it comes from (together or one by one).
struct KnownMean {
    Mass mean;
    std::int64_t strips = 0;
};

/// What the weight says.
struct CountEstimate {
    std::int64_t likeliest = 0;
    double sureness = 0.0;  ///< probability of the likeliest count, 0 to 1
    std::int64_t least = 0; ///< counts outside least to most have less than 5 % together
    std::int64_t most = 0;
};
/// Refuses: amounts of zero or less, no_spread_known without a spread, more than 100 000 strips.
Answer<CountEstimate> count_by_weight(Mass net, KnownMean mean, const std::optional<KnownSpread>& spread);

enum class CountVerdict { as_packed, fewer, more, cannot_tell };
/// Against the number packed: sure at `needed` (95 %), else cannot_tell. Without a spread: cannot_tell. Refuses amounts
/// and counts of zero or less.
Answer<CountVerdict> count_verdict(Mass net, std::int64_t packed, KnownMean mean,
                                   const std::optional<KnownSpread>& spread, Fraction needed = usual_confidence);

/// A mean of strips weighed together, judged with a spread known from elsewhere.
struct JudgedTogether {
    Verdict verdict = Verdict::weigh_more;
    Interval interval;                ///< of the mean, g
    std::optional<std::int64_t> more; ///< with weigh_more: how many more to weigh; none when a thousand would not do
};
/// As judge_one_by_one, with t of the spread's degrees. Refuses no_spread_known, and as verdict_together.
Answer<JudgedTogether> judge_together(KnownMean mean, Target target, const std::optional<KnownSpread>& spread,
                                      Fraction confidence = usual_confidence);

} // namespace soakbook::maths
