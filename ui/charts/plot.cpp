// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/plot.h"

#include "ui/parts/theme.h"

#include <QAreaSeries>
#include <QCategoryAxis>
#include <QChart>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QLegend>
#include <QLineSeries>
#include <QLocale>
#include <QScatterSeries>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace soakbook::ui {

Plot::Plot(QWidget* parent) : QChartView(parent) {
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart()->legend()->hide();
    chart()->setBackgroundRoundness(0);
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    connect(chart(), &QChart::plotAreaChanged, this, &Plot::place_labels);
}

void Plot::wear(const ChartLook& look) {
    m_own_look = true;
    m_look = look;
    redraw();
}

void Plot::set_for(QSizeF size) {
    chart()->resize(size);
    scene()->setSceneRect(QRectF(QPointF(), size));
    chart()->layout()->activate();
    place_labels();
}

void Plot::clear() {
    for (QGraphicsItem* item : m_label_items) {
        delete item;
    }
    m_label_items.clear();
    m_labels.clear();
    m_stops.clear();
    m_base_line = {};
    m_stop = -1;
    m_anchor = nullptr;
    chart()->removeAllSeries();
    for (QAbstractAxis* axis : chart()->axes()) {
        // What Qt Charts drew of it goes only with the next turn of the event loop.
        axis->setVisible(false);
        chart()->removeAxis(axis);
        delete axis;
    }
}

void Plot::redraw() {
    clear();
    if (!m_own_look) {
        m_look = chart_look();
    }
    setBackgroundBrush(m_look.ground);
    chart()->setBackgroundBrush(m_look.ground);
    chart()->setBackgroundPen(Qt::NoPen);
    setAccessibleName(name());
    if (!is_empty()) {
        fill();
    }
    set_margins();
    // Otherwise the new axes come with the next turn of the event loop, and the first picture is without them.
    chart()->layout()->invalidate();
    chart()->layout()->activate();
    place_labels();
    Q_EMIT read_out(QString());
    viewport()->update();
}

QValueAxis* Plot::add_axis(Qt::Alignment side, const AxisSteps& steps, const QString& unit, double rim) {
    const bool upright = side == Qt::AlignLeft || side == Qt::AlignRight;
    auto* axis = new QCategoryAxis;
    axis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    axis->setStartValue(steps.from);
    for (int i = 0; i < steps.ticks(); ++i) {
        const double value = steps.from + i * steps.step;
        // Rounded, or a hair of floating point would make a nought read as "-0".
        const double figure = std::abs(value) < steps.step * 1e-6 ? 0.0 : value;
        const QString text = QLocale().toString(figure, 'f', steps.decimals());
        axis->append(unit.isEmpty() ? text : text + QChar(0x202F) + unit, value);
    }
    const double more = (steps.to - steps.from) * rim;
    axis->setRange(steps.from - more, steps.to + more);
    axis->setLabelsFont(m_look.text);
    axis->setTruncateLabels(false);
    axis->setLabelsColor(m_look.soft);
    axis->setGridLinePen(QPen(m_look.line, 1));
    axis->setGridLineVisible(upright);
    axis->setLinePen(QPen(m_look.line, 1));
    axis->setLineVisible(!upright);
    chart()->addAxis(axis, side);
    return axis;
}

void Plot::use_axes(QAbstractAxis* x, QAbstractAxis* y) {
    m_x = x;
    m_y = y;
}

void Plot::add_series(QAbstractSeries* series, QAbstractAxis* x, QAbstractAxis* y) {
    chart()->addSeries(series);
    series->attachAxis(x);
    series->attachAxis(y);
    if (m_anchor == nullptr) {
        m_anchor = series;
    }
}

QXYSeries* Plot::add_line(const std::vector<QPointF>& points, const QColor& colour, double width, Qt::PenStyle style) {
    auto* line = new QLineSeries;
    for (const QPointF& point : points) {
        line->append(point);
    }
    QPen pen(colour, width, style, Qt::FlatCap, Qt::RoundJoin);
    line->setPen(pen);
    add_series(line, m_x, m_y);
    return line;
}

QXYSeries* Plot::add_marks(const std::vector<QPointF>& points, Mark mark, const QColor& colour) {
    auto* marks = new QScatterSeries;
    for (const QPointF& point : points) {
        marks->append(point);
    }
    marks->setMarkerShape(mark == Mark::square ? QScatterSeries::MarkerShapeRectangle : QScatterSeries::MarkerShapeCircle);
    marks->setMarkerSize(mark == Mark::dot ? 5 : mark == Mark::square ? 10 : 10);
    marks->setColor(mark == Mark::ring ? m_look.ground : colour);
    marks->setPen(mark == Mark::ring ? QPen(colour, 1.6) : QPen(m_look.ground, 1));
    add_series(marks, m_x, m_y);
    return marks;
}

void Plot::add_band(double from_x, double to_x, double low, double high) {
    add_band({{from_x, low}, {to_x, low}}, {{from_x, high}, {to_x, high}}, m_look.wanted);
}

void Plot::add_band(const std::vector<QPointF>& low, const std::vector<QPointF>& high, const QColor& colour) {
    auto* upper = new QLineSeries(chart());
    auto* lower = new QLineSeries(chart());
    for (const QPointF& point : high) {
        upper->append(point);
    }
    for (const QPointF& point : low) {
        lower->append(point);
    }
    auto* band = new QAreaSeries(upper, lower);
    upper->setParent(band);
    lower->setParent(band);
    band->setPen(Qt::NoPen);
    band->setBrush(colour);
    add_series(band, m_x, m_y);
}

void Plot::add_label(QPointF at, const QString& text, const QColor& colour, LabelSide side, bool strong, bool grounded) {
    m_labels.push_back({at, text, colour, side, strong, grounded});
}

void Plot::add_base_line(const QColor& colour) { m_base_line = colour; }

void Plot::add_stop(QPointF at, const QString& words) { m_stops.push_back({at, words}); }

QString Plot::words_at(int index) const {
    return index >= 0 && index < stop_count() ? m_stops[static_cast<std::size_t>(index)].words : QString();
}

void Plot::go_to(int index) {
    m_stop = index >= 0 && index < stop_count() ? index : -1;
    viewport()->update();
    Q_EMIT read_out(words_at(m_stop));
}

QPointF Plot::place_of(QPointF value) const { return chart()->mapToPosition(value, m_anchor); }

void Plot::mouseMoveEvent(QMouseEvent* event) {
    int nearest = -1;
    double least = 60; // pixels: further away is not meant
    for (int i = 0; i < stop_count(); ++i) {
        const QPointF away = place_of(m_stops[static_cast<std::size_t>(i)].at) - chart()->mapFromScene(mapToScene(event->pos()));
        // Sideways counts more: one looks along the hours.
        const double distance = std::hypot(away.x(), away.y() / 3);
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    if (nearest != m_stop && nearest >= 0) {
        go_to(nearest);
    }
    QChartView::mouseMoveEvent(event);
}

void Plot::leaveEvent(QEvent* event) {
    if (!hasFocus()) {
        go_to(-1);
    }
    QChartView::leaveEvent(event);
}

void Plot::keyPressEvent(QKeyEvent* event) {
    const int last = stop_count() - 1;
    switch (event->key()) {
    case Qt::Key_Left:
        go_to(std::max(0, m_stop < 0 ? last : m_stop - 1));
        return;
    case Qt::Key_Right:
        go_to(std::min(last, m_stop + 1));
        return;
    case Qt::Key_Home:
        go_to(0);
        return;
    case Qt::Key_End:
        go_to(last);
        return;
    default:
        event->ignore(); // whoever holds the chart may know the key
    }
}

void Plot::focusInEvent(QFocusEvent* event) {
    QChartView::focusInEvent(event);
    viewport()->update();
}

void Plot::focusOutEvent(QFocusEvent* event) {
    QChartView::focusOutEvent(event);
    viewport()->update();
}

void Plot::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !m_own_look && m_look.ground.isValid()) {
        const ChartLook now = chart_look();
        if (!(now == m_look)) {
            redraw();
        }
    }
}

void Plot::drawForeground(QPainter* painter, const QRectF& rect) {
    QChartView::drawForeground(painter, rect);
    if (hasFocus()) {
        painter->setPen(QPen(m_look.measured, 1.5));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(chart()->sceneBoundingRect().adjusted(1, 1, -1, -1), 4, 4);
    }
    if (m_stop >= 0) {
        draw_mark(*painter);
    }
}

void Plot::draw_mark(QPainter& painter) const {
    const QPointF at = chart()->mapToScene(place_of(m_stops[static_cast<std::size_t>(m_stop)].at));
    const QRectF area = chart()->mapRectToScene(chart()->plotArea());
    painter.setPen(QPen(m_look.soft, 1, Qt::DotLine));
    painter.drawLine(QLineF(at.x(), area.top(), at.x(), area.bottom()));
    painter.setPen(QPen(m_look.ink, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, 8, 8);
}

} // namespace soakbook::ui
