// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/axis_steps.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace soakbook::ui {

int AxisSteps::ticks() const { return static_cast<int>(std::lround((to - from) / step)) + 1; }

int AxisSteps::decimals() const {
    int decimals = 0;
    for (double scaled = step; decimals < 6 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10) {
        ++decimals;
    }
    return decimals;
}

AxisSteps round_steps(double least, double most, int wanted) {
    if (most - least < 1e-9) {
        const double half = std::max(std::abs(least) * 0.1, 0.5);
        least -= half;
        most += half;
    }
    const double raw = (most - least) / std::max(1, wanted);
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    double step = power * 10;
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= raw * 0.999) {
            step = factor * power;
            break;
        }
    }
    return {std::floor(least / step + 1e-9) * step, std::ceil(most / step - 1e-9) * step, step};
}

AxisSteps hour_steps(double most, int wanted) {
    constexpr std::array<double, 10> steps = {0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96};
    double step = steps.back();
    for (const double candidate : steps) {
        if (most / candidate <= wanted) {
            step = candidate;
            break;
        }
    }
    while (most / step > 2 * wanted) {
        step *= 2;
    }
    return {0, std::max(step, std::ceil(most / step - 1e-9) * step), step};
}

} // namespace soakbook::ui
