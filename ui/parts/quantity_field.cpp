// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/quantity_field.h"

#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>

#include <algorithm>

namespace soakbook::ui {

QuantityField::QuantityField(const Habits& habits, QWidget* parent)
    : Field(parent), m_habits(habits), m_line(new EntryLine(this)) {
    row()->addWidget(m_line, 1);
    watch(m_line);
    connect(m_line, &QLineEdit::textEdited, this, [this] {
        refresh_aside();
        note_edit();
    });
    connect(m_line, &EntryLine::fit_changed, this, [this] { refresh_line(); });
    connect(&habits, &Habits::preferences_changed, this, [this] {
        refresh_aside();
        refresh_line();
    });
    connect(&habits, &Habits::day_turned, this, &QuantityField::refresh_aside);
}

QString QuantityField::problem() const {
    if (is_empty()) {
        return {};
    }
    const auto read = understand(m_line->text());
    return read ? QString() : unreadable_words(read.error());
}

void QuantityField::clear() {
    set_text({});
}

void QuantityField::set_text(const QString& text) {
    m_line->setText(text);
    m_line->setCursorPosition(0);
    refresh_aside();
    set_complaint({});
}

void QuantityField::refresh_aside() {
    if (is_empty()) {
        m_line->set_aside(unit_sign());
        return;
    }
    const auto read = understand(m_line->text());
    if (!read) {
        m_line->set_aside({});
        return;
    }
    // Where the text says just that, its unit is enough.
    const QString typed = m_line->text().trimmed();
    const QString sign = unit_sign();
    const bool plain = !sign.isEmpty() && read->startsWith(typed) && read->endsWith(sign) &&
                       read->mid(typed.size(), read->size() - typed.size() - sign.size()).trimmed().isEmpty();
    const bool same = *read == typed;
    // A remark such as "today" is no reading of its own.
    const bool remark = std::none_of(read->begin(), read->end(), [](QChar c) { return c.isDigit(); });
    const QString understood = remark ? *read : QString(QStringLiteral("= ") + *read);
    m_line->set_aside(plain ? sign : same ? QString() : understood);
}

QString QuantityField::understood_beneath() const {
    return m_line->aside().startsWith(QLatin1Char('=')) && !m_line->aside_fits() ? m_line->aside() : QString();
}

void QuantityField::mark_wrong(bool wrong) {
    set_flag(m_line, "wrong", wrong);
}

} // namespace soakbook::ui
