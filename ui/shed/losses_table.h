// SPDX-License-Identifier: GPL-3.0-or-later
// The losses named for a batch. Enter on a row makes it void.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class LossesTable : public RecordTable {
    Q_OBJECT

public:
    explicit LossesTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    void corrected();

private:
    void make_void(qint64 id);

    Desk& m_desk;
    bool m_can_correct = false;
    RowsModel<work::LossLine>* m_model;
};

} // namespace soakbook::ui
