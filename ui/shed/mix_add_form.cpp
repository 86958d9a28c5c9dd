// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_add_form.h"

#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/shed/lot_field.h"
#include "ui/shed/mix_result.h"
#include "ui/shed/shed_draft.h"

#include <QPushButton>

namespace soakbook::ui {

MixAddForm::MixAddForm(Desk& desk, QWidget* parent)
    //: Title of a form that brings a mix to its strength
    : FormFrame(desk, tr("Put the strength right"), parent), m_desk(desk),
      m_acid_lot(new LotField(desk, work::MaterialKind::acid)),
      m_glycerine_lot(new LotField(desk, work::MaterialKind::glycerine)), m_mass(new MassField(desk, MassSize::large)) {
    m_mass->setObjectName(QStringLiteral("add_mass"));
    m_acid_lot->setObjectName(QStringLiteral("add_acid_lot"));
    m_glycerine_lot->setObjectName(QStringLiteral("add_glycerine_lot"));
    //: Label of a field
    add(tr("Added"), m_mass, QStringLiteral("mass"));
    //: Label of a field
    add(tr("Acid from"), m_acid_lot, QStringLiteral("acid_lot"));
    //: Label of a field
    add(tr("Glycerine from"), m_glycerine_lot, QStringLiteral("glycerine_lot"));
    //: Button that writes down what was added to a mix
    set_primary(tr("It is added"));
    //: Button: a mix whose strength is off is used all the same
    m_leave = add_secondary(tr("Leave it as it is"));
    m_leave->setObjectName(QStringLiteral("leave_strength"));
    set_commit([this](const work::Confirmed&) -> std::optional<work::Refusal> {
        const work::MixCorrection entry{m_batch, (m_acid ? m_acid_lot : m_glycerine_lot)->lot(), m_mass->value()};
        const auto added = work::add_to_mix(m_desk.workbook(), entry, m_desk.doing());
        if (added)
            return std::nullopt;
        work::Refusal refusal = added.error();
        if (refusal.field == QLatin1String("acid") || refusal.field == QLatin1String("glycerine"))
            refusal.field = QStringLiteral("mass");
        else if (refusal.field == QLatin1String("lot"))
            refusal.field = m_acid ? QStringLiteral("acid_lot") : QStringLiteral("glycerine_lot");
        return refusal;
    });
}

void MixAddForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    m_acid = batch.mix && batch.mix->add_acid.has_value();
    set_shown(QStringLiteral("acid_lot"), m_acid);
    set_shown(QStringLiteral("glycerine_lot"), !m_acid);
    m_acid_lot->refresh();
    m_glycerine_lot->refresh();
    result()->clear();
    if (batch.mix)
        show_mix_result(*this, m_desk, *batch.mix);
    if (same || !batch.mix)
        return;
    for (const work::InputLine& input : batch.inputs) {
        if (input.lot)
            (input.is_acid ? m_acid_lot : m_glycerine_lot)->set_lot(input.lot);
    }
    m_acid_lot->choose_newest();
    m_glycerine_lot->choose_newest();
    m_mass->set_value(m_acid ? batch.mix->add_acid : batch.mix->add_glycerine);
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("mix_add"), QStringLiteral("weigh_mix"), batch.line.id, batch.line.code, tr("put the strength right")));
}

} // namespace soakbook::ui
