// SPDX-License-Identifier: GPL-3.0-or-later
// The line icons, drawn by us on a grid of 20: each a thing of the trade. They take their colour from the theme whenever
// they are painted, so a change of look needs nothing.
#pragma once

#include <QIcon>
#include <QString>

class QPainter;
class QRectF;
class QColor;

namespace soakbook::ui {

/// What an icon is drawn in: soft ink turning to accent where it is chosen, ink, accent, or the text on the accent.
enum class Tone { quiet, ink, accent, on_accent };

/// The icon of that name ("shed", "pail", "undo"), as resources/icons/NAME.svg. An unknown name is an empty icon.
QIcon icon(const QString& name, Tone tone = Tone::quiet);
/// Paints it once into the square in the middle of `rect`.
void paint_icon(QPainter& painter, const QRectF& rect, const QString& name, const QColor& colour);
/// The side of an icon beside text, at the user's text size.
int icon_size();

} // namespace soakbook::ui
