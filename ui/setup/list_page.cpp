// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/list_page.h"

#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/theme.h"

#include <QHash>

namespace soakbook::ui {

ListPage::ListPage(Desk& desk, const QString& heading, const QString& explanation, const QString& add_words, const QString& name)
    : m_desk(desk), m_name(name) {
    m_card = new Card(heading);
    QPushButton* add = m_card->add_head_button(add_words, true);
    add->setObjectName(name + QStringLiteral("_add"));
    m_card->add_head_widget(make_history_button(m_desk, this, [this] { return history(); }, name + QStringLiteral("_history")));
    m_card->column()->addWidget(make_soft_label(explanation, Type::body));
    m_table = new RecordTable(QStringLiteral("setup/") + name, heading);
    m_table->setObjectName(name + QStringLiteral("_table"));
    m_table->set_full_height(true);
    m_card->column()->addWidget(m_table);
    column()->addWidget(m_card);
    column()->addStretch();
    connect(add, &QPushButton::clicked, this, [this] { open_form(0); });
    connect(m_table, &RecordTable::opened, this, [this](qint64 id) { open_form(id); });
}

void ListPage::add_button(const QString& words, const QString& name, std::function<void()> pressed) {
    QPushButton* button = m_card->add_head_button(words);
    button->setObjectName(name);
    connect(button, &QPushButton::clicked, this, std::move(pressed));
}

HistoryOf ListPage::history() const {
    static const QHash<QString, QString> kinds{{QStringLiteral("people"), QStringLiteral("person")},
                                               {QStringLiteral("strip_kinds"), QStringLiteral("strip_kind")},
                                               {QStringLiteral("vessels"), QStringLiteral("vessel")}};
    return history_of(m_desk, {}, kinds.value(m_name), m_table->current_id());
}

void ListPage::take_focus() { m_table->setFocus(); }

void ListPage::open_dialog(FormDialog* dialog, const QString& form, qint64 id, const QString& add) {
    DraftPlace place{form, id, {}, {PlaceName::setup, m_name, {}, {}}};
    if (id == 0)
        place.intent.prefill = {{QStringLiteral("press"), add.isEmpty() ? QString(m_name + QStringLiteral("_add")) : add}};
    else
        place.intent.prefill = {{QStringLiteral("row_of"), m_table->objectName()}, {QStringLiteral("row"), id}};
    dialog->form()->set_draft(place);
    connect(dialog->form(), &FormFrame::committed, this, [this] { refresh(); });
    dialog->open();
}

} // namespace soakbook::ui
