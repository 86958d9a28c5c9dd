// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/batch_comparison.h"

#include "core/work/how_keeping.h"
#include "ui/charts/batch_chart.h"
#include "ui/charts/chart_frame.h"
#include "ui/parts/how_button.h"
#include "ui/parts/theme.h"
#include "ui/shed/account_charts.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int comparison_height = 240;
constexpr std::size_t batches_to_compare = 2;

QPushButton* measure_button(const QString& words, const char* name, const char* place, QWidget* parent) {
    auto* button = new QPushButton(words, parent);
    button->setObjectName(QLatin1String(name));
    button->setCheckable(true);
    button->setAutoDefault(false);
    button->setProperty("place", QLatin1String(place));
    set_kind(button, "segment");
    return button;
}

} // namespace

BatchComparison::BatchComparison(Desk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk),
      //: Turns a chart of batches to that figure
      m_acid(measure_button(tr("Acid in a strip"), "compare_acid", "first", this)),
      //: Turns a chart of batches to that figure: the liquid a strip took up
      m_taken_up(measure_button(tr("Taken up"), "compare_taken_up", "last", this)), m_chart(new BatchChart),
      m_frame(new ChartFrame(m_chart, this)), m_how(new HowButton(this)) {
    setObjectName(QStringLiteral("batch_comparison"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->setSpacing(0);
    //: Over a chart of batches
    head->addWidget(make_label(tr("Beside the other batches"), Type::strong, this));
    head->addSpacing(16);
    head->addWidget(m_acid);
    head->addWidget(m_taken_up);
    head->addStretch(1);
    column->addLayout(head);
    m_frame->setFixedHeight(scaled(comparison_height));
    column->addWidget(m_frame);
    column->addWidget(m_how, 0, Qt::AlignLeft);
    auto* group = new QButtonGroup(this);
    group->addButton(m_acid);
    group->addButton(m_taken_up);
    m_acid->setChecked(true);
    connect(m_acid, &QPushButton::clicked, this, [this] { choose(work::BatchMeasure::acid_per_strip); });
    connect(m_taken_up, &QPushButton::clicked, this, [this] { choose(work::BatchMeasure::taken_up); });
}

void BatchComparison::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_kind = batch.strip_kind;
    show_chart();
}

void BatchComparison::choose(work::BatchMeasure measure) {
    m_measure = measure;
    show_chart();
}

void BatchComparison::show_chart() {
    const work::BatchChart chart = work::batch_chart(m_desk.workbook(), m_measure, m_kind);
    setVisible(chart.points.size() >= batches_to_compare);
    m_chart->set_data(batch_series(m_desk, chart, m_batch));
    m_frame->refresh();
    const auto how = work::how_batch_limits(chart);
    m_how->set_hows(how ? std::vector<work::How>{*how} : std::vector<work::How>{}, m_desk);
}

} // namespace soakbook::ui
