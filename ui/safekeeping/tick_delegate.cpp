// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/tick_delegate.h"

#include "ui/parts/theme.h"

#include <QMouseEvent>
#include <QPainter>

namespace soakbook::ui {

namespace {

constexpr int line_height = 32;

bool has_box(const QModelIndex& index) { return index.data(Qt::CheckStateRole).isValid(); }
// What the box takes before the words; these have their own space before them.
int box_width() { return scaled(28); }
QRect box_of(const QRect& line) {
    const int side = scaled(18);
    return {line.left() + scaled(10), line.center().y() - side / 2, side, side};
}

void paint_box(QPainter& painter, const QRect& box, bool ticked) {
    const Colours& c = colours();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ticked ? c.accent : c.soft_ink, 1));
    painter.setBrush(ticked ? c.accent : c.card);
    painter.drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), scaled(4), scaled(4));
    if (!ticked)
        return;
    painter.setPen(QPen(c.accent_ink, std::max(2, scaled(2)), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double w = box.width();
    const QPointF corner(box.topLeft());
    painter.drawPolyline(QPolygonF({corner + QPointF(w * 0.24, w * 0.52), corner + QPointF(w * 0.43, w * 0.72), corner + QPointF(w * 0.78, w * 0.30)}));
}

} // namespace

void TickDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem words = option;
    words.state.setFlag(QStyle::State_HasFocus, false);
    if (has_box(index)) {
        QStyleOptionViewItem before = words;
        before.rect.setWidth(box_width());
        CellDelegate::paint(painter, before, QModelIndex());
        words.rect.setLeft(option.rect.left() + box_width());
    }
    CellDelegate::paint(painter, words, index);
    painter->save();
    if (has_box(index))
        paint_box(*painter, box_of(option.rect), index.data(Qt::CheckStateRole).toInt() == Qt::Checked);
    // One ring says which line has the keyboard.
    if (option.state.testFlag(QStyle::State_HasFocus) && index.column() == 0) {
        painter->setRenderHint(QPainter::Antialiasing, false);
        painter->setPen(QPen(colours().accent, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    painter->restore();
}

QSize TickDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QSize words = CellDelegate::sizeHint(option, index);
    return {words.width() + (has_box(index) ? box_width() : 0), scaled(line_height)};
}

bool TickDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option, const QModelIndex& index) {
    const bool pressed = event->type() == QEvent::MouseButtonPress || event->type() == QEvent::MouseButtonDblClick;
    if (!pressed && event->type() != QEvent::MouseButtonRelease)
        return CellDelegate::editorEvent(event, model, option, index);
    const auto* mouse = static_cast<QMouseEvent*>(event);
    const QRect box(option.rect.left(), option.rect.top(), box_width() + scaled(8), option.rect.height());
    if (!has_box(index) || !index.flags().testFlag(Qt::ItemIsUserCheckable) || mouse->button() != Qt::LeftButton || !box.contains(mouse->position().toPoint()))
        return false;
    if (!pressed)
        model->setData(index, index.data(Qt::CheckStateRole).toInt() == Qt::Checked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    return true;
}

} // namespace soakbook::ui
