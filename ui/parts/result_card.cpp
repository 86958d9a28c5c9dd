// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/result_card.h"

#include "core/work/how.h"
#include "ui/parts/how_button.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTextDocumentFragment>

namespace soakbook::ui {

ResultCard::ResultCard(QWidget* parent)
    : QFrame(parent), m_text(make_label({}, Type::body, this, true)), m_mark(new StateMark(State::ready, {}, this)),
      m_rest(make_label({}, Type::body, this, true)), m_next(make_label({}, Type::body, this, true)),
      m_how(new HowButton(this)) {
    set_kind(this, "result");
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(8);
    column->addWidget(m_text);
    auto* verdict = new QHBoxLayout;
    verdict->setSpacing(8);
    verdict->addWidget(m_mark, 0, Qt::AlignTop);
    verdict->addWidget(m_rest, 1);
    column->addLayout(verdict);
    column->addWidget(m_next);
    column->addWidget(m_how, 0, Qt::AlignLeft);
    column->addWidget(m_how->panel());
    // The card is the panel's ground already.
    m_how->panel()->layout()->setContentsMargins(0, 0, 0, 0);
    clear();
}

void ResultCard::set_text(const QString& rich_text) {
    m_text->setText(rich_text);
    settle();
}

void ResultCard::set_verdict(State state, const QString& word, const QString& rest) {
    m_mark->set_state(state, word);
    m_mark->show();
    m_rest->setText(rest);
    settle();
}

void ResultCard::clear_verdict() {
    m_mark->hide();
    m_rest->clear();
    settle();
}

void ResultCard::set_next(const QString& text) {
    m_next->setText(text);
    settle();
}

void ResultCard::set_how(const QString& text) {
    m_how->set_text(text);
    settle();
}

void ResultCard::set_how(const std::vector<work::How>& hows, const Habits& habits) {
    m_how->set_hows(hows, habits);
    settle();
}

void ResultCard::clear() {
    for (QLabel* label : {m_text, m_rest, m_next}) {
        label->clear();
    }
    m_how->set_text({});
    m_mark->hide();
    settle();
}

QString ResultCard::words() const {
    QStringList said;
    const auto say = [&said](const QString& rich) {
        if (!rich.isEmpty()) {
            said << QTextDocumentFragment::fromHtml(rich).toPlainText();
        }
    };
    say(m_text->text());
    if (!m_mark->isHidden()) {
        say(m_mark->word());
    }
    say(m_rest->text());
    say(m_next->text());
    return said.join(QLatin1Char(' '));
}

void ResultCard::settle() {
    for (QLabel* label : {m_text, m_rest, m_next}) {
        label->setVisible(!label->text().isEmpty());
    }
    setVisible(!m_text->text().isEmpty() || !m_mark->isHidden() || !m_next->text().isEmpty());
    setAccessibleName(words());
}

} // namespace soakbook::ui
