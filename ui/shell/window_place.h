// SPDX-License-Identifier: GPL-3.0-or-later
// Where the window stood last time, never off the screen.
#pragma once

#include <QRect>

class QWidget;

namespace soakbook::ui {

/// Moves a wanted place so that it lies within one of the screens, no larger than it.
QRect within_screens(const QRect& wanted, const QList<QRect>& screens);
/// Puts the window where it was, or in the middle at its usual size.
void restore_window(QWidget& window);
void remember_window(const QWidget& window);

} // namespace soakbook::ui
