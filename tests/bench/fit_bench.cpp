// SPDX-License-Identifier: GPL-3.0-or-later
// The fit of twenty weighings, beside the bare library with the analytic Jacobian from the same start on the same data.
// The counter `of_bare` is the ratio of the two, measured turn by turn in one loop.
#include "core/maths/uptake_fit.h"

#include <array>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cmath>
#include <gsl/gsl_multifit_nlinear.h>
#include <memory>
#include <random>
#include <stdexcept>
#include <vector>

namespace soakbook::maths {
namespace {

constexpr UptakeCurve start{20.0, 0.1};

std::vector<Point> twenty_weighings() {
    const UptakeCurve curve{23.0, 0.15};
    std::mt19937 random(20);
    std::normal_distribution<double> spread(0.0, 0.2);
    std::vector<Point> points;
    for (int i = 1; i <= 20; ++i)
        points.push_back({1.2 * i, curve.at(1.2 * i) + spread(random)});
    return points;
}

int residuals(const gsl_vector* x, void* data, gsl_vector* f) {
    const auto& points = *static_cast<const std::vector<Point>*>(data);
    for (std::size_t i = 0; i < points.size(); ++i)
        gsl_vector_set(f, i, gsl_vector_get(x, 0) * -std::expm1(-gsl_vector_get(x, 1) * points[i].x) - points[i].y);
    return GSL_SUCCESS;
}

int jacobian(const gsl_vector* x, void* data, gsl_matrix* j) {
    const auto& points = *static_cast<const std::vector<Point>*>(data);
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double decay = std::exp(-gsl_vector_get(x, 1) * points[i].x);
        gsl_matrix_set(j, i, 0, 1.0 - decay);
        gsl_matrix_set(j, i, 1, gsl_vector_get(x, 0) * points[i].x * decay);
    }
    return GSL_SUCCESS;
}

/// What anybody would write with the library alone: fit, covariance, nothing checked. Gives the plateau.
double bare_fit(std::vector<Point>& points) {
    gsl_multifit_nlinear_parameters parameters = gsl_multifit_nlinear_default_parameters();
    const std::unique_ptr<gsl_multifit_nlinear_workspace, decltype(&gsl_multifit_nlinear_free)> work(
        gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters, points.size(), 2),
        &gsl_multifit_nlinear_free);
    gsl_multifit_nlinear_fdf problem{};
    problem.f = residuals;
    problem.df = jacobian;
    problem.n = points.size();
    problem.p = 2;
    problem.params = &points;
    std::array<double, 2> begin{start.plateau, start.rate};
    gsl_vector_view view = gsl_vector_view_array(begin.data(), begin.size());
    gsl_multifit_nlinear_init(&view.vector, &problem, work.get());
    int info = 0;
    gsl_multifit_nlinear_driver(200, 1e-10, 1e-10, 0.0, nullptr, nullptr, &info, work.get());
    std::array<double, 4> covariance{};
    gsl_matrix_view matrix = gsl_matrix_view_array(covariance.data(), 2, 2);
    gsl_multifit_nlinear_covar(work->J, 0.0, &matrix.matrix);
    return gsl_vector_get(work->x, 0);
}

void fit_of_twenty(benchmark::State& state, std::optional<UptakeCurve> from) {
    std::vector<Point> points = twenty_weighings();
    if (const auto ours = fit_uptake(points, from); !ours || std::abs(ours->curve.plateau - bare_fit(points)) > 1e-6)
        throw std::runtime_error("the two fits differ");
    using Clock = std::chrono::steady_clock;
    Clock::duration house{};
    Clock::duration bare{};
    for (auto _ : state) {
        const auto a = Clock::now();
        benchmark::DoNotOptimize(fit_uptake(points, from));
        const auto b = Clock::now();
        benchmark::DoNotOptimize(bare_fit(points));
        const auto c = Clock::now();
        house += b - a;
        bare += c - b;
        state.SetIterationTime(std::chrono::duration<double>(b - a).count());
    }
    state.counters["of_bare"] = static_cast<double>(house.count()) / static_cast<double>(bare.count());
}

BENCHMARK_CAPTURE(fit_of_twenty, from_the_same_start, start)->UseManualTime()->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(fit_of_twenty, finding_its_own_start, std::nullopt)->UseManualTime()->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace soakbook::maths
