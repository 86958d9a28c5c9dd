// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/vessels_page.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/setup/vessel_fields.h"

#include <memory>

namespace soakbook::ui {

VesselsPage::VesselsPage(Desk& desk)
    //: Head, explanation and button of a page of Set-up.
    : ListPage(desk, tr("Tanks and bins"), tr("Tanks warm the liquid; strips stand packed in bins. Acid eats galvanised steel, aluminium and bare iron: see the acid's safety data sheet for what a vessel may be made of."),
               //: A button.
               tr("Add a bin"), QStringLiteral("vessels")) {
    using Vessel = work::VesselEntry;
    m_model = new RowsModel<Vessel>(
        {//: A table column.
         {.header = tr("Name"), .text = [](const Vessel& v) { return v.name; }, .type = CellType::strong},
         //: Table column and its words: what kind of vessel it is.
         {.header = tr("Kind"), .text = [](const Vessel& v) { return v.is_tank ? tr("tank") : tr("bin"); }},
         //: A table column: what a vessel holds.
         {.header = tr("Holds"), .text = [this](const Vessel& v) {
              if (v.is_tank)
                  return this->desk().large(v.capacity.value_or(maths::Mass()));
              //: %1 is a number of strips.
              return tr("%1 strips").arg(this->desk().count(v.strips_held.value_or(0)));
          }, .align = Qt::AlignRight},
         //: A table column: liquid that floods a bin; and the word where it was not measured.
         {.header = tr("Flooded by"), .text = [this](const Vessel& v) {
              return v.is_tank ? QString() : v.flood ? this->desk().large(*v.flood) : tr("not measured");
          }, .align = Qt::AlignRight},
         //: A table column: whether the vessel is still used.
         {.header = tr("State"), .text = [](const Vessel& v) { return v.active ? tr("in use") : tr("put away"); }}},
        [](const Vessel& v) { return v.id.value; }, this);
    table()->set_rows_model(m_model);
    table()->set_start_widths({240, 90, 130, 130, 110});
    //: Stands in an empty table.
    table()->set_empty_text(tr("No tank and no bin yet. A batch needs one of each."));
    //: A button.
    add_button(tr("Add a tank"), QStringLiteral("vessels_add_tank"), [this] {
        work::VesselEntry tank;
        tank.is_tank = true;
        open_vessel(tank);
    });
}

void VesselsPage::refresh() { m_model->set_rows(work::vessels(desk().workbook(), true)); }

void VesselsPage::open_form(qint64 id) {
    work::VesselEntry vessel;
    vessel.is_tank = false;
    if (const work::VesselEntry* known = m_model->find(id))
        vessel = *known;
    open_vessel(vessel);
}

void VesselsPage::open_vessel(const work::VesselEntry& vessel) {
    //: Title of a form.
    auto* dialog = new FormDialog(desk(), vessel.is_tank ? tr("Tank") : tr("Bin"), this);
    FormFrame* form = dialog->form();
    auto fields = std::make_shared<VesselFields>(*form, desk(), QString(), vessel.is_tank);
    //: A field's label, answered with yes or no; and its sentence of help.
    auto* active = form->add(tr("In use"), new YesNoField, QStringLiteral("active"), tr("A vessel put away stays in the records and is no longer offered."));
    fields->set(vessel);
    active->set_value(vessel.active);
    form->set_shown(QStringLiteral("active"), vessel.id.value != 0);
    //: A button that stores the form.
    form->set_primary(tr("Save"));
    form->set_commit([this, id = vessel.id, fields, active](const work::Confirmed&) {
        work::VesselEntry entry = fields->entry();
        entry.id = id;
        entry.active = active->value().value_or(true);
        auto outcome = work::save_vessel(desk().workbook(), entry, desk().doing());
        return refusal_of(outcome);
    });
    open_dialog(dialog, vessel.is_tank ? QStringLiteral("tank") : QStringLiteral("bin"), vessel.id.value, vessel.is_tank ? QStringLiteral("vessels_add_tank") : QString());
}

} // namespace soakbook::ui
