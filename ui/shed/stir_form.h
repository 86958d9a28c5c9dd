// SPDX-License-Identifier: GPL-3.0-or-later
// A stir, and whether the liquid is clear. Field names: stir_minutes, stir_clear, stir_outlet, stir_when.
#pragma once

#include "core/work/heat.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class CountField;
class WhenField;
class YesNoField;

class StirForm : public FormFrame {
    Q_OBJECT

public:
    explicit StirForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

private:
    void settle();
    work::StirEntry entry() const;

    Desk& m_desk;
    work::BatchId m_batch;
    CountField* m_minutes;
    YesNoField* m_clear;
    YesNoField* m_outlet;
    WhenField* m_when;
};

} // namespace soakbook::ui
