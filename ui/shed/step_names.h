// SPDX-License-Identifier: GPL-3.0-or-later
// The six steps of a batch: which is to be done now, which can be opened, and what the others wait for.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/course.h"

#include <QString>

#include <array>

namespace soakbook::ui {

enum class StepName { mix, heat, soak, weigh, bag, leftovers };
constexpr std::array<StepName, 6> all_steps{StepName::mix,   StepName::heat, StepName::soak,
                                            StepName::weigh, StepName::bag,  StepName::leftovers};

/// The step's name as its card says it.
QString step_name(StepName step);
/// The first step that is not done; leftovers once all are.
StepName current_step(const work::BatchView& batch);
/// Whether there is anything to do or see in it yet.
bool can_open(StepName step, const work::BatchView& batch);
Step::Stage stage_of(StepName step, const work::BatchView& batch);
/// Whether entries can still be made: the batch is neither closed nor void.
bool is_open(const work::BatchView& batch);
/// Whether all that was soaked is out of its bins.
bool all_taken_out(const work::BatchView& batch);
/// The first soak whose strips are still in the bin; nothing once all are out.
const work::SoakLine* next_soak(const work::BatchView& batch);
/// Whether the mix is off its strength and something can still be added.
bool wants_correction(const work::BatchView& batch);

} // namespace soakbook::ui
