// SPDX-License-Identifier: GPL-3.0-or-later
// The curve by which strips take up liquid: `w(t) = dry + U (1 - exp(-k t))`, fitted through the weighings of one soak
// with the dry weight known; and the time at which a target is reached, with how sure that is. Source: nonlinear least
// squares (Bates & Watts 1988, Nonlinear Regression Analysis, ch. 2) by the GNU Scientific Library with the analytic
// Jacobian. Time in one unit throughout, whichever the caller uses; weights in grams.
#pragma once

#include "core/maths/line_fit.h"
#include "core/maths/quantities.h"
#include "core/maths/result.h"
#include "core/maths/sampling.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace soakbook::maths {

/// `U (1 - exp(-k t))`: what a strip has taken up after a time.
struct UptakeCurve {
    double plateau = 0.0; ///< U: grams at the end
    double rate = 0.0;    ///< k: per unit of time

    /// Grams taken up at time t.
    double at(double t) const;
    /// When that much is taken up. Refuses grams not above zero, and not_reached from the plateau on.
    Answer<double> time_to(double grams_taken) const;
};

/// The fitted curve and how sure it is.
struct UptakeFit {
    UptakeCurve curve;
    double plateau_error = 0.0;      ///< standard error of U
    double rate_error = 0.0;         ///< standard error of k
    double covariance = 0.0;         ///< of U and k
    double sum_of_squares = 0.0;     ///< of the residuals
    double residual_deviation = 0.0; ///< sqrt(sum of squares / (n - 2))
    double r_squared = 0.0;          ///< 1 - residual over total sum of squares; 0 when all readings are equal
    std::vector<double> residuals;   ///< reading less curve, in the order given
    std::int64_t degrees = 0;        ///< n - 2
};

/// Fits points of (time, grams taken up). `start` is where the search begins; without one it finds its own.
/// Refuses: not_a_quantity for negative times and what is not finite, too_few under three readings or under two times
/// after zero, no_rise when nothing is taken up or the weights fall with time, no_fit when the readings lie on a
/// straight line (the plateau is not in sight) or all on the plateau (how fast it was reached is not to be seen).
Answer<UptakeFit> fit_uptake(std::span<const Point> readings, std::optional<UptakeCurve> start = std::nullopt);

/// One weighing of a soak.
struct WeighIn {
    double time = 0.0;
    Mass mean;
};
/// The same for mean weights of wet strips. Refuses as above, and amounts of zero or less.
Answer<UptakeFit> fit_weights(std::span<const WeighIn> weighings, Mass dry);

/// When that much is taken up by the fitted curve, with its interval by the delta method (Student's t); never below
/// zero.
struct TimeReached {
    double time = 0.0;
    Interval interval;
};
/// Refuses as UptakeCurve::time_to, and a confidence outside 50 to 100 %.
Answer<TimeReached> time_reached(const UptakeFit& fit, double grams_taken, Fraction confidence = usual_confidence);
/// The band in which the curve itself lies at time t, grams. Refuses negative times.
Answer<Interval> band_at(const UptakeFit& fit, double t, Fraction confidence = usual_confidence);

} // namespace soakbook::maths
