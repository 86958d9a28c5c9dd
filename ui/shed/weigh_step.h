// SPDX-License-Identifier: GPL-3.0-or-later
// Weigh: the weight of the strips over time with the band that is wanted, the weighings, and the form for the next sample.
#pragma once

#include "core/work/soak_curve.h"
#include "ui/parts/desk.h"
#include "ui/shed/step_body.h"

class QLabel;

namespace soakbook::ui {

class Beside;
class ChartFrame;
class HowButton;
class StripWeightChart;
class WeighForm;
class WeighingsTable;

class WeighStep : public StepBody {
    Q_OBJECT

public:
    explicit WeighStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    void turn_to(const Intent& intent) override;
    bool has_typed() const override;

private:
    void show_hours(const work::BatchView& batch, const std::vector<work::SoakCurve>& curves);

    Desk& m_desk;
    Beside* m_beside;
    StripWeightChart* m_chart;
    ChartFrame* m_frame;
    QLabel* m_teach;
    WeighingsTable* m_table;
    QLabel* m_hint;
    QLabel* m_hours;
    HowButton* m_how;
    WeighForm* m_form;
};

} // namespace soakbook::ui
