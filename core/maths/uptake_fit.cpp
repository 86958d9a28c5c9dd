// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/uptake_fit.h"

#include "core/maths/distributions.h"
#include "core/maths/exact.h"

#include <algorithm>
#include <cmath>
#include <gsl/gsl_blas.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <limits>
#include <memory>

namespace soakbook::maths {
namespace {

// Flatter than this over the whole soak, the curve cannot be told from a straight line; steeper before the first
// weighing, it cannot be told from a step.
constexpr double flattest = 1e-3;
constexpr double steepest = 20.0;

/// The best plateau for a given rate, and what is left over: the problem is linear in it.
struct Trial {
    UptakeCurve curve;
    double squares = std::numeric_limits<double>::infinity();
};
Trial best_for_rate(std::span<const Point> readings, double rate) {
    double products = 0.0;
    double squares = 0.0;
    for (const Point& reading : readings) {
        const double part = -std::expm1(-rate * reading.x);
        products += part * reading.y;
        squares += part * part;
    }
    if (!(squares > 0.0))
        return {};
    Trial trial{{products / squares, rate}, 0.0};
    for (const Point& reading : readings) {
        const double off = reading.y - trial.curve.at(reading.x);
        trial.squares += off * off;
    }
    return trial;
}

struct Span {
    double first = 0.0; ///< earliest time after zero
    double last = 0.0;
};
/// Refuses readings no curve can be fitted through.
Answer<Span> checked(std::span<const Point> readings) {
    Span span{std::numeric_limits<double>::infinity(), 0.0};
    for (const Point& reading : readings) {
        if (!(reading.x >= 0.0) || !(reading.x < 1e9) || !(std::abs(reading.y) < 1e9))
            return unexpected(Unanswerable::not_a_quantity);
        if (reading.x > 0.0)
            span.first = std::min(span.first, reading.x);
        span.last = std::max(span.last, reading.x);
    }
    if (readings.size() < 3 || !(span.first < span.last))
        return unexpected(Unanswerable::too_few);
    if (span.first < span.last * 1e-9)
        return unexpected(Unanswerable::no_fit);
    return span;
}

bool falls_with_time(std::span<const Point> readings) {
    const auto line = Line::through(readings);
    return !line || line->slope() <= 0.0;
}

/// A rate near the least sum of squares, from steps of two over all rates that could be told apart.
Answer<UptakeCurve> own_start(std::span<const Point> readings, const Span& span) {
    Trial best;
    double best_rate = 0.0;
    const double lowest = flattest / span.last;
    const double highest = steepest / span.first;
    for (double rate = lowest; rate < highest * 2.0; rate *= 2.0) {
        const Trial trial = best_for_rate(readings, rate);
        if (trial.squares < best.squares) {
            best = trial;
            best_rate = rate;
        }
    }
    if (!(best.curve.plateau > 0.0))
        return unexpected(Unanswerable::no_rise);
    if (best_rate >= highest)
        return unexpected(falls_with_time(readings) ? Unanswerable::no_rise : Unanswerable::no_fit);
    return best.curve;
}

int residuals_of(const gsl_vector* parameters, void* data, gsl_vector* out) {
    const auto& readings = *static_cast<const std::span<const Point>*>(data);
    const UptakeCurve curve{gsl_vector_get(parameters, 0), gsl_vector_get(parameters, 1)};
    for (std::size_t i = 0; i < readings.size(); ++i)
        gsl_vector_set(out, i, curve.at(readings[i].x) - readings[i].y);
    return GSL_SUCCESS;
}

int jacobian_of(const gsl_vector* parameters, void* data, gsl_matrix* out) {
    const auto& readings = *static_cast<const std::span<const Point>*>(data);
    const double plateau = gsl_vector_get(parameters, 0);
    const double rate = gsl_vector_get(parameters, 1);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double t = readings[i].x;
        gsl_matrix_set(out, i, 0, -std::expm1(-rate * t));
        gsl_matrix_set(out, i, 1, plateau * t * std::exp(-rate * t));
    }
    return GSL_SUCCESS;
}

/// Errors, residuals and R2 of the curve that the workspace ended on.
UptakeFit described(const gsl_multifit_nlinear_workspace& work, std::span<const Point> readings) {
    UptakeFit fit;
    fit.curve = {gsl_vector_get(work.x, 0), gsl_vector_get(work.x, 1)};
    double mean = 0.0;
    for (const Point& reading : readings) {
        fit.residuals.push_back(reading.y - fit.curve.at(reading.x));
        fit.sum_of_squares += fit.residuals.back() * fit.residuals.back();
        mean += reading.y / static_cast<double>(readings.size());
    }
    double total = 0.0;
    for (const Point& reading : readings)
        total += (reading.y - mean) * (reading.y - mean);
    fit.r_squared = total > 0.0 ? 1.0 - fit.sum_of_squares / total : 0.0;
    fit.degrees = static_cast<std::int64_t>(readings.size()) - 2;
    fit.residual_deviation = std::sqrt(fit.sum_of_squares / static_cast<double>(fit.degrees));
    double values[4] = {};
    gsl_matrix_view covariance = gsl_matrix_view_array(values, 2, 2);
    gsl_multifit_nlinear_covar(work.J, 0.0, &covariance.matrix);
    const double variance = fit.residual_deviation * fit.residual_deviation;
    fit.plateau_error = std::sqrt(variance * values[0]);
    fit.rate_error = std::sqrt(variance * values[3]);
    fit.covariance = variance * values[1];
    return fit;
}

bool is_sound(const UptakeFit& fit, const Span& span) {
    for (const double x : {fit.curve.plateau, fit.curve.rate, fit.plateau_error, fit.rate_error, fit.covariance,
                           fit.sum_of_squares, fit.r_squared})
        if (!std::isfinite(x))
            return false;
    return fit.curve.plateau > 0.0 && fit.curve.rate > flattest / span.last && fit.curve.rate < steepest / span.first;
}

Answer<double> quantile_for(const UptakeFit& fit, Fraction confidence) {
    if (!is_confidence(confidence) || fit.degrees < 1)
        return unexpected(Unanswerable::out_of_range);
    return student_quantile(0.5 + as_number(confidence) / 2.0, static_cast<double>(fit.degrees));
}

/// Standard error of a figure that changes with U and k as given.
double error_of(const UptakeFit& fit, double by_plateau, double by_rate) {
    const double variance = by_plateau * by_plateau * fit.plateau_error * fit.plateau_error +
                            2.0 * by_plateau * by_rate * fit.covariance +
                            by_rate * by_rate * fit.rate_error * fit.rate_error;
    return std::sqrt(std::max(variance, 0.0));
}

} // namespace

double UptakeCurve::at(double t) const {
    return -plateau * std::expm1(-rate * t);
}

Answer<double> UptakeCurve::time_to(double grams_taken) const {
    if (!std::isfinite(grams_taken) || grams_taken <= 0.0 || !(plateau > 0.0) || !(rate > 0.0))
        return unexpected(Unanswerable::not_a_quantity);
    if (grams_taken >= plateau)
        return unexpected(Unanswerable::not_reached);
    const double time = -std::log1p(-grams_taken / plateau) / rate;
    if (!std::isfinite(time))
        return unexpected(Unanswerable::not_reached);
    return time;
}

Answer<UptakeFit> fit_uptake(std::span<const Point> readings, std::optional<UptakeCurve> start) {
    const auto span = checked(readings);
    if (!span)
        return unexpected(span.error());
    if (!start) {
        const auto own = own_start(readings, *span);
        if (!own)
            return unexpected(own.error());
        start = *own;
    }
    quiet_gsl();
    gsl_multifit_nlinear_parameters parameters = gsl_multifit_nlinear_default_parameters();
    parameters.solver = gsl_multifit_nlinear_solver_cholesky;
    const std::unique_ptr<gsl_multifit_nlinear_workspace, decltype(&gsl_multifit_nlinear_free)> work(
        gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters, readings.size(), 2),
        &gsl_multifit_nlinear_free);
    if (!work)
        throw std::bad_alloc();
    std::span<const Point> data = readings;
    gsl_multifit_nlinear_fdf problem{};
    problem.f = residuals_of;
    problem.df = jacobian_of;
    problem.n = readings.size();
    problem.p = 2;
    problem.params = &data;
    double first[2] = {start->plateau, start->rate};
    const gsl_vector_view begin = gsl_vector_view_array(first, 2);
    int reason = 0;
    if (gsl_multifit_nlinear_init(&begin.vector, &problem, work.get()) != GSL_SUCCESS)
        return unexpected(Unanswerable::no_fit);
    const int status = gsl_multifit_nlinear_driver(200, 1e-10, 1e-12, 0.0, nullptr, nullptr, &reason, work.get());
    // "No further progress" is how the driver says that it already stands at the bottom to the last digit.
    if (status != GSL_SUCCESS && status != GSL_ENOPROG)
        return unexpected(Unanswerable::no_fit);
    UptakeFit fit = described(*work, readings);
    if (!is_sound(fit, *span))
        return unexpected(fit.curve.plateau <= 0.0 ? Unanswerable::no_rise : Unanswerable::no_fit);
    return fit;
}

Answer<UptakeFit> fit_weights(std::span<const WeighIn> weighings, Mass dry) {
    if (!is_amount(dry))
        return unexpected(Unanswerable::not_a_quantity);
    std::vector<Point> readings;
    readings.reserve(weighings.size());
    for (const WeighIn& weighing : weighings) {
        if (!is_amount(weighing.mean))
            return unexpected(Unanswerable::not_a_quantity);
        readings.push_back({weighing.time, in_grams(weighing.mean - dry)});
    }
    return fit_uptake(readings);
}

Answer<TimeReached> time_reached(const UptakeFit& fit, double grams_taken, Fraction confidence) {
    const auto time = fit.curve.time_to(grams_taken);
    if (!time)
        return unexpected(time.error());
    const auto quantile = quantile_for(fit, confidence);
    if (!quantile)
        return unexpected(quantile.error());
    const double by_plateau = -grams_taken / (fit.curve.rate * fit.curve.plateau * (fit.curve.plateau - grams_taken));
    const double by_rate = -*time / fit.curve.rate;
    const double reach = *quantile * error_of(fit, by_plateau, by_rate);
    if (!std::isfinite(reach))
        return unexpected(Unanswerable::no_fit);
    return TimeReached{*time, {std::max(*time - reach, 0.0), *time + reach}};
}

Answer<Interval> band_at(const UptakeFit& fit, double t, Fraction confidence) {
    if (!(t >= 0.0) || !std::isfinite(t))
        return unexpected(Unanswerable::not_a_quantity);
    const auto quantile = quantile_for(fit, confidence);
    if (!quantile)
        return unexpected(quantile.error());
    const double middle = fit.curve.at(t);
    const double reach = *quantile * error_of(fit, -std::expm1(-fit.curve.rate * t),
                                              fit.curve.plateau * t * std::exp(-fit.curve.rate * t));
    if (!std::isfinite(middle) || !std::isfinite(reach))
        return unexpected(Unanswerable::out_of_range);
    return Interval{middle - reach, middle + reach};
}

} // namespace soakbook::maths
