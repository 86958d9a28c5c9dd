// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/heat_step.h"

#include "core/work/dial_advice.h"
#include "core/work/figures.h"
#include "core/work/how_liquid.h"
#include "ui/charts/chart_frame.h"
#include "ui/parts/cards.h"
#include "ui/parts/how_button.h"
#include "ui/parts/theme.h"
#include "ui/shed/beside.h"
#include "ui/shed/course_charts.h"
#include "ui/shed/dial_words.h"
#include "ui/shed/form_switch.h"
#include "ui/shed/heat_tables.h"
#include "ui/shed/reading_form.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/step_names.h"
#include "ui/shed/stir_form.h"
#include "ui/shed/warning_card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int heat_chart_height = 280;

} // namespace

HeatStep::HeatStep(Desk& desk, QWidget* parent)
    : StepBody(parent), m_desk(desk), m_beside(new Beside(Beside::form_width, this)), m_forms(new FormSwitch), m_reading(new ReadingForm(desk)),
      m_stir(new StirForm(desk)),
      //: Turns to the form for a temperature
      m_read_way(m_forms->add(tr("Read the tank"), m_reading, QStringLiteral("heat_read"))),
      //: Turns to the form for a stir
      m_stir_way(m_forms->add(tr("Stir"), m_stir, QStringLiteral("heat_stir"))), m_warning(new WarningCard),
      m_chart(new TankTemperatureChart), m_frame(new ChartFrame(m_chart)), m_dial(make_label(QString(), Type::body, nullptr, true)), m_how(new HowButton), m_readings(new ReadingsTable(desk)), m_stirs(new StirsTable(desk)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(16);
    column->addWidget(m_warning);
    column->addWidget(m_beside);
    m_frame->setFixedHeight(scaled(heat_chart_height));
    m_beside->left()->addWidget(m_frame);
    m_dial->setObjectName(QStringLiteral("dial_advice"));
    m_beside->left()->addWidget(m_dial);
    m_beside->left()->addWidget(m_how, 0, Qt::AlignLeft);
    m_beside->below()->addWidget(m_readings);
    m_beside->below()->addWidget(m_stirs);
    m_beside->right()->addWidget(m_forms);
    m_beside->right()->addWidget(new Caution(tank_caution()));
    for (FormFrame* form : {static_cast<FormFrame*>(m_reading), static_cast<FormFrame*>(m_stir)})
        connect(form, &FormFrame::committed, this, &StepBody::entry_made);
    connect(m_readings, &ReadingsTable::corrected, this, &StepBody::entry_made);
    connect(m_stirs, &StirsTable::corrected, this, &StepBody::entry_made);
}

void HeatStep::show_batch(const work::BatchView& batch) {
    const std::size_t entries = batch.readings.size() + batch.stirs.size();
    const bool news = m_batch != batch.line.id || m_entries != entries;
    m_batch = batch.line.id;
    m_entries = entries;
    m_reading->show_batch(batch);
    m_stir->show_batch(batch);
    m_readings->show_batch(batch);
    m_stirs->show_batch(batch);
    m_chart->set_data(tank_temperature(m_desk, batch));
    m_frame->refresh();
    show_dial(batch);
    show_warning(batch);
    m_beside->set_right_shown(is_open(batch));
    if (news && !has_typed())
        choose_way(batch);
}

void HeatStep::show_dial(const work::BatchView& batch) {
    // A closed batch is looked back on: no dial is set for it any more.
    const bool told = is_open(batch);
    const work::DialAdvice advice = work::dial_advice(m_desk.workbook(), batch.tank);
    m_dial->setText(told ? dial_words(m_desk, advice) : QString());
    m_dial->setVisible(told);
    const bool worked_out = told && advice.pairs > 0 && advice.wanted;
    m_how->set_hows(worked_out ? std::vector<work::How>{work::how_dial(advice)} : std::vector<work::How>{}, m_desk);
}

void HeatStep::show_warning(const work::BatchView& batch) {
    const bool over = is_open(batch) && !batch.readings.empty() && batch.readings.back().over_ceiling;
    if (over)
        m_warning->set_text(over_ceiling_words(m_desk, batch.readings.back().probe.value_or(batch.ceiling), batch.ceiling));
    m_warning->setVisible(over);
}

void HeatStep::choose_way(const work::BatchView& batch) {
    // Read first; once the tank is warm it is stirred, unless it is too hot.
    const auto low = work::figure(m_desk.workbook(), work::Figure::heat_low);
    const bool read = !batch.readings.empty() && batch.readings.back().probe.has_value();
    const bool warm = read && (!low || batch.readings.back().probe->count >= *low);
    const bool stir = !batch.clear_at && ((warm && !batch.readings.back().over_ceiling) || !batch.stirs.empty());
    m_forms->show_way(stir ? m_stir_way : m_read_way);
}

void HeatStep::take_focus() {
    if (!m_beside->is_right_shown())
        m_readings->setFocus();
    else if (m_forms->way() == m_read_way)
        m_reading->field(QStringLiteral("probe"))->take_focus();
    else
        m_stir->take_focus();
}

void HeatStep::turn_to(const Intent& intent) {
    if (intent.task == QLatin1String("reading"))
        m_forms->show_way(m_read_way);
    else if (intent.task == QLatin1String("stir"))
        m_forms->show_way(m_stir_way);
}

bool HeatStep::has_typed() const { return m_reading->is_edited() || m_stir->is_edited(); }

} // namespace soakbook::ui
