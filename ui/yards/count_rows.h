// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of a mite count.
#pragma once

#include "core/work/count.h"
#include "core/work/yards_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/yards/number_cell.h"

#include <QCoreApplication>

namespace soakbook::ui {

/// One hive or group; without mites it was not counted.
struct CountRow {
    work::HiveLine line;
    NumberCell mites;
    NumberCell bees;
    NumberCell days;
    std::optional<int> usual_bees; ///< the number used last; nobody's number is invented
    QString note;
    work::MiteFigures figures;

    std::optional<int> bees_in_sample() const { return bees.is_typed ? bees.value : usual_bees; }
    /// The part of the row that does not read, as its field is called; empty where all does.
    QString unread() const;
    void take_typing(const CountRow& other);
    work::CountEntry::Row entry() const { return {line.entry.id, mites.value, bees_in_sample(), days.value, note}; }
};

enum CountColumn : int { count_hive, count_last, count_mites, count_bees, count_days, count_rate, count_note };

class CountGrid {
    Q_DECLARE_TR_FUNCTIONS(CountGrid)

public:
    static std::vector<Column<CountRow>> columns(const Desk& desk, std::function<void()> changed);
    static std::vector<int> widths();
};

} // namespace soakbook::ui
