// SPDX-License-Identifier: GPL-3.0-or-later
// What a strip of a batch costs, in sentences.
#pragma once

#include "core/work/batch_cost.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// The cost of a strip with what it comes from, or what is missing for it; rich text. Empty while no strips are in bags.
QString cost_words(const Habits& habits, const work::BatchCost& cost);

} // namespace soakbook::ui
