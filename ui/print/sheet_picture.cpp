// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_picture.h"

#include "ui/parts/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace soakbook::ui {

SheetPicture::SheetPicture(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    //: what a screen reader calls the small picture of a sheet of labels
    setAccessibleName(tr("The first label to print on"));
}

QSize SheetPicture::sizeHint() const { return {scaled(150), scaled(190)}; }

void SheetPicture::show_sheet(const LabelSheet& sheet, int start, int count) {
    m_sheet = sheet;
    m_start = start;
    m_count = count;
    //: what a screen reader says of the small picture of a sheet of labels
    setAccessibleDescription(tr("Label %1 of %2").arg(start + 1).arg(sheet.labels_a_page()));
    update();
}

QRectF SheetPicture::place_of(int label) const {
    LabelSheet sheet = m_sheet;
    sheet.offset_x = 0;
    sheet.offset_y = 0;
    const QSizeF page = sheet.page.scaled(QSizeF(size()) - QSizeF(6, 6), Qt::KeepAspectRatio);
    const double scale = page.width() / std::max(1.0, sheet.page.width());
    const QRectF mm = label < 0 ? QRectF(QPointF(), sheet.page) : sheet.label_at(label);
    return {3 + mm.left() * scale, 3 + mm.top() * scale, mm.width() * scale, mm.height() * scale};
}

void SheetPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    painter.setPen(QPen(c.soft_ink, 1));
    painter.setBrush(c.card);
    painter.drawRect(place_of(-1));
    const int labels = m_sheet.labels_a_page();
    for (int n = 0; n < labels; ++n) {
        const QRectF label = place_of(n).adjusted(1, 1, -1, -1);
        const bool printed = n >= m_start && n < m_start + m_count;
        painter.setPen(QPen(n == m_start ? c.accent : c.line, n == m_start ? 2 : 1));
        painter.setBrush(printed ? c.accent_wash : c.card);
        painter.drawRect(label);
        // A label that is gone from the sheet is crossed out: told without colour.
        if (n < m_start) {
            painter.drawLine(label.topLeft(), label.bottomRight());
        }
    }
    if (labels > 1 && m_start < labels) {
        painter.setPen(c.ink);
        painter.setFont(type_font(Type::small_strong));
        painter.drawText(place_of(m_start), Qt::AlignCenter, QString::number(m_start + 1));
    }
    if (hasFocus()) {
        painter.setPen(QPen(c.accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void SheetPicture::choose(int start) {
    const int wanted = std::clamp(start, 0, std::max(0, m_sheet.labels_a_page() - 1));
    if (wanted != m_start) {
        Q_EMIT start_chosen(wanted);
    }
}

void SheetPicture::mousePressEvent(QMouseEvent* event) {
    for (int n = 0; n < m_sheet.labels_a_page(); ++n) {
        if (place_of(n).contains(event->position())) {
            choose(n);
            return;
        }
    }
}

void SheetPicture::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        choose(m_start - 1);
        return;
    case Qt::Key_Right:
        choose(m_start + 1);
        return;
    case Qt::Key_Up:
        choose(m_start - m_sheet.columns < 0 ? m_start : m_start - m_sheet.columns);
        return;
    case Qt::Key_Down:
        choose(m_start + m_sheet.columns < m_sheet.labels_a_page() ? m_start + m_sheet.columns : m_start);
        return;
    case Qt::Key_Home:
        choose(0);
        return;
    case Qt::Key_End:
        choose(m_sheet.labels_a_page() - 1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace soakbook::ui
