// SPDX-License-Identifier: GPL-3.0-or-later
// What follows from a plan for a mix, and from a weighed one, into the result of a form.
#pragma once

#include "core/work/mix.h"
#include "core/work/pail_advice.h"
#include "ui/parts/desk.h"

#include <optional>

namespace soakbook::ui {

class FormFrame;

/// Amounts in containers, level marks, strips by mass and by bins. `advice`: the pails suggested for just this plan.
void show_mix_plan(FormFrame& form, const Desk& desk, const work::MixPlan& plan, const work::MixFigures& figures,
                   const std::optional<work::PailAdvice>& advice);
/// How a weighed mix stands against the strength wanted: shape and word, and what to do now.
void show_mix_result(FormFrame& form, const Desk& desk, const work::MixResult& mix);

} // namespace soakbook::ui
