// SPDX-License-Identifier: GPL-3.0-or-later
// Labels stand at what they name; those at the right end give way to each other.
#include "ui/charts/plot.h"

#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsLineItem>
#include <QGraphicsSimpleTextItem>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr double gap = 6; // pixels from a point to its label

QFont font_of(const ChartLook& look, bool strong) {
    QFont font = look.text;
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

// A label that says what it stands on too, so that a line behind it does not strike it out.
class GroundedText : public QGraphicsSimpleTextItem {
public:
    GroundedText(const QString& text, QGraphicsItem* parent, const QColor& ground) : QGraphicsSimpleTextItem(text, parent), m_ground(ground) {}
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override {
        if (m_ground.isValid()) {
            painter->fillRect(boundingRect().adjusted(-2, 0, 2, 0), m_ground);
        }
        QGraphicsSimpleTextItem::paint(painter, option, widget);
    }

private:
    QColor m_ground;
};

} // namespace

void Plot::set_margins() {
    double right = 12;
    for (const Label& label : m_labels) {
        if (label.side == LabelSide::end) {
            right = std::max(right, QFontMetricsF(font_of(m_look, label.strong)).horizontalAdvance(label.text) + gap + 8);
        }
    }
    chart()->setMargins(QMargins(4, 10, static_cast<int>(right), 2));
}

QRectF Plot::placed(const Label& label, const QRectF& box) const {
    const QRectF area = chart()->plotArea();
    const QPointF at = place_of(label.at);
    const double w = box.width();
    const double h = box.height();
    QPointF corner;
    switch (label.side) {
    case LabelSide::end:
        return {area.right() + gap, at.y() - h / 2, w, h};
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
    corner.setX(std::clamp(corner.x(), std::min(area.left(), room.right() - w - 2), std::max(area.left(), room.right() - w - 2)));
    corner.setY(std::max(corner.y(), room.top()));
    return {corner, box.size()};
}

void Plot::place_labels() {
    for (QGraphicsItem* item : m_label_items) {
        delete item;
    }
    m_label_items.clear();
    if (m_anchor == nullptr) {
        return;
    }
    struct Set {
        GroundedText* item;
        QRectF box;
        bool at_end;
    };
    std::vector<Set> sets;
    for (const Label& label : m_labels) {
        const bool at_end = label.side == LabelSide::end;
        auto* item = new GroundedText(label.text, chart(), at_end || label.side == LabelSide::inside ? QColor() : m_look.ground);
        item->setFont(font_of(m_look, label.strong));
        item->setBrush(label.colour);
        item->setZValue(20);
        m_label_items.push_back(item);
        sets.push_back({item, placed(label, item->boundingRect()), at_end});
    }
    if (m_base_line.isValid()) {
        const QRectF area = chart()->plotArea();
        const double y = place_of({0, 0}).y();
        auto* line = new QGraphicsLineItem(QLineF(area.left(), y, area.right(), y), chart());
        line->setPen(QPen(m_base_line, 1));
        m_label_items.push_back(line);
    }
    std::vector<Set*> at_end;
    for (Set& set : sets) {
        if (set.at_end) {
            at_end.push_back(&set);
        }
    }
    std::stable_sort(at_end.begin(), at_end.end(), [](const Set* a, const Set* b) { return a->box.top() < b->box.top(); });
    for (std::size_t i = 1; i < at_end.size(); ++i) {
        const double over = at_end[i - 1]->box.bottom() - at_end[i]->box.top();
        if (over > 0) {
            at_end[i]->box.translate(0, over);
        }
    }
    const double bottom = chart()->rect().bottom();
    for (std::size_t i = at_end.size(); i-- > 0;) {
        const double limit = i + 1 < at_end.size() ? at_end[i + 1]->box.top() : bottom;
        if (at_end[i]->box.bottom() > limit) {
            at_end[i]->box.moveBottom(limit);
        }
    }
    for (const Set& set : sets) {
        set.item->setPos(set.box.topLeft());
    }
}

} // namespace soakbook::ui
