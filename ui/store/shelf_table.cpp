// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/shelf_table.h"

#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"

namespace soakbook::ui {

namespace {

constexpr int least_rows = 3;

} // namespace

void ShelfTable::choose_some_row() {
    if (chosen_ids().empty() && rows_model()->rowCount() > 0)
        choose(rows_model()->id_at(0));
}

QSize ShelfTable::minimumSizeHint() const {
    // The header is a little lower than a row.
    return {RecordTable::minimumSizeHint().width(), scaled((least_rows + 1) * row_height)};
}

} // namespace soakbook::ui
