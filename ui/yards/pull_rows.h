// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of strips out: what hangs, and what was found of it.
#pragma once

#include "core/work/pull.h"
#include "ui/parts/habits.h"
#include "ui/parts/rows_model.h"
#include "ui/yards/number_cell.h"

#include <QCoreApplication>

namespace soakbook::ui {

/// The strips of one bag in one hive or group.
struct PullRow {
    work::PullLine line;
    NumberCell pulled;  ///< typed; otherwise all that hang; emptied: these strips stay in
    NumberCell missing; ///< typed; otherwise what is not pulled
    QString note;

    bool stays() const { return pulled.is_typed && !pulled.value && !pulled.is_wrong(); }
    std::optional<int> strips_pulled() const;
    std::optional<int> strips_missing() const;
    bool is_exception() const { return strips_pulled() != line.strips || strips_missing() != 0; }
    /// The part of the row that does not read, as its field is called; empty where all does.
    QString unread() const;
    void take_typing(const PullRow& other);
    work::PullEntry::Row entry() const { return {line.placement, strips_pulled(), strips_missing(), note}; }
};

enum PullColumn : int {
    pull_yard, pull_hive, pull_bag, pull_hanging, pull_since, pull_day, pull_window, pull_state, pull_pulled, pull_missing, pull_note
};

class PullGrid {
    Q_DECLARE_TR_FUNCTIONS(PullGrid)

public:
    static std::vector<Column<PullRow>> columns(const Habits& habits, std::function<void()> changed);
    static std::vector<int> widths();
};

} // namespace soakbook::ui
