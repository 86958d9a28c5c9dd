// SPDX-License-Identifier: GPL-3.0-or-later
// The hazard pictograms of the UN's globally harmonized system, drawn here as outlines: black symbol, red diamond.
#pragma once

#include "core/maths/hazard.h"

#include <QColor>
#include <QPainter>
#include <QRectF>

namespace soakbook::ui {

/// Draws GHS05 or GHS07 so that the diamond's four corners touch the sides of `square`. It is told apart by shape alone:
/// printed in black and white nothing is lost.
void draw_pictogram(QPainter& painter, maths::Pictogram picture, const QRectF& square, QColor frame = QColor(0xD5, 0x10, 0x1E));

/// The area of the whole diamond in mm2 when it stands in a square of `side` mm: half the square's.
constexpr double diamond_area(double side) { return side * side / 2; }
/// The side of the square that a diamond of 1 cm2 stands in is 14.14 mm; with a little over, so that no printer is short.
constexpr double least_pictogram_square = 14.3;

} // namespace soakbook::ui
