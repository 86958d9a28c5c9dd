// SPDX-License-Identifier: GPL-3.0-or-later
// The one style sheet, written from the theme's colours and sizes.
#pragma once

#include "ui/parts/theme.h"

namespace soakbook::ui {

/// The style sheet for the look and text size worn now.
QString style_sheet();

/// The name a type has in the style sheet.
QString type_name(Type type);
/// The type's size in points at 100 %.
double type_points(Type type);
bool type_is_strong(Type type);

} // namespace soakbook::ui
