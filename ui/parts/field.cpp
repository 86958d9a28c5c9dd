// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/field.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace soakbook::ui {

Field::Field(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout), m_line(make_soft_label({}, Type::small, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(scaled(4));
    m_row->setSpacing(scaled(4));
    column->addLayout(m_row);
    column->addWidget(m_line);
    m_line->setTextFormat(Qt::PlainText);
    m_line->hide();
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
}

void Field::take_focus() {
    editor()->setFocus(Qt::OtherFocusReason);
    if (auto* line = qobject_cast<QLineEdit*>(editor())) {
        line->selectAll();
    }
}

void Field::set_name(const QString& name) {
    editor()->setAccessibleName(name);
}

void Field::set_help(const QString& help) {
    m_help = help;
    refresh_line();
}

void Field::set_complaint(const QString& words) {
    m_complaint = words;
    refresh_line();
}

void Field::show_problem() {
    m_problem_shown = true;
    refresh_line();
}

QString Field::line_text() const {
    return m_line->isHidden() ? QString() : m_line->text();
}

void Field::note_edit() {
    m_complaint.clear();
    m_problem_shown = false;
    refresh_line();
    Q_EMIT edited();
}

void Field::refresh_line() {
    const QString wrong = !m_complaint.isEmpty() ? m_complaint : m_problem_shown ? problem() : QString();
    const QString beneath = wrong.isEmpty() ? understood_beneath() : QString();
    const QString text = !wrong.isEmpty() ? wrong : !beneath.isEmpty() ? beneath : m_help;
    if (m_line->text() != text) {
        m_line->setText(text);
    }
    m_line->setVisible(!text.isEmpty());
    const QString kind = wrong.isEmpty() ? QString() : QStringLiteral("complaint");
    if (m_line->property("kind").toString() != kind) {
        m_line->setProperty("soft", wrong.isEmpty());
        set_kind(m_line, wrong.isEmpty() ? "" : "complaint");
    }
    mark_wrong(!wrong.isEmpty());
    editor()->setAccessibleDescription(text);
}

void Field::mark_wrong(bool wrong) {
    set_flag(editor(), "wrong", wrong);
}

void Field::watch(QWidget* editor) {
    editor->installEventFilter(this);
}

void Field::focusInEvent(QFocusEvent* event) {
    // A focus proxy would give the field a place of its own in the order of Tab, and lead from there back to its editor.
    QWidget* to = editor();
    if (to != this) {
        to->setFocus(event->reason());
    }
}

bool Field::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut && !m_problem_shown && !is_empty() && !problem().isEmpty()) {
        show_problem();
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace soakbook::ui
