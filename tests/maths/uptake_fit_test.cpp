// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/uptake_fit.h"
#include "tests/maths/answers.h"

#include <array>
#include <limits>
#include <random>
#include <thread>

namespace soakbook::maths {
namespace {

std::vector<Point> readings(const UptakeCurve& curve, std::initializer_list<double> times) {
    std::vector<Point> points;
    for (const double t : times)
        points.push_back({t, curve.at(t)});
    return points;
}

TEST(Uptake, clean_readings_give_their_curve_back) {
    for (const double rate : {0.01, 0.05, 0.4, 1.5, 4.0}) {
        const UptakeCurve curve{23.0, rate};
        const auto fit = fit_uptake(readings(curve, {1, 2, 4, 8, 16}));
        ASSERT_TRUE(fit) << rate;
        EXPECT_NEAR(fit->curve.plateau, 23.0, 1e-6) << rate;
        EXPECT_NEAR(fit->curve.rate, rate, 1e-7) << rate;
        EXPECT_NEAR(fit->r_squared, 1.0, 1e-9);
        EXPECT_EQ(fit->degrees, 3);
    }
}

TEST(Uptake, weights_less_the_dry_strip_are_what_is_fitted) {
    const UptakeCurve curve{23.0, 0.2};
    std::vector<WeighIn> weighings;
    for (const double hours : {0.5, 2.0, 5.0, 12.0, 20.0})
        weighings.push_back({hours, grams(11.0 + curve.at(hours))});
    const auto fit = fit_weights(weighings, grams(11));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->curve.plateau, 23.0, 0.01);
    const auto reached = time_reached(*fit, 22.0);
    ASSERT_TRUE(reached);
    EXPECT_NEAR(reached->time, std::log(23.0) / 0.2, 0.1);
    EXPECT_TRUE(reached->interval.contains(reached->time));
}

TEST(Uptake, a_target_above_the_plateau_is_never_reached) {
    const auto fit = fit_uptake(readings({20.0, 0.3}, {1, 3, 6, 12}));
    ASSERT_TRUE(fit);
    EXPECT_THAT(time_reached(*fit, 23.0), Refuses(Unanswerable::not_reached));
    EXPECT_THAT(fit->curve.time_to(fit->curve.plateau), Refuses(Unanswerable::not_reached));
    EXPECT_THAT(time_reached(*fit, 0.0), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(time_reached(*fit, std::nan("")), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(time_reached(*fit, 10.0, percent(100)), Refuses(Unanswerable::out_of_range));
}

TEST(Uptake, too_few_weighings_are_refused) {
    EXPECT_THAT(fit_uptake({}), Refuses(Unanswerable::too_few));
    EXPECT_THAT(fit_uptake(readings({20, 0.3}, {1, 2})), Refuses(Unanswerable::too_few));
    EXPECT_THAT(fit_uptake(readings({20, 0.3}, {4, 4, 4, 4})), Refuses(Unanswerable::too_few));
    EXPECT_THAT(fit_uptake(readings({20, 0.3}, {0, 0, 4})), Refuses(Unanswerable::too_few));
}

TEST(Uptake, weights_that_do_not_rise_are_refused) {
    const std::array falling{Point{1, 20}, Point{2, 18}, Point{4, 15}, Point{8, 9}};
    EXPECT_THAT(fit_uptake(falling), Refuses(Unanswerable::no_rise));
    const std::array nothing{Point{1, 0}, Point{2, 0}, Point{4, 0}};
    EXPECT_THAT(fit_uptake(nothing), Refuses(Unanswerable::no_rise));
    const std::array lighter_than_dry{Point{1, -1}, Point{2, -2}, Point{4, -2.5}};
    EXPECT_THAT(fit_uptake(lighter_than_dry), Refuses(Unanswerable::no_rise));
    const std::array level{Point{1, 20}, Point{2, 20}, Point{4, 20}};
    EXPECT_FALSE(fit_uptake(level).has_value());
}

TEST(Uptake, a_straight_line_has_no_plateau_in_sight) {
    const std::array straight{Point{1, 2}, Point{2, 4}, Point{3, 6}, Point{4, 8}};
    EXPECT_THAT(fit_uptake(straight), Refuses(Unanswerable::no_fit));
    const std::array bending_up{Point{1, 1}, Point{2, 4}, Point{3, 9}, Point{4, 16}};
    EXPECT_THAT(fit_uptake(bending_up), Refuses(Unanswerable::no_fit));
}

TEST(Uptake, a_step_does_not_run_off_to_an_endless_rate) {
    const std::array step{Point{1, 16.1}, Point{5, 15.9}, Point{20, 16.2}};
    EXPECT_THAT(fit_uptake(step), Refuses(Unanswerable::no_fit));
    const std::array steep{Point{1, 15.0}, Point{5, 16.0}, Point{20, 16.2}};
    const auto steep_fit = fit_uptake(steep);
    ASSERT_TRUE(steep_fit);
    EXPECT_NEAR(steep_fit->curve.plateau, 16.1, 0.1);
    EXPECT_NEAR(steep_fit->curve.rate, 2.7, 0.3);
}

TEST(Uptake, refuses_times_and_weights_that_are_none) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double endless = std::numeric_limits<double>::infinity();
    for (const Point bad :
         {Point{-1, 2}, Point{nan, 2}, Point{2, nan}, Point{endless, 2}, Point{2, -endless}, Point{2, 1e300}}) {
        const std::array points{Point{1, 1}, Point{3, 2}, bad};
        EXPECT_THAT(fit_uptake(points), Refuses(Unanswerable::not_a_quantity));
    }
    const std::array weighings{WeighIn{1, grams(20)}, WeighIn{2, Mass{}}, WeighIn{3, grams(30)}};
    EXPECT_THAT(fit_weights(weighings, grams(11)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(fit_weights(weighings, Mass{}), Refuses(Unanswerable::not_a_quantity));
}

TEST(UptakeProperty, whatever_is_weighed_gives_a_sound_curve_or_a_reason) {
    std::mt19937_64 random(45);
    std::uniform_real_distribution<double> any(-5.0, 30.0);
    std::uniform_real_distribution<double> time(0.0, 48.0);
    std::uniform_int_distribution<std::size_t> how_many(0, 25);
    int fitted = 0;
    for (int i = 0; i < 20'000; ++i) {
        std::vector<Point> points(how_many(random));
        for (Point& point : points)
            point = {time(random), any(random)};
        const auto fit = fit_uptake(points);
        if (!fit)
            continue;
        ++fitted;
        ASSERT_GT(fit->curve.plateau, 0.0);
        ASSERT_GT(fit->curve.rate, 0.0);
        for (const double x : {fit->plateau_error, fit->rate_error, fit->covariance, fit->r_squared})
            ASSERT_TRUE(std::isfinite(x));
        const auto band = band_at(*fit, 10.0);
        ASSERT_TRUE(band && band->contains(fit->curve.at(10.0)));
        const auto reached = time_reached(*fit, fit->curve.plateau / 2.0);
        ASSERT_TRUE(!reached || (reached->interval.contains(reached->time) && reached->interval.low >= 0.0));
    }
    EXPECT_GT(fitted, 1'000);
}

TEST(UptakeProperty, noisy_steep_and_slow_curves_are_found) {
    std::mt19937_64 random(46);
    std::normal_distribution<double> noise(0.0, 0.15);
    std::uniform_real_distribution<double> log_rate(std::log(0.05), std::log(3.0));
    int near = 0;
    int fitted = 0;
    for (int i = 0; i < 2'000; ++i) {
        const UptakeCurve curve{23.0, std::exp(log_rate(random))};
        std::vector<Point> points;
        for (const double t : {0.5, 1.0, 2.0, 4.0, 8.0, 14.0, 20.0})
            points.push_back({t, curve.at(t) + noise(random)});
        const auto fit = fit_uptake(points);
        ASSERT_TRUE(fit) << curve.rate;
        ++fitted;
        near += std::abs(fit->curve.plateau - 23.0) < 4.0 * fit->plateau_error + 0.01 ? 1 : 0;
    }
    EXPECT_GT(near, fitted * 95 / 100);
}

TEST(UptakeProperty, several_threads_fit_at_once) {
    const auto points = readings({23.0, 0.3}, {1, 2, 4, 8, 16});
    const double expected = fit_uptake(points)->curve.plateau;
    std::vector<double> seen(6);
    std::vector<std::thread> threads;
    for (double& value : seen)
        threads.emplace_back([&value, &points] {
            for (int i = 0; i < 200; ++i)
                value = fit_uptake(points)->curve.plateau;
        });
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_THAT(seen, testing::Each(expected));
}

} // namespace
} // namespace soakbook::maths
