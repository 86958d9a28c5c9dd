// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/state.h"

#include "ui/parts/theme.h"

#include <QCoreApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace soakbook::ui {

namespace {

int shape_size() {
    return scaled(11);
}

int shape_gap() {
    return scaled(8);
}

} // namespace

QString state_word(State state) {
    switch (state) {
    case State::resting:
        //: State of a bag or batch: it still has to wait until it may be used
        return QCoreApplication::translate("State", "resting");
    case State::ready:
        //: State of a bag, batch or hive: it may be used, all is as it should be
        return QCoreApplication::translate("State", "ready");
    case State::near:
        //: State: the limit comes near
        return QCoreApplication::translate("State", "near the limit");
    case State::past:
        //: State: past the limit
        return QCoreApplication::translate("State", "past");
    case State::gone:
        //: State: used up, thrown away or closed
        return QCoreApplication::translate("State", "gone");
    }
    return {};
}

QColor state_colour(State state) {
    const Colours& c = colours();
    switch (state) {
    case State::resting:
        return c.resting;
    case State::ready:
        return c.ready;
    case State::near:
        return c.near_limit;
    case State::past:
        return c.past;
    case State::gone:
        break;
    }
    return c.gone;
}

QColor state_ink(State state) {
    constexpr double readable = 4.5;
    const Colours& c = colours();
    const QColor pure = state_colour(state);
    QColor ink = pure;
    for (int tenths = 0; tenths <= 10; ++tenths) {
        ink = mixed(pure, c.ink, tenths / 10.0);
        if (std::min({contrast(ink, c.paper), contrast(ink, c.card), contrast(ink, c.accent_wash)}) >= readable) {
            break;
        }
    }
    return ink;
}

void paint_state(QPainter& painter, const QRectF& rect, State state) {
    paint_state(painter, rect, state, state_colour(state));
}

void paint_state(QPainter& painter, const QRectF& rect, State state, const QColor& colour) {
    const double size = std::min(rect.width(), rect.height());
    const double left = rect.center().x() - size / 2;
    const double top = rect.center().y() - size / 2;
    const QRectF box(left, top, size, size);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double stroke = size * 0.18;
    switch (state) {
    case State::resting:
        painter.drawEllipse(box.adjusted(size * 0.04, size * 0.04, -size * 0.04, -size * 0.04));
        break;
    case State::ready: {
        QPainterPath tick(QPointF(left + size * 0.06, top + size * 0.55));
        tick.lineTo(left + size * 0.38, top + size * 0.86);
        tick.lineTo(left + size * 0.94, top + size * 0.18);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, stroke * 1.05, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPath(tick);
        break;
    }
    case State::near: {
        QPainterPath triangle(QPointF(left + size * 0.5, top + size * 0.04));
        triangle.lineTo(left + size, top + size * 0.95);
        triangle.lineTo(left, top + size * 0.95);
        triangle.closeSubpath();
        painter.drawPath(triangle);
        break;
    }
    case State::past:
        painter.drawRect(box.adjusted(size * 0.06, size * 0.06, -size * 0.06, -size * 0.06));
        break;
    case State::gone:
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, stroke));
        painter.drawEllipse(box.adjusted(stroke, stroke, -stroke, -stroke));
        break;
    }
    painter.restore();
}

void paint_state_and_word(QPainter& painter, const QRect& rect, State state, const QString& word, Qt::Alignment align) {
    painter.save();
    painter.setFont(type_font(Type::strong));
    const QFontMetrics metrics = painter.fontMetrics();
    const int room = std::max(0, rect.width() - shape_size() - shape_gap());
    const QString shown = metrics.elidedText(word, Qt::ElideRight, room);
    const int width = shape_size() + shape_gap() + metrics.horizontalAdvance(shown);
    const int left = align.testFlag(Qt::AlignRight) ? rect.right() + 1 - width : rect.left();
    paint_state(painter, QRectF(left, rect.center().y() - shape_size() / 2.0 + 0.5, shape_size(), shape_size()), state);
    painter.setPen(state_ink(state));
    painter.drawText(QRect(left + shape_size() + shape_gap(), rect.top(), room, rect.height()),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown);
    painter.restore();
}

int width_of_state_and_word(const QString& word) {
    return shape_size() + shape_gap() + QFontMetrics(type_font(Type::strong)).horizontalAdvance(word) + 1;
}

StateMark::StateMark(State state, const QString& word, QWidget* parent) : QWidget(parent), m_state(state) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    set_state(state, word);
}

void StateMark::set_state(State state, const QString& word) {
    m_state = state;
    m_word = word;
    setAccessibleName(this->word());
    updateGeometry();
    update();
}

QString StateMark::word() const {
    return m_word.isEmpty() ? state_word(m_state) : m_word;
}

QSize StateMark::sizeHint() const {
    return {width_of_state_and_word(word()), QFontMetrics(type_font(Type::strong)).height() + 2};
}

void StateMark::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_state_and_word(painter, rect(), m_state, word(), Qt::AlignLeft);
}

void StateMark::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        updateGeometry();
    }
}

} // namespace soakbook::ui
