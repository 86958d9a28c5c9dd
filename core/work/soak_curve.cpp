// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/soak_curve.h"

#include "core/maths/uptake_fit.h"
#include "core/maths/viscosity.h"
#include "core/work/figures.h"

#include <algorithm>
#include <cmath>

namespace soakbook::work {

namespace {

constexpr int curve_steps = 60;
constexpr double longest_curve = 3.0; ///< times the hour of the last weighing
constexpr double most_hours_told = 366.0 * 24.0;

maths::Instant hours_after(const maths::Instant& start, double hours) {
    return {start.utc_ms + std::llround(hours * 3.6e6), start.offset_minutes};
}

/// Straight up or level: what weighings look like through which no curve can be laid.
SoakCurveSays without_curve(const std::vector<maths::WeighIn>& weighings, maths::Mass dry) {
    const auto by_time = [](const maths::WeighIn& a, const maths::WeighIn& b) { return a.time < b.time; };
    const auto last = std::max_element(weighings.begin(), weighings.end(), by_time);
    auto first = last;
    for (auto it = weighings.begin(); it != weighings.end(); ++it)
        if (it->time > 0.0 && it->time < first->time)
            first = it;
    // On a line through the dry strip the weights go as the hours; on the plateau they are the same.
    const double uptakes = maths::in_grams(first->mean - dry) / maths::in_grams(last->mean - dry);
    const double halfway = (1.0 + first->time / last->time) / 2.0;
    return uptakes > halfway ? SoakCurveSays::all_on_plateau : SoakCurveSays::plateau_not_in_sight;
}

/// Nothing when it is not reached or its hour is not known to a year.
std::optional<WeightReached> reached(const maths::UptakeFit& fit, maths::Mass uptake, const maths::Instant& start) {
    const auto time = maths::time_reached(fit, maths::in_grams(uptake));
    if (!time || time->interval.high > most_hours_told)
        return std::nullopt;
    return WeightReached{time->time,
                         time->interval.low,
                         time->interval.high,
                         hours_after(start, time->time),
                         hours_after(start, time->interval.low),
                         hours_after(start, time->interval.high)};
}

std::vector<CurvePoint> curve_points(const maths::UptakeFit& fit, maths::Mass dry, double end) {
    std::vector<CurvePoint> points;
    for (int step = 0; step <= curve_steps; ++step) {
        const double hours = end * step / curve_steps;
        const auto band = maths::band_at(fit, hours);
        if (!band)
            continue;
        points.push_back({hours, dry + maths::grams(fit.curve.at(hours)), dry + maths::grams(std::max(band->low, 0.0)),
                          dry + maths::grams(band->high)});
    }
    return points;
}

SoakCurveSays says_why_not(maths::Unanswerable why, const std::vector<maths::WeighIn>& weighings, maths::Mass dry) {
    switch (why) {
    case maths::Unanswerable::no_rise:
        return SoakCurveSays::no_rise;
    case maths::Unanswerable::no_fit:
        return without_curve(weighings, dry);
    default:
        return SoakCurveSays::too_few;
    }
}

} // namespace

SoakCurve soak_curve(const SoakLine& soak) {
    SoakCurve curve;
    curve.dry = soak.dry;
    curve.target_weight = soak.target;
    curve.least_weight = soak.target - soak.tolerance;
    std::vector<maths::WeighIn> weighings;
    double last = 0.0;
    for (const WeighLine& line : soak.weighings)
        if (const auto mean = maths::mean_together(line.total, line.strips)) {
            weighings.push_back({line.hours, *mean});
            last = std::max(last, line.hours);
        }
    curve.weighings = static_cast<int>(weighings.size());
    const auto fit = maths::fit_weights(weighings, soak.dry);
    if (!fit) {
        curve.says = says_why_not(fit.error(), weighings, soak.dry);
        return curve;
    }
    FittedSoak fitted;
    fitted.plateau = soak.dry + maths::grams(fit->curve.plateau);
    fitted.plateau_error = maths::grams(fit->plateau_error);
    fitted.rate = fit->curve.rate;
    fitted.rate_error = fit->rate_error;
    fitted.r_squared = fit->r_squared;
    fitted.residual_deviation = maths::grams(fit->residual_deviation);
    fitted.target = reached(*fit, soak.target - soak.dry, soak.started);
    fitted.least = reached(*fit, curve.least_weight - soak.dry, soak.started);
    const double end = std::max(last, fitted.target ? fitted.target->hours : 0.0);
    fitted.points = curve_points(*fit, soak.dry, std::min(end, longest_curve * last));
    if (fitted.target)
        curve.says = SoakCurveSays::fitted;
    else
        curve.says = fit->curve.time_to(maths::in_grams(soak.target - soak.dry)) ? SoakCurveSays::target_hour_unsure
                                                                                 : SoakCurveSays::target_above_plateau;
    curve.fit = std::move(fitted);
    return curve;
}

std::optional<ColdHint> cold_hint(const book::Workbook& workbook, const SoakLine& soak) {
    const auto low = figure(workbook, Figure::room_low);
    if (!soak.room || !low || soak.room->count >= *low)
        return std::nullopt;
    ColdHint hint{*soak.room, maths::Temperature{*low}, std::nullopt};
    if (const auto ratio = maths::soak_time_ratio(hint.usual, hint.room))
        hint.times_as_long = *ratio;
    return hint;
}

} // namespace soakbook::work
