// SPDX-License-Identifier: GPL-3.0-or-later
// Invented labels to print, and where to leave pictures.
#pragma once

#include "ui/print/label_layout.h"

#include <QString>

#include <vector>

namespace soakbook::ui::test {

/// A bag's label; figures invented.
LabelContent a_bag(int number = 1, double strength_percent = 42);
LabelContent a_pail();
LabelContent a_reserved_bag();
/// n bags with codes of their own.
std::vector<LabelContent> bags(int n);
LabelStyle english();

/// A path in SOAKBOOK_PICTURES, or in a folder that goes when the test program ends.
QString picture_path(const QString& name);

} // namespace soakbook::ui::test
