// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/column_fit.h"

#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"

#include <QEvent>

#include <algorithm>

namespace soakbook::ui {

ColumnFit::ColumnFit(RecordTable& table, std::vector<int> widths, std::vector<int> may_go)
    : QObject(&table), m_table(table), m_widths(std::move(widths)), m_may_go(std::move(may_go)) {
    table.viewport()->installEventFilter(this);
}

void ColumnFit::fit() {
    const int room = m_table.viewport()->width();
    int wanted = 0;
    for (int column = 0; column < static_cast<int>(m_widths.size()); ++column) {
        const bool spared = std::find(m_may_go.begin(), m_may_go.end(), column) != m_may_go.end();
        wanted += spared || !m_table.isColumnHidden(column) ? scaled(m_widths[static_cast<std::size_t>(column)]) : 0;
    }
    for (const int column : m_may_go) {
        const bool goes = wanted > room;
        if (m_table.isColumnHidden(column) != goes) {
            m_table.setColumnHidden(column, goes);
        }
        wanted -= goes ? scaled(m_widths[static_cast<std::size_t>(column)]) : 0;
    }
}

bool ColumnFit::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) {
        fit();
    }
    return QObject::eventFilter(watched, event);
}

} // namespace soakbook::ui
