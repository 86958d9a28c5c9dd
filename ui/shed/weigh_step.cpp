// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/weigh_step.h"

#include "ui/charts/chart_frame.h"
#include "ui/parts/cards.h"
#include "ui/parts/theme.h"
#include "ui/shed/beside.h"
#include "ui/shed/course_charts.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/step_names.h"
#include "ui/shed/weigh_form.h"
#include "ui/shed/weighings_table.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int chart_height = 340;

} // namespace

WeighStep::WeighStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::form_width, this)), m_chart(new StripWeightChart),
      m_frame(new ChartFrame(m_chart)),
      //: Under the curve of the strips' weight, before the first weighing
      m_teach(make_soft_label(tr("Let the strips drip on a rack, count some out, and weigh them together or one by one."),
                              Type::body)),
      m_table(new WeighingsTable(desk)),
      //: Under a table whose rows can be put right
      m_hint(make_soft_label(tr("Enter on a row puts a weighing right or makes it void, with a reason."), Type::small)),
      m_form(new WeighForm(desk)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);
    m_frame->setFixedHeight(scaled(chart_height));
    m_beside->left()->addWidget(m_frame);
    m_beside->left()->addWidget(m_teach);
    m_beside->below()->addWidget(m_table);
    m_beside->below()->addWidget(m_hint);
    m_beside->right()->addWidget(m_form);
    m_beside->right()->addWidget(new Caution(liquid_caution()));
    connect(m_form, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_form, &WeighForm::soak_ended, this, &StepBody::entry_made);
    connect(m_table, &WeighingsTable::corrected, this, &StepBody::entry_made);
}

void WeighStep::show_batch(const work::BatchView& batch) {
    m_form->show_batch(batch);
    m_table->show_batch(batch);
    m_chart->set_data(strip_weight(m_desk, batch));
    m_frame->refresh();
    const bool any = std::any_of(batch.soaks.begin(), batch.soaks.end(),
                                 [](const work::SoakLine& soak) { return !soak.weighings.empty(); });
    m_teach->setVisible(!any);
    m_hint->setVisible(any && is_open(batch));
    m_beside->set_right_shown(is_open(batch) && next_soak(batch) != nullptr);
}

void WeighStep::take_focus() {
    if (m_beside->is_right_shown())
        m_form->begin();
    else
        m_table->setFocus();
}

void WeighStep::turn_to(const Intent& intent) {
    if (intent.ids.size() > 1)
        m_form->choose_soak(work::SoakId{intent.ids[1]});
}

bool WeighStep::has_typed() const { return m_form->is_edited(); }

} // namespace soakbook::ui
