// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a label on paper or screen.
#pragma once

#include "ui/print/label_layout.h"
#include "ui/print/label_sheet.h"

#include <QPainter>

namespace soakbook::ui {

/// Paints the label with its top left corner at `corner` of the page. The painter counts in millimetres from the corner of
/// the page, so that the square to scan can be set on the printer's dots.
void paint_label(QPainter& painter, const LabelLayout& label, QPointF corner, int dots_per_inch = 300);

/// Paints a page to test sheet and printer with: the outline of every label, its number, and rulers along two edges.
void paint_test_page(QPainter& painter, const LabelSheet& sheet);

/// Makes a painter on any device count in millimetres from the corner of the paper.
void count_in_millimetres(QPainter& painter, int dots_per_inch_x, int dots_per_inch_y);

} // namespace soakbook::ui
