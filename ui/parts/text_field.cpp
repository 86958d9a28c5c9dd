// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/text_field.h"

#include "ui/parts/theme.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace soakbook::ui {

TextField::TextField(QWidget* parent) : Field(parent), m_line(new QLineEdit(this)) {
    m_line->setMinimumWidth(scaled(96));
    row()->addWidget(m_line, 1);
    watch(m_line);
    connect(m_line, &QLineEdit::textEdited, this, &TextField::note_edit);
}

QWidget* TextField::editor() const {
    return m_line;
}

void TextField::clear() {
    set_value({});
}

QString TextField::value() const {
    return m_line->text().trimmed();
}

void TextField::set_value(const QString& text) {
    m_line->setText(text);
    m_line->setCursorPosition(0);
    set_complaint({});
}

void TextField::set_placeholder(const QString& text) {
    m_line->setPlaceholderText(text);
}

void TextField::set_read_only(bool read_only) {
    m_line->setReadOnly(read_only);
}

void TextField::set_suggestions(const QStringList& words) {
    auto* completer = new QCompleter(words, m_line);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    m_line->setCompleter(completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &TextField::note_edit);
}

CodeField::CodeField(QWidget* parent) : TextField(parent) {
    line()->setProperty("code", true);
    line()->setInputMethodHints(Qt::ImhUppercaseOnly | Qt::ImhNoPredictiveText);
}

QString CodeField::value() const {
    QString code = line()->text().toUpper();
    code.removeIf([](QChar c) { return c.isSpace(); });
    return code;
}

NoteField::NoteField(QWidget* parent) : Field(parent), m_text(new QPlainTextEdit(this)) {
    m_text->setTabChangesFocus(true);
    m_text->setLineWrapMode(QPlainTextEdit::WidgetWidth);
    row()->addWidget(m_text, 1);
    watch(m_text);
    set_height();
    connect(m_text, &QPlainTextEdit::textChanged, this, &NoteField::note_edit);
}

QWidget* NoteField::editor() const {
    return m_text;
}

void NoteField::clear() {
    set_value({});
}

QString NoteField::value() const {
    return m_text->toPlainText().trimmed();
}

void NoteField::set_value(const QString& text) {
    const QSignalBlocker silent(m_text);
    m_text->setPlainText(text);
    set_complaint({});
}

void NoteField::set_placeholder(const QString& text) {
    m_text->setPlaceholderText(text);
}

void NoteField::changeEvent(QEvent* event) {
    Field::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        set_height();
    }
}

void NoteField::set_height() {
    constexpr int lines = 2;
    m_text->setFixedHeight(QFontMetrics(type_font(Type::body)).lineSpacing() * lines + scaled(22));
}

} // namespace soakbook::ui
