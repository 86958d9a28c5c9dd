// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt at each step of a batch, in two or three short sentences. The label, the safety data sheet and local rules
// always come first. Sources: ICSC 0707 (oxalic acid dihydrate) for eyes, skin, dust and first aid; common practice for the
// tank.
#pragma once

#include "core/maths/quantities.h"
#include "ui/parts/habits.h"

#include <QString>

namespace soakbook::ui {

QString powder_caution();
QString tank_caution();
QString liquid_caution();
QString bag_caution();
QString pail_caution();
/// What to do at once when the tank is over its ceiling.
QString over_ceiling_words(const Habits& habits, maths::Temperature probe, maths::Temperature ceiling);

} // namespace soakbook::ui
