// SPDX-License-Identifier: GPL-3.0-or-later
// Leads to the form of a draft once its place has been opened.
#pragma once

#include "ui/parts/intent.h"

class QWidget;

namespace soakbook::ui {

class Habits;

/// The key in an intent's prefill that says which draft is wished for.
inline const QString draft_key = QStringLiteral("draft");
/// Presses the button, triggers the action or opens the row that the intent names, in `place`. A name may be several, one
/// after another, with a blank between them.
void press_as_wished(QWidget& place, const Intent& intent);
/// After place.open(intent), for an intent with `draft_key`: opens its form as above and puts the keyboard on the offer. Where
/// no form offers it, as when its record is gone, a window shows what was typed, to be copied or thrown away.
void open_draft(QWidget& place, const Habits& desk, const Intent& intent);

} // namespace soakbook::ui
