// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/weigh_step.h"

#include "core/work/how_strips.h"
#include "core/work/soak_curve.h"
#include "ui/charts/chart_frame.h"
#include "ui/parts/cards.h"
#include "ui/parts/how_button.h"
#include "ui/parts/theme.h"
#include "ui/shed/beside.h"
#include "ui/shed/course_charts.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/step_names.h"
#include "ui/shed/weigh_form.h"
#include "ui/shed/weigh_words.h"
#include "ui/shed/weighings_table.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int weigh_chart_height = 340;

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
      m_hours(make_label({}, Type::body, nullptr, true)), m_how(new HowButton), m_form(new WeighForm(desk)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_beside);
    m_frame->setFixedHeight(scaled(weigh_chart_height));
    m_beside->left()->addWidget(m_frame);
    m_beside->left()->addWidget(m_teach);
    m_beside->below()->addWidget(m_table);
    m_beside->below()->addWidget(m_hint);
    m_hours->setObjectName(QStringLiteral("target_hours"));
    m_beside->right()->addWidget(m_hours);
    m_beside->right()->addWidget(m_how, 0, Qt::AlignLeft);
    m_beside->right()->addWidget(m_form);
    m_beside->right()->addWidget(new Caution(liquid_caution()));
    connect(m_form, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_form, &WeighForm::soak_ended, this, &StepBody::entry_made);
    connect(m_table, &WeighingsTable::corrected, this, &StepBody::entry_made);
}

void WeighStep::show_batch(const work::BatchView& batch) {
    m_form->show_batch(batch);
    m_table->show_batch(batch);
    std::vector<work::SoakCurve> curves;
    for (const work::SoakLine& soak : batch.soaks)
        curves.push_back(work::soak_curve(soak));
    m_chart->set_data(strip_weight(m_desk, batch, curves));
    m_frame->refresh();
    show_hours(batch, curves);
    const bool any = std::any_of(batch.soaks.begin(), batch.soaks.end(),
                                 [](const work::SoakLine& soak) { return !soak.weighings.empty(); });
    m_teach->setVisible(!any);
    m_hint->setVisible(any && is_open(batch));
    m_beside->set_right_shown(is_open(batch) && next_soak(batch) != nullptr);
}

void WeighStep::show_hours(const work::BatchView& batch, const std::vector<work::SoakCurve>& curves) {
    QStringList said;
    QString cold;
    std::vector<work::How> hows;
    for (std::size_t i = 0; i < batch.soaks.size(); ++i) {
        const work::SoakLine& soak = batch.soaks[i];
        const work::SoakCurve& curve = curves[i];
        if (soak.ended)
            continue;
        const QString words = curve_words(m_desk, soak, curve);
        if (!words.isEmpty()) {
            said << words;
            if (curve.fit)
                hows.push_back(work::how_soak_curve(curve));
            if (curve.fit && curve.fit->target)
                hows.push_back(work::how_target_hour(curve));
        }
        // The bins of a batch stand in the same room.
        if (const auto hint = cold.isEmpty() ? work::cold_hint(m_desk.workbook(), soak) : std::nullopt) {
            cold = cold_words(m_desk, *hint);
            hows.push_back(work::how_cold_room(*hint));
        }
    }
    said << cold;
    said.removeAll(QString());
    m_hours->setText(said.join(QLatin1Char('\n')));
    m_hours->setVisible(!said.isEmpty());
    m_how->set_hows(hows, m_desk);
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
