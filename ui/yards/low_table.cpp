// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/low_table.h"

#include "ui/parts/theme.h"

namespace soakbook::ui {

LowTable::LowTable(const QString& name, const QString& spoken_name, int least_rows, QWidget* parent)
    : RecordTable(name, spoken_name, parent), m_least_rows(least_rows) {}

void LowTable::set_least_rows(int rows) {
    if (rows != m_least_rows) {
        m_least_rows = rows;
        updateGeometry();
    }
}

QSize LowTable::sizeHint() const {
    return {RecordTable::sizeHint().width(), minimumSizeHint().height()};
}

QSize LowTable::minimumSizeHint() const {
    constexpr int header = 36;
    return {RecordTable::minimumSizeHint().width(), scaled(header + m_least_rows * row_height) + 2};
}

} // namespace soakbook::ui
