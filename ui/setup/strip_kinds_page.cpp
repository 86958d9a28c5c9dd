// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/strip_kinds_page.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/result_card.h"
#include "ui/setup/strip_kind_fields.h"

#include <memory>

namespace soakbook::ui {

StripKindsPage::StripKindsPage(Desk& desk)
    //: Head, explanation and button of a page of Set-up.
    : ListPage(desk, tr("Strip kinds"), tr("What a strip weighs dry and soaked, how many make a bag, and how many a hive gets. Batches and rounds copy these when they are made."),
               //: A button.
               tr("Add a strip kind"), QStringLiteral("strip_kinds")) {
    using Kind = work::StripKindEntry;
    const auto mass = [this](std::optional<maths::Mass> m) { return m ? this->desk().small(*m) : QString(); };
    m_model = new RowsModel<Kind>(
        {//: A table column.
         {.header = tr("Kind"), .text = [](const Kind& k) { return k.name; }, .type = CellType::strong},
         //: A table column: weight of a dry strip.
         {.header = tr("Dry"), .text = [mass](const Kind& k) { return mass(k.dry); }, .align = Qt::AlignRight},
         //: A table column: weight of a soaked strip.
         {.header = tr("Soaked"), .text = [mass](const Kind& k) { return mass(k.target); }, .align = Qt::AlignRight},
         //: A table column: by how much a soaked strip may be off.
         {.header = tr("Off by"), .text = [mass](const Kind& k) { return mass(k.tolerance); }, .align = Qt::AlignRight},
         //: A table column: strips in a bag.
         {.header = tr("A bag"), .text = [](const Kind& k) { return QString::number(k.strips_per_bag.value_or(0)); }, .align = Qt::AlignRight},
         //: A table column: whether the kind is still used.
         {.header = tr("State"), .text = [](const Kind& k) { return k.active ? tr("in use") : tr("put away"); }}},
        [](const Kind& k) { return k.id.value; }, this);
    table()->set_rows_model(m_model);
    table()->set_start_widths({260, 90, 90, 90, 80, 110});
    //: Stands in an empty table.
    table()->set_empty_text(tr("No strip kind yet. A batch needs one."));
}

void StripKindsPage::refresh() { m_model->set_rows(work::strip_kinds(desk().workbook(), true)); }

void StripKindsPage::open_form(qint64 id) {
    const work::StripKindEntry* known = m_model->find(id);
    //: Title of a form.
    auto* dialog = new FormDialog(desk(), known ? tr("Strip kind") : tr("Add a strip kind"), this);
    FormFrame* form = dialog->form();
    auto fields = std::make_shared<StripKindFields>(*form, desk(), QString(), true);
    //: A field's label, answered with yes or no; and its sentence of help.
    auto* active = form->add(tr("In use"), new YesNoField, QStringLiteral("active"), tr("A kind put away stays in the records and is no longer offered."));
    if (known)
        fields->set(*known);
    active->set_value(known ? known->active : true);
    form->set_shown(QStringLiteral("active"), known != nullptr);
    connect(form, &FormFrame::edited, form, [this, form, fields] {
        form->result()->set_text(fields->uptake_words(desk()));
        form->result()->set_how(fields->uptake_hows(), desk());
    });
    //: A button that stores the form.
    form->set_primary(tr("Save"));
    form->set_commit([this, id, fields, active](const work::Confirmed&) {
        work::StripKindEntry entry = fields->entry();
        entry.id = {id};
        entry.active = active->value().value_or(true);
        auto outcome = work::save_strip_kind(desk().workbook(), entry, desk().doing());
        return refusal_of(outcome);
    });
    open_dialog(dialog, QStringLiteral("strip_kind"), id);
}

} // namespace soakbook::ui
