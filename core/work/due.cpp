// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/due.h"

#include "core/work/due_rows.h"
#include "core/work/pull.h"

#include <algorithm>

namespace soakbook::work {

std::vector<DueRow> due(const book::Workbook& workbook, maths::Instant now) {
    DueList list{workbook, now, now.local_day(), {}, {}};
    due_in_shed(list);
    due_in_store(list);
    due_in_yards(list);
    for (const Figure which : list.missing) {
        DueRow& row = list.add(DueKind::figure_missing, DueGroup::later, maths::Day::max());
        row.subject = QLatin1String(info(which).key);
    }
    std::stable_sort(list.rows.begin(), list.rows.end(), [](const DueRow& a, const DueRow& b) {
        return std::tie(a.group, a.sort_day, a.kind) < std::tie(b.group, b.sort_day, b.kind);
    });
    return list.rows;
}

DueFigures due_figures(const book::Workbook& workbook, maths::Day today) {
    DueFigures figures;
    figures.stock = stock_figures(workbook, today);
    std::map<HiveId, bool> past;
    for (const PullLine& line : hanging(workbook, {}, today)) {
        const auto [hive, first] = past.emplace(line.hive, false);
        if (first)
            figures.hives_carrying += line.hives;
        if (line.state == PullState::past && !hive->second) {
            hive->second = true;
            figures.hives_past_pull += line.hives;
        }
    }
    return figures;
}

} // namespace soakbook::work
