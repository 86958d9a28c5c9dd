// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/line_fit.h"

#include "core/maths/distributions.h"
#include "core/maths/exact.h"

#include <cmath>

namespace soakbook::maths {

Answer<Line> Line::through(std::span<const Point> points) {
    if (points.size() < 3)
        return unexpected(Unanswerable::too_few);
    double sum_x = 0.0;
    double sum_y = 0.0;
    for (const Point& point : points) {
        if (!std::isfinite(point.x) || !std::isfinite(point.y))
            return unexpected(Unanswerable::not_a_quantity);
        sum_x += point.x;
        sum_y += point.y;
    }
    Line line;
    line.m_points = static_cast<double>(points.size());
    line.m_mean_x = sum_x / line.m_points;
    const double mean_y = sum_y / line.m_points;
    double products = 0.0;
    for (const Point& point : points) {
        const double off = point.x - line.m_mean_x;
        line.m_spread_x += off * off;
        products += off * (point.y - mean_y);
    }
    if (!(line.m_spread_x > 0.0))
        return unexpected(Unanswerable::zero_below_the_line);
    line.m_slope = products / line.m_spread_x;
    line.m_offset = mean_y - line.m_slope * line.m_mean_x;
    double squares = 0.0;
    for (const Point& point : points) {
        const double off = point.y - line.at(point.x);
        squares += off * off;
    }
    line.m_deviation = std::sqrt(squares / (line.m_points - 2.0));
    if (!std::isfinite(line.m_slope) || !std::isfinite(line.m_offset) || !std::isfinite(line.m_deviation))
        return unexpected(Unanswerable::too_large);
    return line;
}

Answer<Interval> Line::prediction(double x, Fraction confidence) const {
    if (!is_confidence(confidence))
        return unexpected(Unanswerable::out_of_range);
    const auto t = student_quantile(0.5 + as_number(confidence) / 2.0, m_points - 2.0);
    if (!t)
        return unexpected(t.error());
    const double off = x - m_mean_x;
    const double reach = *t * m_deviation * std::sqrt(1.0 + 1.0 / m_points + off * off / m_spread_x);
    const Interval interval{at(x) - reach, at(x) + reach};
    if (!std::isfinite(interval.low) || !std::isfinite(interval.high))
        return unexpected(Unanswerable::out_of_range);
    return interval;
}

} // namespace soakbook::maths
