// SPDX-License-Identifier: GPL-3.0-or-later
// Bag: fill bags and print their labels; or labels first, and bags filled into them later.
#pragma once

#include "core/work/bag.h"
#include "ui/parts/desk.h"
#include "ui/shed/step_body.h"

class QLabel;
class QPushButton;

namespace soakbook::ui {

class BagForm;
class BagsTable;
class Beside;
class FillForm;
class FormSwitch;
class ReserveForm;

class BagStep : public StepBody {
    Q_OBJECT

public:
    explicit BagStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    void turn_to(const Intent& intent) override;
    bool has_typed() const override;

private:
    void show_fill_form(const work::BatchView& batch);
    void print(const std::vector<work::BagId>& bags);
    void print_all();

    Desk& m_desk;
    work::BatchId m_batch;
    std::vector<work::BagId> m_reserved;
    std::vector<work::BagId> m_to_print; ///< bags of the batch without a good label
    Beside* m_beside;
    QLabel* m_teach;
    BagsTable* m_table;
    QLabel* m_hint;
    QPushButton* m_print;
    FormSwitch* m_forms;
    BagForm* m_bag;
    ReserveForm* m_reserve;
    FillForm* m_fill = nullptr;
    int m_bag_way;
    int m_reserve_way;
    int m_fill_way;
};

} // namespace soakbook::ui
