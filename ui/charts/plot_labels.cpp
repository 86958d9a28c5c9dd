// SPDX-License-Identifier: GPL-3.0-or-later
// Labels stand at what they name and give way to each other.
#include "ui/charts/plot.h"

#include <QChart>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QGraphicsItem>
#include <QPainter>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr double gap = 6; // pixels from a point to its label

QFont font_of(const ChartLook& look, bool strong) {
    QFont font = look.text;
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

} // namespace

QRectF PlotLabel::boundingRect() const { return QRectF(QPointF(), m_size); }

PlotLabel::PlotLabel(const QString& text, const QFont& font, const QColor& ink, const QColor& ground, QGraphicsItem* parent)
    : QGraphicsItem(parent), m_text(text), m_font(font), m_ink(ink), m_ground(ground) {
    // In pixels of the picture: a printer would take points for its own, finer ones.
    m_font.setPixelSize(QFontInfo(font).pixelSize());
    m_size = QFontMetricsF(m_font).size(0, text) + QSizeF(2, 0);
    setZValue(20);
}

void PlotLabel::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (m_ground.isValid()) {
        painter->fillRect(boundingRect(), m_ground);
    }
    painter->setFont(m_font);
    painter->setPen(m_ink);
    painter->drawText(boundingRect(), Qt::AlignHCenter | Qt::AlignTop, m_text);
}

void Plot::set_margins() {
    double right = 12;
    double bottom = 2;
    for (const Label& label : m_labels) {
        const QFontMetricsF metrics(font_of(m_look, label.strong));
        if (label.side == LabelSide::end) {
            right = std::max(right, metrics.horizontalAdvance(label.text) + gap + 8);
        } else if (label.side == LabelSide::foot) {
            bottom = std::max(bottom, metrics.height() + 5);
        } else if (label.side == LabelSide::second_foot) {
            bottom = std::max(bottom, 2 * metrics.height() + 5);
        }
    }
    chart()->setMargins(QMargins(4, 10, static_cast<int>(right), static_cast<int>(bottom)));
}

QRectF Plot::placed(const Label& label, const QRectF& box) const {
    const QRectF area = chart()->plotArea();
    const QPointF at = place_of(label.at);
    const auto within_picture = [this](double left, double width) {
        const QRectF room = chart()->rect();
        return std::max(room.left() + 2, std::min(left, room.right() - width - 2));
    };
    const double w = box.width();
    const double h = box.height();
    QPointF corner;
    switch (label.side) {
    case LabelSide::end:
        return {area.right() + gap, at.y() - h / 2, w, h};
    case LabelSide::foot:
        return {within_picture(at.x() - w / 2, w), area.bottom() + 3, w, h};
    case LabelSide::second_foot:
        return {within_picture(at.x() - w / 2, w), area.bottom() + 3 + h, w, h};
    case LabelSide::above:
        corner = {at.x() - w / 2, at.y() - h - gap};
        break;
    case LabelSide::below:
        corner = {at.x() - w / 2, at.y() + gap};
        break;
    case LabelSide::right:
        corner = {at.x() + gap, at.y() - h / 2};
        break;
    case LabelSide::left:
        corner = {at.x() - gap - w, at.y() - h / 2};
        break;
    case LabelSide::inside:
        corner = {at.x() - w / 2, at.y() - h / 2};
        break;
    }
    // What would run out of the picture is moved back in.
    const QRectF room = chart()->rect();
    const double rightmost = room.right() - w - 2;
    corner.setX(std::clamp(corner.x(), std::min(area.left(), rightmost), std::max(area.left(), rightmost)));
    corner.setY(std::max(corner.y(), room.top()));
    return {corner, box.size()};
}

void Plot::place_base_line() {
    if (!m_base_line.isValid()) {
        return;
    }
    const QRectF area = chart()->plotArea();
    const double y = place_of({0, 0}).y();
    auto* line = new QGraphicsLineItem(QLineF(area.left(), y, area.right(), y), chart());
    line->setPen(QPen(m_base_line, 1));
    m_label_items.push_back(line);
}

void Plot::place_labels() {
    for (QGraphicsItem* item : m_label_items) {
        delete item;
    }
    m_label_items.clear();
    if (m_anchor == nullptr) {
        return;
    }
    place_base_line();
    std::vector<QRectF> taken;
    const Label* before = nullptr;
    std::vector<std::pair<PlotLabel*, QRectF>> at_end;
    for (const Label& label : m_labels) {
        auto* item = new PlotLabel(label.text, font_of(m_look, label.strong), label.colour, label.grounded ? m_look.ground : QColor(), chart());
        m_label_items.push_back(item);
        QRectF box = placed(label, item->boundingRect());
        if (label.side == LabelSide::end) {
            at_end.emplace_back(item, box);
            continue;
        }
        if (label.side == LabelSide::left || label.side == LabelSide::right) {
            if (before != nullptr && before->side == label.side && before->at == label.at) {
                box.moveTop(taken.back().bottom()); // goes on from the label before
            }
            const auto hits = [&box](const QRectF& other) { return box.intersects(other); };
            for (int tries = 0; tries < 8 && std::any_of(taken.begin(), taken.end(), hits); ++tries) {
                box.translate(0, box.height());
            }
        }
        taken.push_back(box);
        before = &label;
        item->setPos(box.topLeft());
    }
    std::stable_sort(at_end.begin(), at_end.end(), [](const auto& a, const auto& b) { return a.second.top() < b.second.top(); });
    for (std::size_t i = 1; i < at_end.size(); ++i) {
        at_end[i].second.translate(0, std::max(0.0, at_end[i - 1].second.bottom() - at_end[i].second.top()));
    }
    double limit = chart()->rect().bottom();
    for (std::size_t i = at_end.size(); i-- > 0;) {
        QRectF& box = at_end[i].second;
        if (box.bottom() > limit) {
            box.moveBottom(limit);
        }
        limit = box.top();
        at_end[i].first->setPos(box.topLeft());
    }
}

} // namespace soakbook::ui
