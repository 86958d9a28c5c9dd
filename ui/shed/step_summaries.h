// SPDX-License-Identifier: GPL-3.0-or-later
// One sentence for each step of a batch: what came of it, how it stands, or what it waits for.
#pragma once

#include "ui/parts/desk.h"
#include "ui/shed/step_names.h"

namespace soakbook::ui {

QString step_summary(const Desk& desk, StepName step, const work::BatchView& batch);
/// The same while there is no batch yet.
QString waiting_summary(StepName step);

} // namespace soakbook::ui
