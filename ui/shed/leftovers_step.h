// SPDX-License-Identifier: GPL-3.0-or-later
// Leftovers: pails, named losses, where every kilogram went, what a strip costs, and the end of the batch.
#pragma once

#include "ui/parts/desk.h"
#include "ui/shed/step_body.h"

class QLabel;
class QPushButton;

namespace soakbook::ui {

class BatchComparison;
class Beside;
class ChartFrame;
class CloseForm;
class FormSwitch;
class HowButton;
class LossForm;
class MassFlowChart;
class LossesTable;
class PailsTable;
class PourForm;
class StateMark;

class LeftoversStep : public StepBody {
    Q_OBJECT

public:
    explicit LeftoversStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    bool has_typed() const override;

private:
    void choose_way(const work::BatchView& batch);
    void print_labels(const std::vector<work::PailId>& pails);
    void open_again();
    void show_flow(const work::BatchView& batch);
    void show_cost(const work::BatchView& batch);

    Desk& m_desk;
    work::BatchId m_batch;
    QString m_code;
    std::size_t m_entries = 0;
    std::vector<work::PailId> m_pails;
    Beside* m_beside;
    MassFlowChart* m_flow;
    ChartFrame* m_frame;
    StateMark* m_standing;
    QLabel* m_usual;
    HowButton* m_how_balance;
    QLabel* m_cost;
    HowButton* m_how_cost;
    BatchComparison* m_comparison;
    PailsTable* m_table;
    LossesTable* m_losses;
    QLabel* m_hint;
    QPushButton* m_print;
    QPushButton* m_open_again;
    FormSwitch* m_forms;
    PourForm* m_pour;
    LossForm* m_loss;
    CloseForm* m_close;
    int m_pour_way;
    int m_loss_way;
    int m_close_way;
};

} // namespace soakbook::ui
