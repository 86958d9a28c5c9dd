// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/close_form.h"

#include "core/work/how_keeping.h"
#include "core/work/leftovers.h"
#include "ui/parts/result_card.h"
#include "ui/shed/shed_words.h"

#include <QPushButton>

namespace soakbook::ui {

CloseForm::CloseForm(Desk& desk, QWidget* parent) : FormFrame(desk, QString(), parent), m_desk(desk) {
    //: Over the button that closes a batch
    set_intro(tr("When all strips are bagged and what was left is in pails, the batch is closed. Its bags and pails go on by "
                 "themselves; it can be opened again with a reason."));
    //: Button that closes a batch
    set_primary(tr("Close the batch"));
    primary()->setObjectName(QStringLiteral("close_batch"));
    set_commit([this](const work::Confirmed& confirmed) {
        return refusal_of(work::close_batch(m_desk.workbook(), m_batch, m_desk.doing(), confirmed));
    });
}

void CloseForm::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    result()->clear();
    if (batch.balance) {
        //: Before a batch is closed; %1 a mass with its sign, %2 all that went in
        result()->set_text(tr("<b>%1</b> of %2 is not accounted for.")
                               .arg(large_signed(m_desk, batch.balance->unexplained), large(m_desk, batch.balance->in)));
        if (batch.balance->beyond_limit) {
            //: More is unexplained than the figure of Set-up allows
            result()->set_verdict(State::near, tr("More than usual"),
                                  tr("look for a pail, a bag or a spill that was not entered."));
        }
        result()->set_how({work::how_balance(*batch.balance)}, m_desk);
    }
    const int left = batch.strips_soaked - batch.strips_bagged;
    if (left > 0) {
        //: Before a batch is closed; %n strips
        result()->set_next(tr("%n strips were soaked and stand in no bag.", nullptr, left));
    }
    start_again();
}

} // namespace soakbook::ui
