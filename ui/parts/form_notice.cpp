// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/form_notice.h"

#include "ui/parts/primary_button.h"
#include "ui/parts/theme.h"

#include <QLabel>
#include <QVBoxLayout>

namespace soakbook::ui {

FormNotice::FormNotice(QWidget* parent)
    : QFrame(parent), m_words(make_label({}, Type::body, this, true)), m_answer(new PrimaryButton({}, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(8);
    m_words->setTextFormat(Qt::PlainText);
    column->addWidget(m_words);
    column->addWidget(m_answer, 0, Qt::AlignLeft);
    connect(m_answer, &QPushButton::clicked, this, &FormNotice::answered);
    hide();
}

void FormNotice::say(const QString& words, const char* kind, bool with_answer) {
    m_words->setText(words);
    m_words->setVisible(!words.isEmpty());
    m_answer->setVisible(with_answer);
    set_kind(this, kind);
    setAccessibleName(words);
    show();
}

void FormNotice::refuse(const QString& words) {
    say(words, "refused", false);
}

void FormNotice::wait(const QString& words) {
    say(words, "notice", false);
}

void FormNotice::ask(const QString& words, const QString& answer, const QString& key) {
    m_answer->setText(answer);
    m_answer->set_key(key);
    say(words, "asked", true);
}

void FormNotice::put_away() {
    m_words->clear();
    hide();
}

QString FormNotice::words() const {
    return isHidden() ? QString() : m_words->text();
}

} // namespace soakbook::ui
