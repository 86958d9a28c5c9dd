// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/loss_form.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"
#include "ui/shed/shed_draft.h"

namespace soakbook::ui {

LossForm::LossForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: Label of a choice: drips, what stays in the tank ...
      m_kind(add(tr("What was lost"), new ChoiceField, QStringLiteral("kind"))),
      m_mass(add(tr("How much"), new MassField(desk, MassSize::large), QStringLiteral("mass"))),
      m_note(add(tr("Note"), new TextField, QStringLiteral("note"))) {
    set_columns(1);
    m_kind->setObjectName(QStringLiteral("loss_kind"));
    m_mass->setObjectName(QStringLiteral("loss_mass"));
    m_note->setObjectName(QStringLiteral("loss_note"));
    for (const work::NamedLoss kind :
         {work::NamedLoss::drips, work::NamedLoss::tank_heel, work::NamedLoss::spill, work::NamedLoss::other})
        m_kind->add(loss_name(kind), static_cast<int>(kind));
    m_kind->set_value(static_cast<int>(work::NamedLoss::drips));
    //: Button that writes a named loss down
    set_primary(tr("Write it down"));
    set_commit([this](const work::Confirmed&) {
        return refusal_of(work::log_loss(m_desk.workbook(), m_batch, static_cast<work::NamedLoss>(m_kind->value().toInt()),
                                         m_mass->value(), m_note->value(), m_desk.doing()));
    });
}

void LossForm::show_batch(work::BatchId batch, const QString& code) {
    const bool same = m_batch == batch && is_edited();
    m_batch = batch;
    if (same)
        return;
    m_mass->clear();
    m_note->clear();
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("loss"), QStringLiteral("leftovers"), batch, code, tr("name a loss"), QStringLiteral("leftovers_loss")));
}

QString loss_name(work::NamedLoss kind) {
    switch (kind) {
    case work::NamedLoss::drips:
        //: A loss of liquid
        return LossForm::tr("drips");
    case work::NamedLoss::tank_heel:
        //: A loss of liquid
        return LossForm::tr("what stays in the tank");
    case work::NamedLoss::spill:
        //: A loss of liquid
        return LossForm::tr("a spill");
    case work::NamedLoss::other:
        //: A loss of liquid
        return LossForm::tr("something else");
    }
    return {};
}

} // namespace soakbook::ui
