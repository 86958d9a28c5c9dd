// SPDX-License-Identifier: GPL-3.0-or-later
// This batch beside the others of its kind of strip: acid in a strip, or what a strip took up, with the limits.
#pragma once

#include "core/work/batch_limits.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"

#include <QWidget>

class QPushButton;

namespace soakbook::ui {

class BatchChart;
class ChartFrame;
class HowButton;

class BatchComparison : public QWidget {
    Q_OBJECT

public:
    explicit BatchComparison(Desk& desk, QWidget* parent = nullptr);
    /// Not seen while there is no second batch of the kind.
    void show_batch(const work::BatchView& batch);

private:
    void choose(work::BatchMeasure measure);
    void show_chart();

    Desk& m_desk;
    work::BatchId m_batch;
    work::StripKindId m_kind;
    work::BatchMeasure m_measure = work::BatchMeasure::acid_per_strip;
    QPushButton* m_acid;
    QPushButton* m_taken_up;
    BatchChart* m_chart;
    ChartFrame* m_frame;
    HowButton* m_how;
};

} // namespace soakbook::ui
