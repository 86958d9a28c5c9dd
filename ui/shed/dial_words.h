// SPDX-License-Identifier: GPL-3.0-or-later
// Where to set the dial of a tank, in sentences.
#pragma once

#include "core/work/dial_advice.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// The dial to set with what to expect of it, or why none is named; rich text.
QString dial_words(const Habits& habits, const work::DialAdvice& advice);

} // namespace soakbook::ui
