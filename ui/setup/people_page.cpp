// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/people_page.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/text_field.h"

namespace soakbook::ui {

PeoplePage::PeoplePage(Desk& desk)
    //: Head, explanation and button of a page of Set-up.
    : ListPage(desk, tr("People"), tr("Every entry is kept with the name of whoever made it. The name is chosen in the line at the foot of the window."),
               //: A button.
               tr("Add a person"), QStringLiteral("people")) {
    //: Word in a table for a person who works here, and for one who has left.
    const auto state = [](const work::PersonLine& p) { return p.active ? tr("works here") : tr("has left"); };
    m_model = new RowsModel<work::PersonLine>(
        {{.header = tr("Name"), .text = [](const work::PersonLine& p) { return p.name; }, .type = CellType::strong},
         //: A table column: whether a person works here.
         {.header = tr("State"), .text = state}},
        [](const work::PersonLine& p) { return p.id.value; }, this);
    table()->set_rows_model(m_model);
    table()->set_start_widths({320, 160});
    //: Stands in an empty table.
    table()->set_empty_text(tr("Nobody yet. Add the names of those who work with strips."));
}

void PeoplePage::refresh() { m_model->set_rows(work::people(desk().workbook())); }

void PeoplePage::open_form(qint64 id) {
    const work::PersonLine* known = m_model->find(id);
    //: Title of a form.
    auto* dialog = new FormDialog(desk(), known ? tr("Person") : tr("Add a person"), this);
    FormFrame* form = dialog->form();
    //: A field's label.
    auto* name = form->add(tr("Name"), new TextField, QStringLiteral("name"));
    name->setObjectName(QStringLiteral("person_name"));
    //: A field's label, answered with yes or no; and its sentence of help.
    auto* active = form->add(tr("Works here"), new YesNoField, QStringLiteral("active"), tr("Somebody who has left stays in the records and is no longer offered."));
    name->set_value(known ? known->name : QString());
    active->set_value(known ? known->active : true);
    form->set_shown(QStringLiteral("active"), known != nullptr);
    //: A button that stores the form.
    form->set_primary(tr("Save"));
    form->set_commit([this, id, name, active](const work::Confirmed&) {
        auto outcome = work::save_person(desk().workbook(), {{id}, name->value(), active->value().value_or(true)}, desk().doing());
        return refusal_of(outcome);
    });
    open_dialog(dialog, QStringLiteral("person"), id);
}

} // namespace soakbook::ui
