// SPDX-License-Identifier: GPL-3.0-or-later
// The least-squares straight line through readings and where the next reading is to be expected.
// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.2 (prediction).
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"
#include "core/maths/sampling.h"

#include <span>

namespace soakbook::maths {

/// One reading.
struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// y = offset + slope x.
class Line {
public:
    /// Refuses fewer than three points (too_few), points that are not finite, and points all at one x.
    static Answer<Line> through(std::span<const Point> points);

    double offset() const { return m_offset; }
    double slope() const { return m_slope; }
    /// Standard deviation of the residuals, n - 2 degrees of freedom.
    double residual_deviation() const { return m_deviation; }
    double at(double x) const { return m_offset + m_slope * x; }
    /// Where a single new reading at x is to be expected. Refuses a confidence outside 50 to 100 %.
    Answer<Interval> prediction(double x, Fraction confidence = usual_confidence) const;

private:
    double m_offset = 0.0;
    double m_slope = 0.0;
    double m_deviation = 0.0;
    double m_points = 0.0;
    double m_mean_x = 0.0;
    double m_spread_x = 0.0; ///< sum of squares of x about its mean
};

} // namespace soakbook::maths
