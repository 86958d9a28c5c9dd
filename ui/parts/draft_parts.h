// SPDX-License-Identifier: GPL-3.0-or-later
// Reads out of a form what was typed, and puts it back as if it were typed again.
#pragma once

#include "ui/parts/draft.h"

class QWidget;

namespace soakbook::ui {

/// What stands in the editors below these fields of `form`, in this order, and what was typed into the cells of its tables;
/// hidden ones too.
std::vector<DraftPart> read_parts(const QWidget& form, const std::vector<const QWidget*>& fields);
/// Puts it back. Gives back what found no place any more.
std::vector<DraftPart> put_parts(QWidget& form, const std::vector<DraftPart>& parts);

} // namespace soakbook::ui
