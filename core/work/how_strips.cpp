// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/how_strips.h"

#include "core/maths/distributions.h"
#include "core/maths/sampling.h"
#include "core/work/optional_fact.h"

#include <cmath>

namespace soakbook::work {

namespace {

QString deviation_fact(const std::optional<StripSpread>& spread) {
    return spread ? fact(spread->deviation_mass()) : QString();
}

QString learned_from_fact(const std::optional<StripSpread>& spread) {
    return spread ? fact(spread->strips) : QString();
}

/// Student's t behind a 95 % interval.
QString t_fact(const std::optional<StripSpread>& spread) {
    if (!spread)
        return {};
    const auto t = maths::student_quantile(0.5 + maths::as_number(maths::usual_confidence) / 2.0, spread->degrees);
    return t ? number_fact(*t, 4) : QString();
}

} // namespace

How how_taken_up(const WeighFigures& figures) {
    return {HowKind::taken_up, {fact(figures.mean), fact(figures.dry), fact(figures.uptake), fact(figures.strips)}};
}

How how_acid_in_strip(const WeighFigures& figures, maths::Fraction strength) {
    return {HowKind::acid_in_strip,
            {fact(figures.mean), fact(figures.dry), fact(strength), fact(figures.acid_per_strip),
             fact(figures.acid_per_strip_anhydrous)}};
}

How how_sample_interval(const MoreToWeigh& sample) {
    return {HowKind::sample_interval,
            {fact(sample.strips), fact(sample.mean), deviation_fact(sample.spread),
             sample.spread ? fact(sample.spread->degrees) : QString(), t_fact(sample.spread), fact_or_none(sample.low),
             fact_or_none(sample.high)}};
}

How how_more_to_weigh(const MoreToWeigh& sample) {
    return {HowKind::more_to_weigh,
            {fact_or_none(sample.more), fact(sample.strips), fact(sample.mean), fact(sample.target - sample.tolerance),
             fact(sample.target + sample.tolerance), deviation_fact(sample.spread), learned_from_fact(sample.spread)}};
}

How how_soak_curve(const SoakCurve& curve) {
    How how{HowKind::soak_curve, {fact(curve.dry)}};
    if (curve.fit) {
        const FittedSoak& fit = *curve.fit;
        how.facts << fact(fit.plateau - curve.dry) << fact(fit.plateau_error) << number_fact(fit.rate, 4)
                  << number_fact(fit.rate_error, 4) << fact(curve.weighings) << number_fact(fit.r_squared, 4)
                  << fact(fit.residual_deviation);
    } else {
        how.facts << QString() << QString() << QString() << QString() << fact(curve.weighings) << QString()
                  << QString();
    }
    return how;
}

How how_target_hour(const SoakCurve& curve) {
    How how{HowKind::target_hour, {fact(curve.target_weight), fact(curve.dry)}};
    if (curve.fit)
        how.facts << fact(curve.fit->plateau - curve.dry) << number_fact(curve.fit->rate, 4);
    else
        how.facts << QString() << QString();
    if (curve.fit && curve.fit->target)
        how.facts << hours_fact(curve.fit->target->hours) << hours_fact(curve.fit->target->low_hours)
                  << hours_fact(curve.fit->target->high_hours);
    else
        how.facts << QString() << QString() << QString();
    return how;
}

How how_cold_room(const ColdHint& hint) {
    return {HowKind::cold_room,
            {fact(hint.room), fact(hint.usual), hint.times_as_long ? number_fact(*hint.times_as_long, 2) : QString()}};
}

How how_count_by_weight(const CountCheck& check) {
    const QString sure = check.sureness ? fact(maths::ppm(std::llround(*check.sureness * 1e6))) : QString();
    return {HowKind::count_by_weight,
            {fact(check.net), fact(check.mean), fact(check.mean_strips), deviation_fact(check.spread),
             learned_from_fact(check.spread), fact_or_none(check.likeliest), sure, fact_or_none(check.least),
             fact_or_none(check.most)}};
}

} // namespace soakbook::work
