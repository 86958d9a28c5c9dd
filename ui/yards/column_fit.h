// SPDX-License-Identifier: GPL-3.0-or-later
// Tables on narrow pages: what can be spared goes first.
#pragma once

#include <QObject>

#include <vector>

namespace soakbook::ui {

class RecordTable;

/// Hides the columns of `may_go`, the first ones first, while the columns at these widths (for 100 % text) have no room;
/// shows them again where there is room. Other hidden columns stay hidden. It belongs to the table.
class ColumnFit : public QObject {
    Q_OBJECT

public:
    ColumnFit(RecordTable& table, std::vector<int> widths, std::vector<int> may_go);
    /// Looks again, after another column was hidden or shown.
    void fit();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    RecordTable& m_table;
    std::vector<int> m_widths;
    std::vector<int> m_may_go;
};

} // namespace soakbook::ui
