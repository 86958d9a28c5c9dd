// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cards.h"
#include "ui/parts/icons.h"
#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int icon_side = 48;
constexpr int text_width = 440;

} // namespace

EmptyPage::EmptyPage(const QString& icon_name, const QString& title, const QString& text, const QString& button,
                     QWidget* parent)
    : QWidget(parent), m_icon_name(icon_name), m_icon(new QLabel(this)), m_button(new QPushButton(button, this)) {
    auto* heading = make_label(title, Type::heading, this, true);
    auto* words = make_soft_label(text, Type::body, this);
    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(page_margin, page_margin, page_margin, page_margin);
    column->setSpacing(12);
    for (QLabel* label : {m_icon, heading, words}) {
        label->setAlignment(Qt::AlignHCenter);
        column->addWidget(label);
    }
    // Enter presses it too: it is the one thing to do here.
    m_button->setAutoDefault(true);
    set_kind(m_button, "primary");
    m_button->setVisible(!button.isEmpty());
    column->addSpacing(4);
    column->addWidget(m_button, 0, Qt::AlignHCenter);
    auto* across = new QHBoxLayout;
    across->addStretch(1);
    across->addWidget(middle, 1000);
    across->addStretch(1);
    m_middle = middle;
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addStretch(2);
    whole->addLayout(across);
    whole->addStretch(3);
    setFocusProxy(m_button);
    connect(m_button, &QPushButton::clicked, this, &EmptyPage::started);
    settle();
}

void EmptyPage::settle() {
    m_middle->setMaximumWidth(scaled(text_width));
    m_icon->setPixmap(icon(m_icon_name, Tone::accent).pixmap(QSize(scaled(icon_side), scaled(icon_side))));
}

void EmptyPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::PaletteChange) {
        settle();
    }
}

} // namespace soakbook::ui
