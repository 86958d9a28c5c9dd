// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/warning_card.h"

#include "ui/parts/state.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace soakbook::ui {

namespace {

constexpr int mark_room = 48;

} // namespace

WarningCard::WarningCard(QWidget* parent) : QFrame(parent), m_text(make_label({}, Type::heading, this, true)) {
    setObjectName(QStringLiteral("over_ceiling"));
    set_kind(this, "refused");
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(scaled(mark_room), 16, 16, 16);
    row->addWidget(m_text);
}

void WarningCard::set_text(const QString& text) {
    m_text->setText(text);
    setAccessibleName(text);
}

QString WarningCard::text() const { return m_text->text(); }

void WarningCard::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const int side = scaled(24);
    paint_state(painter, QRectF((scaled(mark_room) - side) / 2.0, 16, side, side), State::past);
}

} // namespace soakbook::ui
