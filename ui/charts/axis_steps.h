// SPDX-License-Identifier: GPL-3.0-or-later
// Where the figures on an axis stand.
#pragma once

namespace soakbook::ui {

struct AxisSteps {
    double from = 0;
    double to = 1;
    double step = 1;

    int ticks() const;
    int decimals() const; ///< that the step needs
};

/// Round steps (1, 2, 5 times a power of ten) that span `least` to `most` with about `wanted` of them. A span of nothing is
/// widened.
AxisSteps round_steps(double least, double most, int wanted = 5);
/// Steps of hours from 0: halves, wholes, 2, 3, 6, 12, days.
AxisSteps hour_steps(double most, int wanted = 6);

} // namespace soakbook::ui
