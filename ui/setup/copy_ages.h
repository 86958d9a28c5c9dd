// SPDX-License-Identifier: GPL-3.0-or-later
// How long ago a safe copy was made, in words.
#pragma once

#include "core/maths/quantities.h"

#include <QString>

namespace soakbook::ui {

class Habits;

/// "just now", "14 min ago", "3 h ago", and from a day on the day and time; so also where the clock was set back since.
QString age_words(const Habits& habits, const maths::Instant& then);

} // namespace soakbook::ui
