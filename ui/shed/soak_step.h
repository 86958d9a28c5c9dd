// SPDX-License-Identifier: GPL-3.0-or-later
// Soak: what stands in which bin since when, and the form that begins it.
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/shed/step_body.h"

class QLabel;

namespace soakbook::ui {

class Beside;
class RecordTable;
class SoakForm;

class SoakStep : public StepBody {
    Q_OBJECT

public:
    explicit SoakStep(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch) override;
    void take_focus() override;
    bool has_typed() const override;

private:
    void show_form(const work::BatchView& batch);
    void correct(qint64 soak);

    Desk& m_desk;
    work::BatchId m_batch;
    std::size_t m_soaks = 0;
    std::vector<work::VesselId> m_free;
    bool m_can_correct = false;
    Beside* m_beside;
    QLabel* m_teach;
    RecordTable* m_table;
    QLabel* m_hint;
    RowsModel<work::SoakLine>* m_model;
    SoakForm* m_form = nullptr;
};

} // namespace soakbook::ui
