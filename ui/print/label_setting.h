// SPDX-License-Identifier: GPL-3.0-or-later
// One try at setting a label after a plan; label_layout chooses the plan.
#pragma once

#include "ui/print/label_layout.h"

namespace soakbook::ui {

/// The pieces that this label has anything to say of.
LabelPieces pieces_of(const LabelContent& content, const LabelStyle& style);

/// Sets the label after the plan, or nothing when it does not fit. With `airy`, a twelfth of the height must stay free.
std::optional<LabelLayout> set_label(const LabelContent& content, QSizeF size, const LabelStyle& style, const LabelPlan& plan,
                                     bool airy = false);

} // namespace soakbook::ui
