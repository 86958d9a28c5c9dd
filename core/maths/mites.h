// SPDX-License-Identifier: GPL-3.0-or-later
// How many mites there are, how sure that is, and what changed. Rates are mites over bees of one sample.
// Sources: Dietemann et al. 2013, J. Apic. Res. 52(1) (COLOSS BEEBOOK) for the wash; Newcombe 1998, Stat. Med. 17:857
// for Wilson's interval; Clopper & Pearson 1934, Biometrika 26:404; Henderson & Tilton 1955, J. Econ. Entomol. 48:157;
// Abbott 1925, J. Econ. Entomol. 18:265.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"
#include "core/maths/sampling.h"

#include <cstdint>

namespace soakbook::maths {

/// Mites over bees: 0.03 is three on a hundred. May be above 1. Refuses negative mites and no bees.
Answer<double> mite_rate(std::int64_t mites, std::int64_t bees);
/// Wilson's score interval of the rate. Refuses as mite_rate, more mites than bees, and a confidence outside 50 to 100
/// %.
Answer<Interval> mite_rate_wilson(std::int64_t mites, std::int64_t bees, Fraction confidence = usual_confidence);
/// The exact interval of Clopper and Pearson, wider. Refuses as mite_rate_wilson.
Answer<Interval> mite_rate_exact(std::int64_t mites, std::int64_t bees, Fraction confidence = usual_confidence);
/// Mites a day on the board. Refuses negative mites and no days.
Answer<double> natural_drop(std::int64_t mites, double days);

enum class AgainstThreshold { below, above, cannot_tell };
/// Against the user's threshold: cannot_tell while the interval holds the threshold. Refuses what is not finite or
/// negative.
Answer<AgainstThreshold> against_threshold(Interval rate, double threshold);

/// Mites before and after, as counts, rates or drops; all four in the same measure.
struct BeforeAfter {
    double before = 0.0;
    double after = 0.0;
};
/// Henderson & Tilton: `1 - (Ta Cb) / (Tb Ca)`, the part that the treatment took away beyond what untreated hives did
/// by themselves. Below zero when treated hives fared worse. Refuses negative or not finite figures, and
/// zero_below_the_line when the treated had none before, or the untreated had none before or after.
Answer<double> henderson_tilton(BeforeAfter treated, BeforeAfter untreated);
/// Abbott: `(X - Y) / X`, X untreated and Y treated, both counted after. Refuses as above.
Answer<double> abbott(double untreated, double treated);
/// Without untreated hives it is a change, not an efficacy: `(before - after) / before`. Refuses as above.
Answer<double> fall_without_control(BeforeAfter treated);

} // namespace soakbook::maths
