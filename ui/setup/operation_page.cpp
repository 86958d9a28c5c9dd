// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/operation_page.h"

#include "core/work/setup.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/parts/text_field.h"

namespace soakbook::ui {

OperationPage::OperationPage(Desk& desk) : m_desk(desk) {
    auto* card = new Card;
    //: Head of a page of Set-up.
    m_form = new FormFrame(desk, tr("Operation"));
    //: Under the head of a page of Set-up.
    m_form->set_intro(tr("What stands on labels, sheets and the register. Home-made treatment is not lawful everywhere: ask your "
                         "authority or your vet what holds where your hives stand."));
    m_form->set_columns(1);
    //: A field's label: name of the outfit; and the sentence of help under it.
    m_name = m_form->add(tr("Name"), new TextField, QStringLiteral("name"), tr("As an inspector would look it up."));
    m_name->setObjectName(QStringLiteral("operation_name"));
    //: A field's label: address for labels; and the sentence of help under it.
    m_maker = m_form->add(tr("Made by"), new NoteField, QStringLiteral("maker"), tr("Address and telephone, printed on every label."));
    //: A field's label: number of the operation with the authority; and the sentence of help under it.
    m_registration = m_form->add(tr("Registration number"), new TextField, QStringLiteral("registration"), tr("The number your authority gave you, if there is one."));
    //: A button that stores the page's entries.
    m_form->set_primary(tr("Save"));
    m_form->set_commit([this](const work::Confirmed&) {
        auto outcome = work::set_operation(m_desk.workbook(), {m_name->value(), m_maker->value(), m_registration->value()}, m_desk.doing());
        return refusal_of(outcome);
    });
    connect(m_form, &FormFrame::committed, this, [this] {
        m_form->start_again();
        refresh();
    });
    m_form->set_draft({QStringLiteral("operation"), 0, {}, {PlaceName::setup, QStringLiteral("operation"), {}, {}}});
    card->column()->addWidget(m_form);
    card->column()->addWidget(make_history_button(desk, this, [this] {
        const work::RecordRef record = work::record_of_operation();
        return history_of(m_desk, {}, record.table, record.id);
    }, QStringLiteral("operation_history")), 0, Qt::AlignLeft);
    column()->addWidget(card);
    column()->addStretch();
}

void OperationPage::refresh() {
    if (m_form->is_edited())
        return;
    const work::Operation operation = work::operation(m_desk.workbook());
    m_name->set_value(operation.name);
    m_maker->set_value(operation.maker);
    m_registration->set_value(operation.registration);
}

void OperationPage::take_focus() { m_form->take_focus(); }

} // namespace soakbook::ui
