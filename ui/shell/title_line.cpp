// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/title_line.h"

#include "ui/parts/theme.h"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace soakbook::ui {

TitleLine::TitleLine(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TitleLine::set_text(const QString& text) {
    m_text = text;
    setAccessibleName(text);
    updateGeometry();
    update();
}

QSize TitleLine::sizeHint() const {
    const QFontMetrics metrics(type_font(Type::title));
    return {metrics.horizontalAdvance(m_text) + 2, metrics.height()};
}

QSize TitleLine::minimumSizeHint() const {
    const QFontMetrics metrics(type_font(Type::title));
    return {std::min(sizeHint().width(), metrics.horizontalAdvance(QLatin1Char('m')) * 5), metrics.height()};
}

void TitleLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(type_font(Type::title));
    painter.setPen(colours().ink);
    const QString shown = painter.fontMetrics().elidedText(m_text, Qt::ElideRight, width());
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown);
    setToolTip(shown == m_text ? QString() : m_text);
}

} // namespace soakbook::ui
