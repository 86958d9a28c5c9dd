// SPDX-License-Identifier: GPL-3.0-or-later
// What happened to a bag, oldest first: sealed, opened, hung where, thrown away, counted anew.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class BagEventsTable : public RecordTable {
    Q_OBJECT

public:
    explicit BagEventsTable(Desk& desk, QWidget* parent = nullptr);
    void show_bag(work::BagId bag);

private:
    struct Line {
        qint64 id = 0;
        work::BagEvent event;
    };
    static QString what(const work::BagEvent& event);
    std::vector<Column<Line>> columns() const;

    Desk& m_desk;
    RowsModel<Line>* m_rows;
};

} // namespace soakbook::ui
