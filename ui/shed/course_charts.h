// SPDX-License-Identifier: GPL-3.0-or-later
// What the charts of a batch show, in the user's units.
#pragma once

#include "core/work/shed_view.h"
#include "core/work/soak_curve.h"
#include "ui/charts/strip_weight_chart.h"
#include "ui/charts/tank_temperature_chart.h"
#include "ui/parts/desk.h"

namespace soakbook::ui {

TankTemperature tank_temperature(const Desk& desk, const work::BatchView& batch);
/// `curves` are the batch's soaks' own, in their order.
StripWeight strip_weight(const Desk& desk, const work::BatchView& batch, const std::vector<work::SoakCurve>& curves);

} // namespace soakbook::ui
