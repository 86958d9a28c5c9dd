// SPDX-License-Identifier: GPL-3.0-or-later
// Labels before bags, since a wet bag takes no label: gives out codes, to be filled later. Field name: reserve_count.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class CountField;

class ReserveForm : public FormFrame {
    Q_OBJECT

public:
    explicit ReserveForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    void reserved(const std::vector<soakbook::work::BagId>& bags);

private:
    Desk& m_desk;
    work::BatchId m_batch;
    CountField* m_labels;
};

} // namespace soakbook::ui
