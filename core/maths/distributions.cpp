// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/distributions.h"

#include <cmath>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_errno.h>

namespace soakbook::maths {
namespace {

bool is_probability(double p) {
    return p > 0.0 && p < 1.0;
}

Answer<double> finite(double x) {
    if (!std::isfinite(x))
        return unexpected(Unanswerable::out_of_range);
    return x;
}

} // namespace

void quiet_gsl() {
    // A static of a function is made once, and other threads wait for it: the handler is never written twice.
    [[maybe_unused]] static gsl_error_handler_t* const before = gsl_set_error_handler_off();
}

Answer<double> student_quantile(double p, double degrees) {
    if (!is_probability(p) || !(degrees >= 1.0) || !std::isfinite(degrees))
        return unexpected(Unanswerable::out_of_range);
    quiet_gsl();
    return finite(gsl_cdf_tdist_Pinv(p, degrees));
}

Answer<double> student_probability(double t, double degrees) {
    if (!std::isfinite(t) || !(degrees >= 1.0) || !std::isfinite(degrees))
        return unexpected(Unanswerable::out_of_range);
    quiet_gsl();
    return finite(gsl_cdf_tdist_P(t, degrees));
}

Answer<double> normal_quantile(double p) {
    if (!is_probability(p))
        return unexpected(Unanswerable::out_of_range);
    quiet_gsl();
    return finite(gsl_cdf_ugaussian_Pinv(p));
}

Answer<double> beta_quantile(double p, double a, double b) {
    if (!is_probability(p) || !(a > 0.0) || !(b > 0.0) || !std::isfinite(a) || !std::isfinite(b))
        return unexpected(Unanswerable::out_of_range);
    quiet_gsl();
    // GSL's own inverse gives up on some shapes (6 of 13 929 bees, say); its probability is sound and rises with x, so
    // the quantile is found by halving down to neighbouring numbers.
    double low = 0.0;
    double high = 1.0;
    for (;;) {
        const double middle = low + (high - low) / 2.0;
        if (middle <= low || middle >= high)
            return finite(middle);
        const double below = gsl_cdf_beta_P(middle, a, b);
        if (!std::isfinite(below))
            return unexpected(Unanswerable::no_fit);
        (below < p ? low : high) = middle;
    }
}

} // namespace soakbook::maths
