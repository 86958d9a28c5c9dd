// SPDX-License-Identifier: GPL-3.0-or-later
// The uptake curve against certified and published fits of the same model.
#include "core/maths/uptake_fit.h"
#include "tests/maths/answers.h"

#include <array>
#include <cmath>

namespace soakbook::maths {
namespace {

constexpr std::array misra_1a{Point{77.6, 10.07},  Point{114.9, 14.73}, Point{141.1, 17.94}, Point{190.8, 23.93},
                              Point{239.9, 29.61}, Point{289.0, 35.18}, Point{332.8, 40.02}, Point{378.4, 44.82},
                              Point{434.8, 50.76}, Point{477.3, 55.05}, Point{536.8, 61.01}, Point{593.1, 66.40},
                              Point{689.1, 75.47}, Point{760.0, 81.78}};

bool agrees(double value, double certified, double relative) {
    return std::abs(value - certified) <= relative * std::abs(certified);
}

void expect_misra_1a(const Answer<UptakeFit>& fit) {
    ASSERT_TRUE(fit);
    EXPECT_TRUE(agrees(fit->curve.plateau, 2.3894212918E+02, 1e-8)) << fit->curve.plateau;
    EXPECT_TRUE(agrees(fit->curve.rate, 5.5015643181E-04, 1e-8)) << fit->curve.rate;
    EXPECT_TRUE(agrees(fit->plateau_error, 2.7070075241E+00, 1e-7)) << fit->plateau_error;
    EXPECT_TRUE(agrees(fit->rate_error, 7.2668688436E-06, 1e-7)) << fit->rate_error;
    EXPECT_TRUE(agrees(fit->residual_deviation, 1.0187876330E-01, 1e-8)) << fit->residual_deviation;
}

// Source: NIST Statistical Reference Datasets, nonlinear regression, Misra1a (certified values).
TEST(OutsideUptake, nist_misra_1a_from_both_its_starts_and_its_own) {
    expect_misra_1a(fit_uptake(misra_1a, UptakeCurve{500, 1e-4}));
    expect_misra_1a(fit_uptake(misra_1a, UptakeCurve{250, 5e-4}));
    expect_misra_1a(fit_uptake(misra_1a));
}

// Source: NIST StRD nonlinear regression, BoxBOD (certified values; data from memory): a steep curve with few points,
// where Gauss-Newton from the first start runs away.
TEST(OutsideUptake, nist_box_bod) {
    const std::array box_bod{Point{1, 109}, Point{2, 149}, Point{3, 149}, Point{5, 191}, Point{7, 213}, Point{10, 224}};
    const auto fit = fit_uptake(box_bod);
    ASSERT_TRUE(fit);
    EXPECT_TRUE(agrees(fit->curve.plateau, 2.1380940889E+02, 1e-7)) << fit->curve.plateau;
    EXPECT_TRUE(agrees(fit->curve.rate, 5.4723748542E-01, 1e-7)) << fit->curve.rate;
    EXPECT_TRUE(agrees(fit->plateau_error, 1.2354515176E+01, 1e-6)) << fit->plateau_error;
    EXPECT_TRUE(agrees(fit->rate_error, 1.0455993237E-01, 1e-6)) << fit->rate_error;
    EXPECT_TRUE(agrees(fit->residual_deviation, 1.7088072423E+01, 1e-7)) << fit->residual_deviation;
}

// Source: Bates & Watts 1988, Nonlinear Regression Analysis, data A1.4; the fit is computed.
TEST(OutsideUptake, bates_and_watts_a1_4) {
    const std::array bod{Point{1, 8.3}, Point{2, 10.3}, Point{3, 19.0}, Point{4, 16.0}, Point{5, 15.6}, Point{7, 19.8}};
    const auto fit = fit_uptake(bod);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->curve.plateau, 19.14257529, 5e-7);
    EXPECT_NEAR(fit->plateau_error, 2.49591733, 5e-7);
    EXPECT_NEAR(fit->curve.rate, 0.53109138, 5e-8);
    EXPECT_NEAR(fit->rate_error, 0.20308210, 5e-8);
    EXPECT_NEAR(fit->sum_of_squares, 25.99026728, 5e-8);
}

// Source: computed from the formula: 16.5 g, 0.045 per minute.
TEST(OutsideUptake, a_curve_worked_by_hand) {
    const UptakeCurve curve{16.5, 0.045};
    EXPECT_NEAR(curve.at(5), 3.32448, 5e-6);
    EXPECT_NEAR(curve.at(20), 9.79160, 5e-6);
    EXPECT_THAT(curve.time_to(0.9 * 16.5), IsNear(51.1686, 5e-5));
}

} // namespace
} // namespace soakbook::maths
