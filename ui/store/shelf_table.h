// SPDX-License-Identifier: GPL-3.0-or-later
// A table that takes what is left of the window, and asks for no more than a few rows before its page scrolls.
#pragma once

#include "ui/parts/record_table.h"

namespace soakbook::ui {

class ShelfTable : public RecordTable {
    Q_OBJECT

public:
    using RecordTable::RecordTable;
    /// The first row, where nothing is chosen.
    void choose_some_row();
    QSize sizeHint() const override { return minimumSizeHint(); }
    QSize minimumSizeHint() const override;
};

} // namespace soakbook::ui
