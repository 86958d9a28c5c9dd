// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/page_with_card.h"

#include "ui/parts/theme.h"

#include <QBoxLayout>
#include <QEvent>
#include <QScrollArea>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int card_width = 280;
constexpr int least_left = 420;
constexpr int gap = 16;

} // namespace

PageWithCard::PageWithCard(QWidget* card, QWidget* parent)
    : QWidget(parent), m_row(new QBoxLayout(QBoxLayout::LeftToRight, this)), m_left(new QVBoxLayout), m_card(card),
      m_scroll(new QScrollArea) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(gap);
    m_left->setSpacing(gap);
    m_row->addLayout(m_left, 1);
    // The keys that scroll come from whatever has the keyboard in the card.
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(m_card);
    m_scroll->viewport()->setAutoFillBackground(false);
    m_card->installEventFilter(this);
    m_row->addWidget(m_scroll);
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
    m_scroll->setMinimumWidth(roomy ? scaled(card_width) : 0);
    m_scroll->setMaximumWidth(roomy ? scaled(card_width) : QWIDGETSIZE_MAX);
    const int whole = m_card->layout()->hasHeightForWidth() ? m_card->layout()->totalHeightForWidth(width())
                                                            : m_card->sizeHint().height();
    m_scroll->setMinimumHeight(roomy ? 0 : std::max(whole, m_card->minimumSizeHint().height()));
}

bool PageWithCard::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_card && event->type() == QEvent::LayoutRequest)
        arrange();
    return QWidget::eventFilter(watched, event);
}

} // namespace soakbook::ui
