// SPDX-License-Identifier: GPL-3.0-or-later
// The pails of a batch. Enter on a row puts a mass right.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class PailsTable : public RecordTable {
    Q_OBJECT

public:
    explicit PailsTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    void corrected();

private:
    void correct(qint64 id);

    Desk& m_desk;
    work::BatchId m_batch;
    RowsModel<work::BatchPail>* m_model;
};

} // namespace soakbook::ui
