// SPDX-License-Identifier: GPL-3.0-or-later
// A table that shares its page with others: it takes whatever height is left, but never less than so many rows.
#pragma once

#include "ui/parts/record_table.h"

namespace soakbook::ui {

class LowTable : public RecordTable {
    Q_OBJECT

public:
    LowTable(const QString& name, const QString& spoken_name, int least_rows, QWidget* parent = nullptr);
    void set_least_rows(int rows);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

private:
    int m_least_rows;
};

} // namespace soakbook::ui
