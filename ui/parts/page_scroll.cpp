// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/page_scroll.h"

#include "ui/parts/cards.h"
#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int side_width = 250;

} // namespace

PageScroll::PageScroll(Width width, QWidget* parent) : QScrollArea(parent), m_column(nullptr) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    // The page is no stop for the Tab key; its widgets are, and bring themselves into view.
    setFocusPolicy(Qt::NoFocus);
    auto* ground = new QWidget(this);
    ground->setProperty("kind", QStringLiteral("page"));
    auto* row = new QHBoxLayout(ground);
    row->setContentsMargins(page_margin, page_margin - 4, page_margin, page_margin);
    auto* middle = new QWidget(ground);
    m_column = new QVBoxLayout(middle);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(16);
    row->addWidget(middle, 1);
    if (width == Width::text) {
        middle->setMaximumWidth(widest_text);
        row->addStretch(0);
        row->setAlignment(middle, Qt::Alignment());
    }
    setWidget(ground);
    viewport()->setAutoFillBackground(false);
    ground->setAutoFillBackground(false);
}

void bring_into_view(QWidget* widget) {
    for (QWidget* above = widget->parentWidget(); above != nullptr; above = above->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(above)) {
            area->ensureWidgetVisible(widget, 0, 48);
            return;
        }
    }
}

SplitPage::SplitPage(const QString& title, const QString& button, QWidget* list, QWidget* page, QWidget* parent)
    : QWidget(parent), m_side(new QWidget(this)), m_page(page), m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(0);
    m_side->setAttribute(Qt::WA_StyledBackground);
    set_kind(m_side, "side");
    auto* column = new QVBoxLayout(m_side);
    column->setContentsMargins(0, 0, 1, 0);
    column->setSpacing(0);
    auto* head = new QHBoxLayout;
    m_head = head;
    head->setSpacing(8);
    head->addWidget(make_label(title, Type::strong, m_side), 1);
    if (!button.isEmpty()) {
        m_button = new QPushButton(button, m_side);
        m_button->setAutoDefault(false);
        set_kind(m_button, "primary");
        head->addWidget(m_button);
    }
    column->addLayout(head);
    column->addWidget(make_rule(m_side));
    column->addWidget(list, 1);
    m_row->addWidget(m_side);
    m_row->addWidget(page, 1);
    settle();
}

void SplitPage::set_page(QWidget* page) {
    if (page == m_page) {
        return;
    }
    m_row->replaceWidget(m_page, page);
    m_page->hide();
    m_page->deleteLater();
    m_page = page;
    m_row->setStretchFactor(page, 1);
    page->show();
}

void SplitPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle();
    }
}

void SplitPage::settle() {
    m_side->setFixedWidth(scaled(side_width));
    m_head->setContentsMargins(scaled(16), scaled(12), scaled(16), scaled(12));
}

} // namespace soakbook::ui
