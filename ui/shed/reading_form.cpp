// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/reading_form.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/shed_draft.h"

namespace soakbook::ui {

ReadingForm::ReadingForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: Label of a field: the temperature of the liquid
      m_probe(add(tr("Probe in the liquid"), new TemperatureField(desk), QStringLiteral("probe"))),
      //: Label of a field: the temperature the thermostat is set to
      m_dial(add(tr("Dial of the thermostat"), new TemperatureField(desk), QStringLiteral("dial"))),
      m_room(add(tr("Room"), new TemperatureField(desk), QStringLiteral("room"),
                 //: Help under a field
                 tr("May stay empty."))),
      m_jacket(add(tr("Water seen in the jacket?"), new YesNoField, QStringLiteral("jacket_seen"))),
      m_when(add(tr("Read when"), new WhenField(desk), QStringLiteral("at"))) {
    set_columns(1);
    m_probe->setObjectName(QStringLiteral("reading_probe"));
    m_dial->setObjectName(QStringLiteral("reading_dial"));
    m_room->setObjectName(QStringLiteral("reading_room"));
    m_jacket->setObjectName(QStringLiteral("reading_jacket"));
    m_when->setObjectName(QStringLiteral("reading_when"));
    //: Button that writes a temperature down
    set_primary(tr("Write it down"));
    set_commit([this](const work::Confirmed& confirmed) {
        return refusal_of(work::log_reading(m_desk.workbook(), entry(), m_desk.doing(), confirmed));
    });
    connect(this, &FormFrame::edited, this, &ReadingForm::reckon);
}

void ReadingForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    m_ceiling = batch.ceiling;
    if (same)
        return;
    m_probe->clear();
    m_room->clear();
    m_when->clear();
    // Whether water is seen is said anew each time, or not at all.
    m_jacket->clear();
    m_dial->clear();
    for (const work::ReadingLine& reading : batch.readings) {
        if (reading.dial)
            m_dial->set_value(reading.dial);
    }
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("reading"), QStringLiteral("reading"), batch.line.id, batch.line.code, tr("read the tank")));
}

work::ReadingEntry ReadingForm::entry() const {
    work::ReadingEntry entry;
    entry.batch = m_batch;
    entry.probe = m_probe->value();
    entry.dial = m_dial->value();
    entry.room = m_room->value();
    entry.jacket_seen = m_jacket->value();
    if (!m_when->is_empty())
        entry.at = m_when->value();
    return entry;
}

void ReadingForm::reckon() {
    result()->clear();
    const auto probe = m_probe->value();
    const auto jacket = m_jacket->value();
    if (jacket && !*jacket) {
        //: No water stood in the tank's jacket
        result()->set_verdict(State::near, tr("No water seen"),
                              //: What to do when no water stands in the tank's jacket
                              tr("do not switch the heat on before you see it."));
    }
    if (!probe)
        return;
    if (*probe > m_ceiling) {
        //: A reading above the most that is allowed
        result()->set_verdict(State::past, tr("Over the ceiling"));
        result()->set_next(over_ceiling_words(m_desk, *probe, m_ceiling));
        return;
    }
    if (m_dial->value()) {
        //: A reading of the tank; %1 the probe, %2 the dial, %3 the most allowed
        result()->set_text(tr("<b>%1</b> in the liquid with the dial at %2; the ceiling is %3.")
                               .arg(m_desk.temperature(*probe), m_desk.temperature(*m_dial->value()),
                                    m_desk.temperature(m_ceiling)));
    }
}

} // namespace soakbook::ui
