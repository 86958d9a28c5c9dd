// SPDX-License-Identifier: GPL-3.0-or-later
// The table of hives: what stands in a yard and what hangs in it. Boxes, frames and supers are typed over.
#pragma once

#include "core/work/yards_view.h"
#include "ui/parts/habits.h"
#include "ui/parts/rows_model.h"
#include "ui/yards/number_cell.h"

#include <QCoreApplication>

namespace soakbook::ui {

/// One hive or group; what was typed and not taken stays in its cell.
struct HiveLineRow {
    work::HiveLine line;
    NumberCell boxes;
    NumberCell frames;
};

enum HiveColumn : int {
    hive_yard, hive_name, hive_boxes, hive_frames, hive_strips, hive_bags, hive_since, hive_day, hive_window, hive_state, hive_count, hive_supers
};

class HiveGrid {
    Q_DECLARE_TR_FUNCTIONS(HiveGrid)

public:
    /// `save` writes a hive as it was typed over; false where that is refused. `unread` is told of a text that does not read.
    using Save = std::function<bool(const work::HiveEntry& hive)>;
    static std::vector<Column<HiveLineRow>> columns(const Habits& habits, const Save& save, const std::function<void(const QString& hive)>& unread);
    static std::vector<int> widths();
    /// "on", "off" or nothing, as the supers' cell holds it.
    static QString supers_word(std::optional<bool> on);

private:
    static void add_figures(std::vector<Column<HiveLineRow>>& columns, const Save& save, const std::function<void(const QString& hive)>& unread);
    static void add_strips(std::vector<Column<HiveLineRow>>& columns, const Habits& habits);
};

} // namespace soakbook::ui
