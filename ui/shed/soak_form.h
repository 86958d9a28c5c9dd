// SPDX-License-Identifier: GPL-3.0-or-later
// Strips into the bins and the liquid over them. Field names: soak_bins with soak_strips_1 ... , soak_lot, soak_room,
// soak_when.
#pragma once

#include "core/work/shed_view.h"
#include "core/work/soak.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class BinRows;
class LotField;
class TemperatureField;
class WhenField;

class SoakForm : public FormFrame {
    Q_OBJECT

public:
    SoakForm(Desk& desk, const work::BatchView& batch, QWidget* parent = nullptr);
    /// Whether any bin is free.
    bool has_bins() const;

private:
    void choose_bins();
    void reckon();
    work::SoakEntry entry() const;

    Desk& m_desk;
    work::BatchId m_batch;
    BinRows* m_bins;
    LotField* m_lot;
    TemperatureField* m_room;
    WhenField* m_when;
};

} // namespace soakbook::ui
