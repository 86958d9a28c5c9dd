// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/column_fit.h"

#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"

#include <algorithm>

namespace soakbook::ui {

void fit_columns(RecordTable& table, const std::vector<int>& widths, const std::vector<int>& may_go) {
    const int room = table.viewport()->width();
    int wanted = 0;
    for (int column = 0; column < static_cast<int>(widths.size()); ++column) {
        const bool spared = std::find(may_go.begin(), may_go.end(), column) != may_go.end();
        wanted += spared || !table.isColumnHidden(column) ? scaled(widths[static_cast<std::size_t>(column)]) : 0;
    }
    for (const int column : may_go) {
        const bool goes = wanted > room;
        table.setColumnHidden(column, goes);
        wanted -= goes ? scaled(widths[static_cast<std::size_t>(column)]) : 0;
    }
}

void keep_rows(RecordTable& table, int rows) {
    table.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    table.setMinimumHeight(scaled(36 + rows * row_height) + 2);
}

} // namespace soakbook::ui
