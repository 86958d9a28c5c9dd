// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/choose_rows.h"

#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

#include <QItemSelectionModel>

namespace soakbook::ui {

bool choose_rows(RecordTable& table, const std::vector<qint64>& ids) {
    const RowsModelBase* rows = table.rows_model();
    QItemSelection selection;
    QModelIndex first;
    for (const qint64 id : ids) {
        const int row = rows->row_of(id);
        if (row < 0)
            continue;
        const QModelIndex index = rows->index(row, 0);
        if (!first.isValid())
            first = index;
        selection.select(index, index);
    }
    if (!first.isValid())
        return false;
    // The view's own setCurrentIndex() would toggle the row while Ctrl is held, as it is after Ctrl+Enter.
    table.selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    table.selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    table.scrollTo(first);
    return true;
}

void choose_some_row(RecordTable& table) {
    if (table.chosen_ids().empty() && table.rows_model()->rowCount() > 0)
        choose_rows(table, {table.rows_model()->id_at(0)});
}

} // namespace soakbook::ui
