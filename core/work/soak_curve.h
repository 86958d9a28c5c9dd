// SPDX-License-Identifier: GPL-3.0-or-later
// The curve through the weighings of one bin: where it levels off, how fast, when the target is reached, and how sure
// all of it is; and whether the room is too cold to go by the hours one is used to.
#pragma once

#include "core/work/shed_view.h"

namespace soakbook::work {

/// What the weighings of a soak say.
enum class SoakCurveSays {
    fitted,
    too_few,              ///< fewer than three weighings, or fewer than two times
    no_rise,              ///< the strips grow no heavier with time
    plateau_not_in_sight, ///< they still rise in a straight line: where they level off cannot be told
    all_on_plateau,       ///< full at the first weighing already: how fast they filled cannot be told
    target_above_plateau, ///< a curve, but it levels off below the target: soaking on will not reach it
    target_hour_unsure,   ///< a curve, but its target hour is known to no better than a year
};
/// A place on the curve, with the 95 % band in which the curve lies there.
struct CurvePoint {
    double hours = 0;
    maths::Mass weight{}; ///< of a strip
    maths::Mass low{};
    maths::Mass high{};
};
/// When a strip weight is reached, and the 95 % interval of it.
struct WeightReached {
    double hours = 0;
    double low_hours = 0;
    double high_hours = 0;
    maths::Instant at{};
    maths::Instant low_at{};
    maths::Instant high_at{};
};
struct FittedSoak {
    maths::Mass plateau{};       ///< weight of a strip in the end
    maths::Mass plateau_error{}; ///< standard error of it
    double rate = 0;             ///< k, per hour
    double rate_error = 0;
    double r_squared = 0;
    maths::Mass residual_deviation{};
    std::vector<CurvePoint> points;      ///< from the start to the last weighing or the target hour, whichever is later
    std::optional<WeightReached> target; ///< the target weight
    std::optional<WeightReached> least;  ///< target less tolerance: the least that is good
};
struct SoakCurve {
    SoakCurveSays says = SoakCurveSays::too_few;
    int weighings = 0;
    maths::Mass dry{};
    maths::Mass target_weight{};
    maths::Mass least_weight{};
    std::optional<FittedSoak> fit; ///< with fitted, target_above_plateau and target_hour_unsure
};
/// `w(t) = dry + U (1 - exp(-k t))`, see core/maths/uptake_fit.h. The points end at three times the last weighing's
/// hour at the latest: beyond that a curve is a guess.
SoakCurve soak_curve(const SoakLine& soak);

/// A room colder than the user's figure.
struct ColdHint {
    maths::Temperature room{};
    maths::Temperature usual{};          ///< the figure room_low
    std::optional<double> times_as_long; ///< by the viscosity of pure glycerine; none below freezing
};
/// A hint, never a verdict. Nothing when the room was not said, the figure was not said, or the room is warm enough.
std::optional<ColdHint> cold_hint(const book::Workbook& workbook, const SoakLine& soak);

} // namespace soakbook::work
