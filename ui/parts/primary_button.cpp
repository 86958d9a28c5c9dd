// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/primary_button.h"

#include "ui/parts/theme.h"

#include <QStyleOptionButton>
#include <QStylePainter>

namespace soakbook::ui {

PrimaryButton::PrimaryButton(const QString& words, QWidget* parent) : QPushButton(words, parent) {
    //: The keys that make the entry, as they stand in the button
    m_key = tr("Ctrl+Enter");
    setAutoDefault(false);
    set_kind(this, "primary");
}

void PrimaryButton::set_key(const QString& key) {
    m_key = key;
    updateGeometry();
    update();
}

int PrimaryButton::key_width() const {
    return m_key.isEmpty() ? 0 : QFontMetrics(type_font(Type::small)).horizontalAdvance(m_key) + scaled(12);
}

QSize PrimaryButton::sizeHint() const {
    QSize hint = QPushButton::sizeHint();
    hint.rwidth() += key_width();
    return hint;
}

void PrimaryButton::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);
    const QFontMetrics words(type_font(Type::strong));
    const int width_of_words = words.horizontalAdvance(text());
    const int left = (width() - width_of_words - key_width()) / 2;
    painter.setPen(isEnabled() ? colours().accent_ink : colours().soft_ink);
    painter.setFont(type_font(Type::strong));
    painter.drawText(QRect(left, 0, width_of_words, height()), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, text());
    painter.setFont(type_font(Type::small));
    painter.drawText(QRect(left + width_of_words + scaled(12), 0, key_width(), height()),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, m_key);
}

} // namespace soakbook::ui
