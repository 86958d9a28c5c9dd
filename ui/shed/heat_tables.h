// SPDX-License-Identifier: GPL-3.0-or-later
// The readings and the stirs of a batch. Enter on a row puts it right or makes it void.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class ReadingsTable : public RecordTable {
    Q_OBJECT

public:
    explicit ReadingsTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    void corrected();

private:
    void correct(qint64 id);

    Desk& m_desk;
    work::BatchId m_batch;
    bool m_can_correct = false;
    RowsModel<work::ReadingLine>* m_model;
};

class StirsTable : public RecordTable {
    Q_OBJECT

public:
    explicit StirsTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    void corrected();

private:
    void make_void(qint64 id);

    Desk& m_desk;
    bool m_can_correct = false;
    RowsModel<work::StirLine>* m_model;
};

} // namespace soakbook::ui
