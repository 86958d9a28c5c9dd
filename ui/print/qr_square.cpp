// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/qr_square.h"

#include <cmath>
#include <qrcodegen/qrcodegen.hpp>

namespace soakbook::ui {

QrSquare::QrSquare(const QString& text) {
    const qrcodegen::QrCode code = qrcodegen::QrCode::encodeText(text.toUtf8().constData(), qrcodegen::QrCode::Ecc::MEDIUM);
    m_side = code.getSize();
    m_dark.reserve(static_cast<std::size_t>(m_side * m_side));
    for (int y = 0; y < m_side; ++y) {
        for (int x = 0; x < m_side; ++x) {
            m_dark.push_back(code.getModule(x, y));
        }
    }
}

int least_dots(int dots_per_inch) { return static_cast<int>(std::ceil(least_module * dots_per_inch / 25.4 - 1e-9)); }

QPointF on_a_dot(QPointF point, int dots_per_inch) {
    const double dot = 25.4 / dots_per_inch;
    return {std::round(point.x() / dot) * dot, std::round(point.y() / dot) * dot};
}

void draw_qr(QPainter& painter, const QrSquare& square, QPointF top_left, int dots, int dots_per_inch) {
    const QPointF origin = on_a_dot(top_left, dots_per_inch);
    const double module = module_width(dots, dots_per_inch);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (int y = 0; y < square.side(); ++y) {
        for (int x = 0; x < square.side(); ++x) {
            if (!square.dark(x, y)) {
                continue;
            }
            const int from = x;
            while (x + 1 < square.side() && square.dark(x + 1, y)) {
                ++x;
            }
            painter.fillRect(QRectF(origin.x() + from * module, origin.y() + y * module, (x - from + 1) * module, module), Qt::black);
        }
    }
    painter.restore();
}

} // namespace soakbook::ui
