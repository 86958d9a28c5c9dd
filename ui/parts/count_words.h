// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips a bag holds by its weight, in a sentence.
#pragma once

#include "core/work/count_check.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// "80 as packed, 97 % sure." or why it cannot be told.
QString count_words(const Habits& habits, const work::CountCheck& check);

} // namespace soakbook::ui
