// SPDX-License-Identifier: GPL-3.0-or-later
// Quantiles that the intervals of this room need: Student's t, the normal, the beta. From the GNU Scientific Library.
#pragma once

#include "core/maths/result.h"

namespace soakbook::maths {

/// The t that a Student variable with `degrees` of freedom stays below with probability `p`. Refuses p outside (0, 1)
/// and degrees below 1.
Answer<double> student_quantile(double p, double degrees);
/// The probability that a Student variable stays below `t`. Refuses what is not finite.
Answer<double> student_probability(double t, double degrees);
/// The z that a standard normal variable stays below with probability `p`. Refuses p outside (0, 1).
Answer<double> normal_quantile(double p);
/// The x that a beta variable stays below with probability `p`. Refuses p outside (0, 1) and shapes not above zero.
Answer<double> beta_quantile(double p, double a, double b);

/// Makes GSL report instead of ending the program. Done once, by whichever thread comes first, with the others waiting;
/// every function of this room that calls GSL calls this before.
void quiet_gsl();

} // namespace soakbook::maths
