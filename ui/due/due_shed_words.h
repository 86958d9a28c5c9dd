// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of Due that belong to a batch.
#pragma once

#include "ui/due/due_words.h"

namespace soakbook::ui {

/// Nothing where the row is not the shed's.
std::optional<DueWords> due_shed_words(const work::DueRow& row, const Habits& habits);

} // namespace soakbook::ui
