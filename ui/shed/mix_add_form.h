// SPDX-License-Identifier: GPL-3.0-or-later
// Brings a weighed mix to its strength: what to add, filled in, and how the mix stands.
// Field names: add_lot, add_mass.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

class QPushButton;

namespace soakbook::ui {

class LotField;
class MassField;

class MixAddForm : public FormFrame {
    Q_OBJECT

public:
    explicit MixAddForm(Desk& desk, QWidget* parent = nullptr);
    /// Fills in what that batch needs; call it only for one that wants a correction.
    void show_batch(const work::BatchView& batch);
    /// Leaves the mix as it is and goes on to the next step.
    QPushButton* leave_it() const { return m_leave; }

private:
    Desk& m_desk;
    work::BatchId m_batch;
    bool m_acid = false;
    LotField* m_acid_lot;
    LotField* m_glycerine_lot;
    MassField* m_mass;
    QPushButton* m_leave;
};

} // namespace soakbook::ui
