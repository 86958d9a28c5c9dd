// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/beside.h"

#include "ui/parts/theme.h"

#include <QBoxLayout>
#include <QEvent>
#include <QResizeEvent>
#include <QTimer>

namespace soakbook::ui {

namespace {

constexpr int least_left = 320;
constexpr int gap = 32;
constexpr int between = 12;

/// A column whose parts stand at its top, however tall its neighbour is.
QVBoxLayout* column_in(QWidget* widget) {
    auto* whole = new QVBoxLayout(widget);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    auto* column = new QVBoxLayout;
    column->setSpacing(between);
    whole->addLayout(column);
    whole->addStretch(1);
    return column;
}

} // namespace

Beside::Beside(int right_width, QWidget* parent)
    : QWidget(parent), m_right_width(right_width), m_row(new QBoxLayout(QBoxLayout::LeftToRight)), m_left(new QWidget(this)),
      m_right(new QWidget(this)), m_left_column(column_in(m_left)), m_right_column(column_in(m_right)),
      m_below(new QVBoxLayout) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(16);
    whole->addLayout(m_row);
    whole->addLayout(m_below);
    m_below->setSpacing(between);
    m_row->addWidget(m_left, 1);
    m_row->addWidget(m_right);
    arrange();
}

void Beside::set_right_shown(bool shown) { m_right->setVisible(shown); }

bool Beside::is_right_shown() const { return !m_right->isHidden(); }

void Beside::set_left_shown(bool shown) { m_left->setVisible(shown); }

void Beside::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
    if (event->size().width() == event->oldSize().width())
        return;
    QMetaObject::invokeMethod(this, &Beside::settle_heights, Qt::QueuedConnection);
    // Once more when all that is posted was laid out: a form may have changed its columns only then.
    QTimer::singleShot(0, this, &Beside::settle_heights);
}

void Beside::settle_heights() {
    // A form that went from two columns to one while it was laid out is higher than its surroundings know.
    for (QWidget* child : findChildren<QWidget*>()) {
        if (child->layout() == nullptr)
            continue;
        child->layout()->invalidate();
        // What stands around it remembers its height for a width, until it is told.
        child->updateGeometry();
    }
    for (QWidget* above = this; above != nullptr && !above->isWindow(); above = above->parentWidget())
        above->updateGeometry();
}

void Beside::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        arrange();
}

void Beside::arrange() {
    const bool roomy = width() >= scaled(least_left + m_right_width) + gap;
    m_row->setDirection(roomy ? QBoxLayout::LeftToRight : QBoxLayout::BottomToTop);
    m_row->setSpacing(roomy ? gap : 16);
    m_right->setMinimumWidth(roomy ? scaled(m_right_width) : 0);
    m_right->setMaximumWidth(roomy ? scaled(m_right_width) : QWIDGETSIZE_MAX);
}

} // namespace soakbook::ui
