// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/pictograms.h"

#include <QPainterPath>
#include <QPolygonF>

namespace soakbook::ui {

namespace {

// Everything is drawn on a square of 100 by 100 whose side middles are the diamond's corners.

QPolygonF diamond(double inset) {
    return {{QPointF(50, inset), QPointF(100 - inset, 50), QPointF(50, 100 - inset), QPointF(inset, 50)}};
}

// A test tube along the x axis, closed end at the left (0), mouth at the right (length).
void draw_tube(QPainter& painter, QPointF mouth, double degrees) {
    constexpr double length = 23.5;
    constexpr double half = 4.6;
    painter.save();
    painter.translate(mouth);
    painter.rotate(degrees);
    QPainterPath glass;
    glass.moveTo(0, -half);
    glass.lineTo(-length + half, -half);
    glass.arcTo(QRectF(-length, -half, 2 * half, 2 * half), 90, 180);
    glass.lineTo(0, half);
    glass.closeSubpath();
    painter.fillPath(glass, Qt::black);
    painter.fillRect(QRectF(-2.2, -half - 1.3, 2.6, 2 * half + 2.6), Qt::black);
    // The part that has run out already shows as empty glass.
    QPainterPath empty;
    constexpr double wall = 1.7;
    empty.moveTo(-6.5, -half + wall);
    empty.lineTo(-length + half, -half + wall);
    empty.arcTo(QRectF(-length + wall, -half + wall, 2 * (half - wall), 2 * (half - wall)), 90, 90);
    empty.lineTo(-length + wall + 1.2, 0.4);
    empty.closeSubpath();
    painter.fillPath(empty, Qt::white);
    painter.restore();
}

void draw_drop(QPainter& painter, QPointF tip, double height) {
    const double r = height * 0.36;
    QPainterPath drop(tip);
    drop.cubicTo(tip + QPointF(r * 0.35, height * 0.35), tip + QPointF(r, height * 0.45), tip + QPointF(r, height - r));
    drop.arcTo(QRectF(tip.x() - r, tip.y() + height - 2 * r, 2 * r, 2 * r), 0, -180);
    drop.cubicTo(tip + QPointF(-r, height * 0.45), tip + QPointF(-r * 0.35, height * 0.35), tip);
    painter.fillPath(drop, Qt::black);
}

void draw_wisp(QPainter& painter, QPointF foot, double height, double lean) {
    QPainterPath wisp(foot);
    wisp.cubicTo(foot + QPointF(lean * 2.6, -height * 0.3), foot + QPointF(-lean * 2.0, -height * 0.6),
                 foot + QPointF(lean * 1.2, -height));
    painter.strokePath(wisp, QPen(Qt::black, 1.5, Qt::SolidLine, Qt::RoundCap));
}

// A bar that is being eaten away where the drops fall.
QPainterPath eaten_bar() {
    QPainterPath bar(QPointF(19.5, 62));
    for (const QPointF& p : {QPointF(24.0, 62), QPointF(25.4, 64.2), QPointF(27.2, 63.6), QPointF(28.6, 66.6), QPointF(30.6, 65.2),
                             QPointF(31.8, 66.2), QPointF(33.4, 63.4), QPointF(35.0, 63.8), QPointF(36.2, 62), QPointF(47.5, 62),
                             QPointF(47.5, 70), QPointF(24.0, 70)}) {
        bar.lineTo(p);
    }
    bar.closeSubpath();
    return bar;
}

// A hand lying flat, seen from its side: fingers to the left, the wrist at the right, its back eaten into.
QPainterPath eaten_hand() {
    QPainterPath hand(QPointF(52.4, 68.4));
    hand.cubicTo(QPointF(51.4, 66.6), QPointF(53.0, 65.6), QPointF(55.0, 65.4));
    hand.cubicTo(QPointF(58.4, 65.0), QPointF(60.4, 62.4), QPointF(64.0, 61.6));
    for (const QPointF& p : {QPointF(66.0, 61.5), QPointF(67.2, 63.8), QPointF(68.8, 63.0), QPointF(70.4, 66.2), QPointF(72.2, 64.6),
                             QPointF(73.4, 65.8), QPointF(75.0, 62.8), QPointF(76.6, 63.2), QPointF(77.4, 61.6)}) {
        hand.lineTo(p);
    }
    hand.cubicTo(QPointF(79.4, 61.4), QPointF(81.0, 61.0), QPointF(83.2, 60.6));
    hand.lineTo(QPointF(77.6, 71.6));
    hand.cubicTo(QPointF(75.0, 71.4), QPointF(73.2, 73.2), QPointF(70.6, 74.0));
    hand.cubicTo(QPointF(67.4, 75.0), QPointF(64.2, 75.6), QPointF(61.6, 75.2));
    hand.cubicTo(QPointF(59.4, 74.8), QPointF(59.6, 72.4), QPointF(62.0, 72.3));
    hand.cubicTo(QPointF(63.8, 72.2), QPointF(64.6, 71.8), QPointF(65.6, 71.0));
    hand.cubicTo(QPointF(61.0, 71.4), QPointF(57.6, 70.8), QPointF(54.6, 70.6));
    hand.cubicTo(QPointF(53.2, 70.5), QPointF(52.6, 69.8), QPointF(52.4, 68.4));
    hand.closeSubpath();
    return hand;
}

void draw_corrosion(QPainter& painter) {
    painter.translate(50, 50);
    painter.scale(0.9, 0.9);
    painter.translate(-50.3, -52.4);
    draw_tube(painter, QPointF(27.3, 38.5), 180 - 32);
    draw_tube(painter, QPointF(71.7, 38.5), 32);
    draw_drop(painter, QPointF(28.9, 45), 6.2);
    draw_drop(painter, QPointF(30.4, 53), 6.6);
    draw_drop(painter, QPointF(71.2, 45), 6.2);
    draw_drop(painter, QPointF(71.0, 53), 6.6);
    painter.fillPath(eaten_bar(), Qt::black);
    painter.fillPath(eaten_hand(), Qt::black);
    draw_wisp(painter, QPointF(24.6, 60), 6.5, -1);
    draw_wisp(painter, QPointF(36.0, 60), 8.5, 1);
    draw_wisp(painter, QPointF(65.2, 59.4), 7.5, -1);
    draw_wisp(painter, QPointF(76.8, 59.4), 7.0, 1);
}

void draw_exclamation(QPainter& painter) {
    QPainterPath stroke(QPointF(43.6, 25.5));
    stroke.cubicTo(QPointF(43.6, 17.5), QPointF(56.4, 17.5), QPointF(56.4, 25.5));
    stroke.cubicTo(QPointF(56.4, 36), QPointF(54.2, 50), QPointF(53.2, 60.5));
    stroke.cubicTo(QPointF(53.0, 64.6), QPointF(47.0, 64.6), QPointF(46.8, 60.5));
    stroke.cubicTo(QPointF(45.8, 50), QPointF(43.6, 36), QPointF(43.6, 25.5));
    stroke.closeSubpath();
    painter.fillPath(stroke, Qt::black);
    QPainterPath point;
    point.addEllipse(QPointF(50, 74.5), 6.2, 6.2);
    painter.fillPath(point, Qt::black);
}

} // namespace

void draw_pictogram(QPainter& painter, maths::Pictogram picture, const QRectF& square, QColor frame) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(square.topLeft());
    painter.scale(square.width() / 100, square.height() / 100);
    painter.setPen(Qt::NoPen);
    painter.setBrush(frame);
    painter.drawPolygon(diamond(0));
    painter.setBrush(Qt::white);
    painter.drawPolygon(diamond(7));
    switch (picture) {
    case maths::Pictogram::ghs05_corrosion:
        draw_corrosion(painter);
        break;
    case maths::Pictogram::ghs07_exclamation:
        draw_exclamation(painter);
        break;
    }
    painter.restore();
}

} // namespace soakbook::ui
