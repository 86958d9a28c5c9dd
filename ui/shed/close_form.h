// SPDX-License-Identifier: GPL-3.0-or-later
// Closes a batch: says what is not accounted for, and asks where that is much.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class CloseForm : public FormFrame {
    Q_OBJECT

public:
    explicit CloseForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

private:
    Desk& m_desk;
    work::BatchId m_batch;
};

} // namespace soakbook::ui
