// SPDX-License-Identifier: GPL-3.0-or-later
// Mix, of a batch that is planned: the weigh-in, then what went in, and the correction if the strength is off.
#pragma once

#include "ui/parts/desk.h"
#include "ui/shed/step_body.h"

class QPushButton;

namespace soakbook::ui {

class Beside;
class InputsTable;
class MixAddForm;
class MixWeighForm;

class MixStep : public StepBody {
    Q_OBJECT

public:
    explicit MixStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    bool has_typed() const override;

Q_SIGNALS:
    void mixing_sheet_wanted();
    /// The strength is off and stays so.
    void left_as_it_is();

private:
    void show_weigh_in(const work::BatchView& batch);
    void make_void();

    Desk& m_desk;
    work::BatchId m_batch;
    QString m_code;
    bool m_mixed = false;
    Beside* m_beside;
    MixWeighForm* m_weigh_in = nullptr;
    QWidget* m_after;
    InputsTable* m_inputs;
    MixAddForm* m_add;
    QPushButton* m_sheet;
    QPushButton* m_void;
};

} // namespace soakbook::ui
