// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/entry_line.h"

#include "ui/parts/theme.h"

#include <QPainter>

#include <utility>

namespace soakbook::ui {

EntryLine::EntryLine(QWidget* parent) : QLineEdit(parent) {
    setMinimumWidth(scaled(96));
    connect(this, &QLineEdit::textChanged, this, &EntryLine::make_room);
}

void EntryLine::set_aside(const QString& text) {
    if (text != m_aside) {
        m_aside = text;
        make_room();
        update();
    }
}

int EntryLine::aside_width() const {
    return m_aside.isEmpty() ? 0 : QFontMetrics(type_font(Type::small)).horizontalAdvance(m_aside) + scaled(8);
}

bool EntryLine::aside_fits() const {
    const QString shown = text().isEmpty() ? placeholderText() : text();
    return fontMetrics().horizontalAdvance(shown) + aside_width() + scaled(32) <= width();
}

void EntryLine::make_room() {
    const bool fits = aside_fits();
    setTextMargins(0, 0, fits ? aside_width() : 0, 0);
    if (std::exchange(m_fitted, fits) != fits) {
        Q_EMIT fit_changed();
    }
}

void EntryLine::resizeEvent(QResizeEvent* event) {
    QLineEdit::resizeEvent(event);
    make_room();
}

void EntryLine::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    if (m_aside.isEmpty() || !aside_fits()) {
        return;
    }
    QPainter painter(this);
    painter.setFont(type_font(Type::small));
    painter.setPen(colours().soft_ink);
    painter.drawText(rect().adjusted(0, 0, -scaled(12), 0), Qt::AlignRight | Qt::AlignVCenter | Qt::TextSingleLine, m_aside);
}

} // namespace soakbook::ui
