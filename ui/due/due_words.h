// SPDX-License-Identifier: GPL-3.0-or-later
// A row of Due in words: the verb, what, since or by when, the button, and where it leads.
#pragma once

#include "core/work/due.h"
#include "ui/parts/habits.h"
#include "ui/parts/intent.h"
#include "ui/parts/state.h"

namespace soakbook::ui {

struct DueWords {
    QString verb;                ///< "Pull"
    QString what;                ///< "14 hives, Sallow Carr"
    QString when;                ///< "strips in since 12 Sep, latest day was 7 Nov"
    std::optional<State> state;  ///< how urgent `when` is, where it is
    QString button;              ///< "Strips out"
    Intent leads_to;
};

DueWords due_words(const work::DueRow& row, const Habits& habits);
QString group_words(work::DueGroup group);

} // namespace soakbook::ui
