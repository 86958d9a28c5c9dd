// SPDX-License-Identifier: GPL-3.0-or-later
// What went into a batch: planned beside weighed. Enter on a row puts a weight right.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class InputsTable : public RecordTable {
    Q_OBJECT

public:
    explicit InputsTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    /// A weight was put right.
    void corrected();

private:
    void correct(qint64 id);

    Desk& m_desk;
    work::BatchId m_batch;
    RowsModel<work::InputLine>* m_model;
    bool m_can_correct = false;
};

} // namespace soakbook::ui
