// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion on every quantile: Boost.Math beside the GNU Scientific Library.
#include "core/maths/distributions.h"
#include "tests/maths/answers.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <limits>
#include <thread>
#include <vector>

namespace soakbook::maths {
namespace {

const std::vector<double> probabilities{0.001, 0.005, 0.025, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.975, 0.995, 0.999};

// Source: Boost.Math 1.74, students_t.
TEST(OutsideDistributions, student_as_boost_has_it) {
    for (const double degrees : {1.0, 2.0, 3.0, 4.0, 7.0, 9.0, 19.0, 30.0, 99.0, 1000.0})
        for (const double p : probabilities) {
            const double other = boost::math::quantile(boost::math::students_t(degrees), p);
            ASSERT_THAT(student_quantile(p, degrees), IsNear(other, 1e-8 * std::max(1.0, std::abs(other))))
                << p << ' ' << degrees;
            ASSERT_THAT(student_probability(other, degrees), IsNear(p, 1e-10)) << p << ' ' << degrees;
        }
}

// Source: Boost.Math 1.74, normal.
TEST(OutsideDistributions, normal_as_boost_has_it) {
    for (const double p : probabilities)
        ASSERT_THAT(normal_quantile(p), IsNear(boost::math::quantile(boost::math::normal(), p), 1e-9)) << p;
}

// Source: Boost.Math 1.74, beta.
TEST(OutsideDistributions, beta_as_boost_has_it) {
    for (const double a : {1.0, 2.0, 6.0, 15.0, 300.0})
        for (const double b : {1.0, 3.0, 134.0, 292.0, 13'924.0})
            for (const double p : probabilities) {
                const double other = boost::math::quantile(boost::math::beta_distribution<>(a, b), p);
                ASSERT_THAT(beta_quantile(p, a, b), IsNear(other, 1e-8 * other)) << p << ' ' << a << ' ' << b;
            }
}

TEST(Distributions, refuse_what_has_no_quantile) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double endless = std::numeric_limits<double>::infinity();
    for (const double p : {0.0, 1.0, -0.1, 1.1, nan}) {
        EXPECT_THAT(student_quantile(p, 5), Refuses(Unanswerable::out_of_range));
        EXPECT_THAT(normal_quantile(p), Refuses(Unanswerable::out_of_range));
        EXPECT_THAT(beta_quantile(p, 2, 3), Refuses(Unanswerable::out_of_range));
    }
    for (const double degrees : {0.0, -1.0, nan, endless})
        EXPECT_THAT(student_quantile(0.9, degrees), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(beta_quantile(0.5, 0.0, 1.0), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(beta_quantile(0.5, 1.0, nan), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(student_probability(nan, 3), Refuses(Unanswerable::out_of_range));
}

TEST(Distributions, give_the_same_from_several_threads) {
    const double expected = beta_quantile(0.975, 16, 133).value();
    std::vector<double> seen(8);
    std::vector<std::thread> threads;
    for (double& value : seen)
        threads.emplace_back([&value] {
            for (int i = 0; i < 50; ++i)
                value = beta_quantile(0.975, 16, 133).value();
        });
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_THAT(seen, testing::Each(expected));
}

} // namespace
} // namespace soakbook::maths
