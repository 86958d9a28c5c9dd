// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/soak_form.h"

#include "core/work/figures.h"
#include "core/work/how_liquid.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/parts/theme.h"
#include "ui/shed/bin_rows.h"
#include "ui/shed/lot_field.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

#include <QLabel>

namespace soakbook::ui {

SoakForm::SoakForm(Desk& desk, const work::BatchView& batch, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk), m_batch(batch.line.id), m_bins(new BinRows(desk, free_bins(desk))),
      m_lot(new LotField(desk, work::MaterialKind::strips)), m_room(new TemperatureField(desk)),
      m_when(new WhenField(desk)) {
    m_bins->setObjectName(QStringLiteral("soak_bins"));
    m_lot->setObjectName(QStringLiteral("soak_lot"));
    m_room->setObjectName(QStringLiteral("soak_room"));
    m_when->setObjectName(QStringLiteral("soak_when"));
    //: Label of a field
    add_wide(tr("Bins"), m_bins, QStringLiteral("bins"));
    add_widget(make_soft_label(m_bins->size() == 0
                                   //: Under the bins of a soak, while all are taken
                                   ? tr("No bin is free. Take strips out of one, or add a bin in Set-up.")
                                   //: Under the bins of a soak
                                   : tr("Strips packed on edge, flooded to a finger below the rim, weighed down under the "
                                        "liquid."),
                               Type::small, this),
               QStringLiteral("bins"),
               [this](const QString& rest, const QString& words) { m_bins->complain_at(rest, words); });
    //: Label of a field
    add(tr("Dry strips from"), m_lot, QStringLiteral("lot"));
    //: Label of a field
    add(tr("Room"), m_room, QStringLiteral("room"),
        //: Help under the temperature of the room
        tr("A cold room soaks slowly. May stay empty."));
    add(tr("Flooded when"), m_when, QStringLiteral("at"));
    m_lot->set_strip_kind(batch.strip_kind);
    m_lot->choose_newest();
    for (const work::ReadingLine& reading : batch.readings) {
        if (reading.room)
            m_room->set_value(reading.room);
    }
    //: Button that begins a soak
    set_primary(tr("Start the soak"));
    set_commit([this](const work::Confirmed& confirmed) {
        return refusal_of(work::start_soak(m_desk.workbook(), entry(), m_desk.doing(), confirmed));
    });
    connect(this, &FormFrame::edited, this, &SoakForm::reckon);
    choose_bins();
    // Without a bin there is nothing to fill in.
    for (const char* key : {"bins", "lot", "room", "at"})
        set_shown(QLatin1String(key), has_bins());
    primary()->setVisible(has_bins());
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("soak"), QStringLiteral("soak"), batch.line.id, batch.line.code, tr("strips into bins")));
}

bool SoakForm::has_bins() const { return m_bins->size() > 0; }

void SoakForm::choose_bins() {
    // As many bins as the liquid is enough for, and the first in any case.
    for (int i = 0; i < m_bins->size(); ++i) {
        m_bins->set_chosen(i, true);
        const auto figures = work::reckon_soak(m_desk.workbook(), entry());
        const bool enough = figures && (!figures->flood || *figures->flood <= figures->liquid);
        if (i > 0 && !enough)
            m_bins->set_chosen(i, false);
    }
}

work::SoakEntry SoakForm::entry() const {
    work::SoakEntry entry;
    entry.batch = m_batch;
    entry.bins = m_bins->bins();
    entry.lot = m_lot->lot();
    entry.room = m_room->value();
    if (!m_when->is_empty())
        entry.at = m_when->value();
    return entry;
}

void SoakForm::reckon() {
    result()->clear();
    const auto figures = work::reckon_soak(m_desk.workbook(), entry());
    if (!figures) {
        if (figures.error().why != work::Why::missing)
            result()->set_next(refusal_words(figures.error(), m_desk));
        return;
    }
    //: What a soak takes; %n strips, %1 what they will hold, %2 the liquid there is
    result()->set_text(tr("<b>%n strips</b> will hold <b>%1</b> of the %2 there is.", nullptr, figures->strips)
                           .arg(large(m_desk, figures->taken_at_target), large(m_desk, figures->liquid)));
    QStringList follows{
        //: %1 the most liquid that can be left after a soak
        tr("At most %1 stays for pails.").arg(large(m_desk, figures->most_left))};
    if (figures->flood) {
        //: %1 the liquid that the bins take
        follows.push_back(tr("The bins are flooded with %1.").arg(large(m_desk, *figures->flood)));
    }
    result()->set_next(follows.join(QLatin1Char(' ')));
    const auto low = work::figure(m_desk.workbook(), work::Figure::room_low);
    if (low && m_room->value() && m_room->value()->count < *low) {
        //: The room is colder than the figure of Set-up
        result()->set_verdict(State::near, tr("A cold room"), tr("the strips will take longer."));
    }
    result()->set_how({work::how_yield(*figures)}, m_desk);
}

} // namespace soakbook::ui
