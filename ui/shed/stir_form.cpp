// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/stir_form.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/shed/shed_draft.h"

namespace soakbook::ui {

StirForm::StirForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: A unit behind a number
      m_minutes(add(tr("Stirred for"), new CountField(desk, tr("min")), QStringLiteral("minutes"))),
      m_clear(add(tr("Clear, and no crystal to be seen?"), new YesNoField, QStringLiteral("clear"))),
      m_outlet(add(tr("Outlet drawn off and poured back?"), new YesNoField, QStringLiteral("outlet"),
                   //: Help under a question about the tank's outlet
                   tr("Undissolved acid hides there."))),
      m_when(add(tr("Stirred when"), new WhenField(desk), QStringLiteral("at"))) {
    set_columns(1);
    m_minutes->setObjectName(QStringLiteral("stir_minutes"));
    m_clear->setObjectName(QStringLiteral("stir_clear"));
    m_outlet->setObjectName(QStringLiteral("stir_outlet"));
    m_when->setObjectName(QStringLiteral("stir_when"));
    //: Button that writes a stir down
    set_primary(tr("Write it down"));
    set_commit([this](const work::Confirmed& confirmed) {
        return refusal_of(work::log_stir(m_desk.workbook(), entry(), m_desk.doing(), confirmed));
    });
    connect(m_clear, &Field::edited, this, &StirForm::settle);
    connect(m_outlet, &Field::edited, this, &StirForm::settle);
    settle();
}

void StirForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    if (same)
        return;
    m_minutes->clear();
    for (const work::StirLine& stir : batch.stirs) {
        if (stir.minutes)
            m_minutes->set_value(*stir.minutes);
    }
    m_clear->clear();
    m_outlet->clear();
    m_when->clear();
    settle();
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("stir"), QStringLiteral("stir"), batch.line.id, batch.line.code, tr("stir")));
}

void StirForm::settle() {
    const bool clear = m_clear->value().value_or(false);
    set_shown(QStringLiteral("outlet"), clear);
    result()->clear();
    if (clear && m_outlet->value().value_or(false)) {
        //: The liquid is clear and the outlet was poured back
        result()->set_verdict(State::ready, tr("Clear"), tr("the liquid is ready for the strips."));
    } else if (m_clear->value() && !clear) {
        //: The liquid is not clear yet
        result()->set_verdict(State::near, tr("Not clear yet"), tr("keep it warm, and stir again from below."));
    }
}

work::StirEntry StirForm::entry() const {
    work::StirEntry entry;
    entry.batch = m_batch;
    if (const auto minutes = m_minutes->value())
        entry.minutes = static_cast<int>(*minutes);
    entry.clear = m_clear->value();
    if (entry.clear.value_or(false))
        entry.outlet_poured_back = m_outlet->value();
    if (!m_when->is_empty())
        entry.at = m_when->value();
    return entry;
}

} // namespace soakbook::ui
