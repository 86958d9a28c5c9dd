// SPDX-License-Identifier: GPL-3.0-or-later
// A code as a square to scan (QR, ISO/IEC 18004).
#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>

#include <vector>

namespace soakbook::ui {

/// The light margin that the standard asks for, in modules, on every side.
constexpr int quiet_modules = 4;
/// No module is printed smaller (handbook of the trade: common practice for hand scanners and phones).
constexpr double least_module = 0.4; ///< mm

/// The square's modules, without the quiet zone.
class QrSquare {
public:
    explicit QrSquare(const QString& text);

    int side() const { return m_side; }
    bool dark(int x, int y) const { return m_dark[static_cast<std::size_t>(y * m_side + x)]; }

private:
    int m_side = 0;
    std::vector<bool> m_dark;
};

/// The fewest dots of a printer with `dots_per_inch` that make a module of at least least_module.
int least_dots(int dots_per_inch);
/// The width of a module of `dots` dots, mm.
constexpr double module_width(int dots, int dots_per_inch) { return dots * 25.4 / dots_per_inch; }
/// The same point moved to the nearest dot, mm.
QPointF on_a_dot(QPointF point, int dots_per_inch);

/// Draws the dark modules, one rectangle a run, with the upper left module's corner moved from `top_left` to the nearest
/// dot. The painter counts in millimetres from the corner of the page.
void draw_qr(QPainter& painter, const QrSquare& square, QPointF top_left, int dots, int dots_per_inch);

} // namespace soakbook::ui
