// SPDX-License-Identifier: GPL-3.0-or-later
// Where every kilogram of a batch went.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class BalanceTable : public RecordTable {
    Q_OBJECT

public:
    explicit BalanceTable(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);
    /// No wider than the eye follows a row.
    QSize sizeHint() const override;

    struct Row {
        qint64 id = 0;
        QString what;
        maths::Mass mass{};
        bool with_sign = false;
        std::optional<ui::State> state;
        bool strong = false;
    };

private:
    Desk& m_desk;
    RowsModel<Row>* m_model;
};

} // namespace soakbook::ui
