// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/state_line.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace soakbook::ui {

StateLine::StateLine(QWidget* parent) : QWidget(parent), m_text(make_label({}, Type::body, this, true)) {
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* row = new QHBoxLayout(this);
    row->addWidget(m_text, 1);
    settle();
}

void StateLine::set(std::optional<State> state, const QString& text) {
    m_state = state;
    m_text->setText(text);
    setAccessibleName(text);
    settle();
    update();
}

QString StateLine::text() const { return m_text->text(); }

void StateLine::settle() { layout()->setContentsMargins(m_state ? scaled(22) : 0, 0, 0, 0); }

void StateLine::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    if (!m_state)
        return;
    QPainter painter(this);
    const int side = scaled(12);
    const int line = QFontMetrics(m_text->font()).height();
    paint_state(painter, QRectF(scaled(1), (line - side) / 2.0, side, side), *m_state);
}

void StateLine::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        settle();
}

} // namespace soakbook::ui
