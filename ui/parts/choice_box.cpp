// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/choice_box.h"

#include "ui/parts/icons.h"
#include "ui/parts/theme.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QStyleOptionComboBox>
#include <QStyledItemDelegate>

namespace soakbook::ui {

ChoiceBox::ChoiceBox(QWidget* parent) : QComboBox(parent) {
    setMinimumWidth(scaled(96));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
    setMaxVisibleItems(12);
    // The plain delegate lets the style sheet set the height of an entry.
    view()->setItemDelegate(new QStyledItemDelegate(view()));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ChoiceBox::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    style()->drawComplexControl(QStyle::CC_ComboBox, &option, &painter, this);
    const bool nothing = currentIndex() < 0;
    const QRect arrow(width() - scaled(28), 0, scaled(20), height());
    const QRect room = rect().adjusted(scaled(12), 0, -scaled(32), 0);
    painter.setPen(nothing || !isEnabled() ? colours().soft_ink : colours().ink);
    const QString text = nothing ? placeholderText() : currentText();
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, room.width()));
    paint_icon(painter, QRectF(arrow.center().x() - scaled(8), arrow.center().y() - scaled(8), scaled(16), scaled(16)),
               QStringLiteral("chevron_down"), isEnabled() ? colours().soft_ink : colours().line);
}

} // namespace soakbook::ui
