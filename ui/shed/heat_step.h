// SPDX-License-Identifier: GPL-3.0-or-later
// Heat and clear: the curve of the tank with its ceiling, readings and stirs, and the form for the next one.
#pragma once

#include "ui/parts/desk.h"
#include "ui/shed/step_body.h"

class QLabel;

namespace soakbook::ui {

class Beside;
class ChartFrame;
class FormSwitch;
class HowButton;
class ReadingForm;
class ReadingsTable;
class StirForm;
class StirsTable;
class TankTemperatureChart;
class WarningCard;

class HeatStep : public StepBody {
    Q_OBJECT

public:
    explicit HeatStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    void turn_to(const Intent& intent) override;
    bool has_typed() const override;

private:
    void show_dial(const work::BatchView& batch);
    void show_warning(const work::BatchView& batch);
    void choose_way(const work::BatchView& batch);

    Desk& m_desk;
    work::BatchId m_batch;
    std::size_t m_entries = 0;
    Beside* m_beside;
    FormSwitch* m_forms;
    ReadingForm* m_reading;
    StirForm* m_stir;
    int m_read_way;
    int m_stir_way;
    WarningCard* m_warning;
    TankTemperatureChart* m_chart;
    ChartFrame* m_frame;
    QLabel* m_dial;
    HowButton* m_how;
    ReadingsTable* m_readings;
    StirsTable* m_stirs;
};

} // namespace soakbook::ui
