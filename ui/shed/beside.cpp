// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/beside.h"

#include "ui/parts/theme.h"

#include <QBoxLayout>
#include <QEvent>

namespace soakbook::ui {

namespace {

constexpr int form_width = 360;
constexpr int least_left = 320;
constexpr int gap = 32;

} // namespace

Beside::Beside(QWidget* parent)
    : QWidget(parent), m_row(new QBoxLayout(QBoxLayout::LeftToRight, this)), m_left(new QWidget(this)),
      m_right(new QWidget(this)), m_left_column(new QVBoxLayout(m_left)), m_right_column(new QVBoxLayout(m_right)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    for (QVBoxLayout* column : {m_left_column, m_right_column}) {
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(scaled(12));
        column->setAlignment(Qt::AlignTop);
    }
    m_row->addWidget(m_left, 1, Qt::Alignment());
    m_row->addWidget(m_right, 0, Qt::Alignment());
    // The keyboard goes through the form first.
    setTabOrder(m_right, m_left);
    arrange();
}

void Beside::set_right_shown(bool shown) { m_right->setVisible(shown); }

bool Beside::is_right_shown() const { return !m_right->isHidden(); }

void Beside::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void Beside::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        arrange();
}

void Beside::arrange() {
    const bool roomy = width() >= scaled(least_left + gap + form_width);
    m_row->setDirection(roomy ? QBoxLayout::LeftToRight : QBoxLayout::BottomToTop);
    m_row->setSpacing(scaled(roomy ? gap : 16));
    m_right->setMinimumWidth(roomy ? scaled(form_width) : 0);
    m_right->setMaximumWidth(roomy ? scaled(form_width) : QWIDGETSIZE_MAX);
}

} // namespace soakbook::ui
