// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cards.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTextDocument>
#include <QTextDocumentFragment>

namespace soakbook::ui {

Sentence::Sentence(QWidget* parent) : QWidget(parent), m_parts(new FlowLayout(24, 4)), m_remark(make_soft_label({}, Type::body, this, false)) {
    auto* whole = new QHBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(24);
    whole->addLayout(m_parts, 1);
    whole->addWidget(m_remark, 0, Qt::AlignTop);
    m_remark->hide();
}

void Sentence::clear() {
    while (QLayoutItem* item = m_parts->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    set_remark({});
}

void Sentence::add(const QString& rich_text) {
    m_parts->addWidget(make_label(rich_text, Type::body, this));
}

void Sentence::add(State state, const QString& text) {
    // A mark is painted in one weight, so that tags would only show as tags.
    const QString words = Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text;
    m_parts->addWidget(new StateMark(state, words, this));
}

void Sentence::set_remark(const QString& text) {
    m_remark->setText(text);
    m_remark->setVisible(!text.isEmpty());
}

} // namespace soakbook::ui
