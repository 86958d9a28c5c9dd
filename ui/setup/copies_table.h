// SPDX-License-Identifier: GPL-3.0-or-later
// The list of safe copies, in both places, as a table.
#pragma once

#include "core/work/safe_copies.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class Habits;

class CopiesTable : public RecordTable {
    Q_OBJECT

public:
    explicit CopiesTable(const Habits& habits, QWidget* parent = nullptr);
    void set_copies(std::vector<work::CopyLine> copies);
    /// The copy in the row with the keyboard, or nothing.
    const work::CopyLine* current() const;

private:
    RowsModel<work::CopyLine>* m_model;
};

} // namespace soakbook::ui
