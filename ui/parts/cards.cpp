// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cards.h"

#include "ui/parts/icon_button.h"
#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace soakbook::ui {

Card::Card(const QString& heading, QWidget* parent) : QFrame(parent), m_column(new QVBoxLayout(this)) {
    set_kind(this, "card");
    m_column->setContentsMargins(card_padding, card_padding, card_padding, card_padding);
    m_column->setSpacing(12);
    if (!heading.isEmpty()) {
        set_heading(heading);
    }
}

void Card::make_head() {
    if (m_head != nullptr) {
        return;
    }
    m_head = new QWidget(this);
    m_head_row = new QHBoxLayout(m_head);
    m_head_row->setContentsMargins(0, 0, 0, 0);
    m_head_row->setSpacing(8);
    m_heading = make_label({}, Type::heading, m_head, true);
    m_head_row->addWidget(m_heading, 1);
    m_column->insertWidget(0, m_head);
}

void Card::set_heading(const QString& heading) {
    make_head();
    m_heading->setText(heading);
    setAccessibleName(heading);
}

QPushButton* Card::add_head_button(const QString& words, bool primary) {
    make_head();
    auto* button = new QPushButton(words, m_head);
    button->setAutoDefault(false);
    if (primary) {
        set_kind(button, "primary");
    }
    m_head_row->addWidget(button);
    return button;
}

void Card::add_head_widget(QWidget* widget) {
    make_head();
    m_head_row->addWidget(widget);
}

void Card::set_flush() {
    // The last row ends above the round corners; the heading stands over the words of the first column.
    m_column->setContentsMargins(1, 1, 1, card_radius - 2);
    m_column->setSpacing(0);
    if (m_head != nullptr) {
        m_head_row->setContentsMargins(scaled(12), 12, scaled(12), 12);
    }
}

Caution::Caution(const QString& text, QWidget* parent)
    : QFrame(parent), m_text(make_soft_label(text, Type::small, this)) {
    set_kind(this, "caution");
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 2, 0, 2);
    column->addWidget(m_text);
    set_text(text);
}

void Caution::set_text(const QString& text) {
    m_text->setText(text);
    //: Read aloud before a caution
    setAccessibleName(tr("Caution: %1").arg(text));
}

NoticeBar::NoticeBar(const QString& text, QWidget* parent)
    : QFrame(parent), m_text(make_label(text, Type::body, this, true)), m_buttons(new QHBoxLayout) {
    set_kind(this, "notice");
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 8, 8, 8);
    row->setSpacing(16);
    row->addWidget(m_text, 1);
    m_buttons->setContentsMargins(0, 0, 0, 0);
    m_buttons->setSpacing(8);
    row->addLayout(m_buttons);
}

void NoticeBar::set_text(const QString& text) {
    m_text->setText(text);
    setAccessibleName(text);
}

QPushButton* NoticeBar::add_button(const QString& words, bool primary) {
    auto* button = new QPushButton(words, this);
    button->setAutoDefault(false);
    if (primary) {
        set_kind(button, "primary");
    }
    m_buttons->addWidget(button);
    return button;
}

void NoticeBar::set_can_be_closed(bool can) {
    if (can && m_close == nullptr) {
        //: The small cross that puts a notice away
        auto* cross = new IconButton(QStringLiteral("close"), tr("Put this away"), this);
        layout()->addWidget(cross);
        connect(cross, &QToolButton::clicked, this, &QWidget::hide);
        m_close = cross;
    }
    if (m_close != nullptr) {
        m_close->setVisible(can);
    }
}

QFrame* make_rule(QWidget* parent) {
    auto* rule = new QFrame(parent);
    rule->setFixedHeight(1);
    set_kind(rule, "rule");
    return rule;
}

} // namespace soakbook::ui
