// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_step.h"

#include "ui/parts/cards.h"
#include "ui/parts/theme.h"
#include "ui/shed/beside.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/inputs_table.h"
#include "ui/shed/mix_add_form.h"
#include "ui/shed/mix_weigh_form.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/step_names.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

MixStep::MixStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::caution_width, this)), m_after(new QWidget), m_inputs(new InputsTable(desk)),
      m_add(new MixAddForm(desk)),
      //: Button: prints the planned amounts with room to write
      m_sheet(new QPushButton(tr("Mixing sheet"))),
      //: Button: a batch was not made, or must not be used
      m_void(new QPushButton(tr("Make it void"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);

    auto* after = new QVBoxLayout(m_after);
    after->setContentsMargins(0, 0, 0, 0);
    after->setSpacing(8);
    after->addWidget(m_inputs);
    //: Under a table whose rows can be put right
    after->addWidget(make_soft_label(tr("Enter on a row puts its weight right, with a reason."), Type::small, m_after));
    m_beside->left()->addWidget(m_after);

    m_beside->left()->addWidget(m_add);
    m_beside->right()->addWidget(new Caution(powder_caution()));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(m_sheet);
    buttons->addWidget(m_void);
    buttons->addStretch(1);
    m_beside->right()->addLayout(buttons);
    m_sheet->setObjectName(QStringLiteral("mixing_sheet"));
    m_void->setObjectName(QStringLiteral("void_batch"));

    connect(m_inputs, &InputsTable::corrected, this, &StepBody::entry_made);
    connect(m_add, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_add->leave_it(), &QPushButton::clicked, this, &MixStep::left_as_it_is);
    connect(m_sheet, &QPushButton::clicked, this, &MixStep::mixing_sheet_wanted);
    connect(m_void, &QPushButton::clicked, this, &MixStep::make_void);
}

void MixStep::show_batch(const work::BatchView& batch) {
    const bool other = m_batch != batch.line.id;
    m_batch = batch.line.id;
    m_code = batch.line.code;
    m_mixed = batch.mixed.has_value();
    const bool weigh_in = !m_mixed && is_open(batch);
    if (m_weigh_in != nullptr && (!weigh_in || other)) {
        // Later: it may be the form that is making this entry.
        m_weigh_in->hide();
        m_weigh_in->deleteLater();
        m_weigh_in = nullptr;
    }
    if (weigh_in && m_weigh_in == nullptr)
        show_weigh_in(batch);
    m_after->setVisible(!weigh_in);
    m_inputs->show_batch(batch);
    const bool correct = is_open(batch) && wants_correction(batch);
    m_add->setVisible(correct);
    if (correct)
        m_add->show_batch(batch);
    m_void->setVisible(is_open(batch));
    m_sheet->setVisible(weigh_in);
}

void MixStep::show_weigh_in(const work::BatchView& batch) {
    m_weigh_in = new MixWeighForm(m_desk, batch);
    m_beside->left()->insertWidget(0, m_weigh_in);
    connect(m_weigh_in, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_weigh_in, &FormFrame::cancelled, this, [this] {
        // Given up: the next one begins with what was planned.
        m_weigh_in->hide();
        m_weigh_in->deleteLater();
        m_weigh_in = nullptr;
    });
}

void MixStep::take_focus() {
    if (m_weigh_in != nullptr) {
        m_weigh_in->field(QStringLiteral("inputs/0/mass"))->take_focus();
    } else if (m_add->isVisibleTo(this)) {
        m_add->field(QStringLiteral("mass"))->take_focus();
    } else {
        m_inputs->setFocus();
    }
}

bool MixStep::has_typed() const { return (m_weigh_in != nullptr && m_weigh_in->is_edited()) || m_add->is_edited(); }

void MixStep::make_void() {
    auto* dialog = new CorrectionDialog(
        //: Title of a dialog; %1 the code of a batch
        m_desk, tr("Make batch %1 void").arg(m_code),
        m_mixed
            //: What becomes of a batch that is made void
            ? tr("It stays in the list and in the register with its reason; nothing more can be entered. Pails that went in "
                 "are free again if nothing was soaked.")
            //: What becomes of a batch that is made void before it was mixed
            : tr("Nothing was weighed in. The batch is dropped, its pails are free again, and its code is not used a second "
                 "time."),
        this);
    //: Button of a dialog
    dialog->set_make_void(tr("Make it void"), [this](const QString& why) {
        return refusal_of(work::void_batch(m_desk.workbook(), m_batch, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &StepBody::entry_made);
    dialog->open();
}

} // namespace soakbook::ui
