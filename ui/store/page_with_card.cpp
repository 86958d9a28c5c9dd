// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/page_with_card.h"

#include "ui/parts/theme.h"

#include <QBoxLayout>
#include <QEvent>

namespace soakbook::ui {

namespace {

constexpr int card_width = 280;
constexpr int least_left = 420;
constexpr int gap = 16;

} // namespace

PageWithCard::PageWithCard(QWidget* card, QWidget* parent)
    : QWidget(parent), m_row(new QBoxLayout(QBoxLayout::LeftToRight, this)), m_left(new QVBoxLayout), m_card(card) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(gap);
    m_left->setSpacing(gap);
    m_row->addLayout(m_left, 1);
    m_row->addWidget(m_card);
    arrange();
}

void PageWithCard::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void PageWithCard::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        arrange();
}

void PageWithCard::arrange() {
    const bool roomy = width() >= scaled(least_left + card_width) + gap;
    m_row->setDirection(roomy ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_card->setMinimumWidth(roomy ? scaled(card_width) : 0);
    m_card->setMaximumWidth(roomy ? scaled(card_width) : QWIDGETSIZE_MAX);
}

} // namespace soakbook::ui
