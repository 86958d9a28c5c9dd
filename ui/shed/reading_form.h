// SPDX-License-Identifier: GPL-3.0-or-later
// Temperatures read at the tank. Field names: reading_probe, reading_dial, reading_room, reading_jacket, reading_when.
#pragma once

#include "core/work/heat.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class TemperatureField;
class WhenField;
class YesNoField;

class ReadingForm : public FormFrame {
    Q_OBJECT

public:
    explicit ReadingForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

private:
    void reckon();
    work::ReadingEntry entry() const;

    Desk& m_desk;
    work::BatchId m_batch;
    maths::Temperature m_ceiling{};
    TemperatureField* m_probe;
    TemperatureField* m_dial;
    TemperatureField* m_room;
    YesNoField* m_jacket;
    WhenField* m_when;
};

} // namespace soakbook::ui
