// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/pour_form.h"

#include "core/work/store_view.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/shed/mass_rows.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

namespace {

QStringList pail_places(const Desk& desk) {
    QStringList places;
    for (const work::PailLine& pail : work::pails(desk.workbook(), desk.today(), true)) {
        if (!pail.stands.isEmpty() && !places.contains(pail.stands))
            places.push_back(pail.stands);
    }
    return places;
}

} // namespace

PourForm::PourForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: Label of a field
      m_pails(add_wide(tr("Pails, contents of each"), new MassRows(desk, MassSize::large, QStringLiteral("pour_pail")),
                       QStringLiteral("pails"),
                       //: Help under the masses of pails
                       tr("Without the pail. Enter goes on to the next one."))),
      m_clear(add(tr("Poured warm and clear?"), new YesNoField, QStringLiteral("warm_and_clear"),
                  //: Help under a question
                  tr("Before acid settles out."))),
      m_scraped(add(tr("Bin scraped to the bottom?"), new YesNoField, QStringLiteral("scraped"))),
      m_when(add(tr("Poured when"), new WhenField(desk), QStringLiteral("at"))),
      //: Label of a field: the place on the shelf
      m_stands(add(tr("Stands"), new TextField, QStringLiteral("stands"))) {
    set_columns(1);
    m_pails->setObjectName(QStringLiteral("pour_pails"));
    m_clear->setObjectName(QStringLiteral("pour_clear"));
    m_scraped->setObjectName(QStringLiteral("pour_scraped"));
    m_when->setObjectName(QStringLiteral("pour_when"));
    m_stands->setObjectName(QStringLiteral("pour_stands"));
    //: Button that writes filled pails down
    set_primary(tr("They are poured"));
    set_commit([this](const work::Confirmed& confirmed) -> std::optional<work::Refusal> {
        const auto made = work::pour_leftovers(m_desk.workbook(), entry(), m_desk.doing(), confirmed);
        if (made) {
            Q_EMIT poured(made->pails);
            return std::nullopt;
        }
        work::Refusal refusal = made.error();
        if (refusal.field.startsWith(QLatin1String("pails/"))) {
            m_pails->point_at(refusal.field.section(QLatin1Char('/'), 1, 1).toInt());
            refusal.field = QStringLiteral("pails");
        }
        return refusal;
    });
    connect(this, &FormFrame::edited, this, &PourForm::settle);
}

void PourForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    m_unexplained = batch.balance ? batch.balance->unexplained : maths::Mass{};
    const QStringList places = pail_places(m_desk);
    m_stands->set_suggestions(places);
    if (same)
        return;
    m_pails->clear();
    m_clear->clear();
    m_scraped->clear();
    m_when->clear();
    m_stands->set_value(places.isEmpty() ? QString() : places.front());
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("pour"), QStringLiteral("leftovers"), batch.line.id, batch.line.code, tr("pour what is left"), QStringLiteral("leftovers_pour")));
}

void PourForm::settle() {
    result()->clear();
    maths::Mass together{};
    for (const maths::Mass pail : m_pails->values())
        together += pail;
    if (together.count > 0) {
        //: Live result of filled pails; %1 their mass together, %2 the liquid that nothing accounts for yet
        result()->set_text(tr("<b>%1</b> in pails, of %2 not accounted for yet.")
                               .arg(large(m_desk, together), large(m_desk, m_unexplained)));
    }
    const bool bad = (m_clear->value() && !*m_clear->value()) || (m_scraped->value() && !*m_scraped->value());
    if (bad) {
        result()->set_verdict(State::near,
                              //: Pails whose strength is only known all together
                              tr("Only together"),
                              tr("these pails go into a later mix all at once, or not at all: each alone may hold more or less "
                                 "acid."));
    }
}

work::PourEntry PourForm::entry() const {
    work::PourEntry entry;
    entry.batch = m_batch;
    entry.pails = m_pails->values();
    entry.warm_and_clear = m_clear->value();
    entry.scraped = m_scraped->value();
    if (!m_when->is_empty())
        entry.at = m_when->value();
    entry.stands = m_stands->value();
    return entry;
}

} // namespace soakbook::ui
