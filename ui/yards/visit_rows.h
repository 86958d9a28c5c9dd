// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of a visit: what was planned for each hive and what was typed over it.
#pragma once

#include "core/work/visit.h"
#include "ui/parts/rows_model.h"
#include "ui/yards/number_cell.h"

#include <QCoreApplication>

namespace soakbook::ui {

/// One hive or group of the grid.
struct VisitRow {
    work::VisitLine line;
    NumberCell typed;                ///< the strips, typed over
    NumberCell figure;               ///< boxes or frames as typed, where they were not taken
    std::optional<work::BagId> bag;  ///< chosen; otherwise nearest limit first
    work::StateOfHive state = work::StateOfHive::alive;
    QString note;
    std::vector<work::FromBag> from; ///< what the store gives for it

    /// The strips to hang: what was typed, else none in a dead hive, else what was planned.
    std::optional<int> strips() const;
    /// Whether it differs from what was planned.
    bool is_exception() const;
    /// What was typed over, from an earlier row of the same hive.
    void take_typing(const VisitRow& other);
    work::VisitEntry::Row entry() const;
    /// The part of the row that does not read, as its field is called; empty where all does.
    QString unread() const;
};

enum VisitColumn : int { visit_hive, visit_figure, visit_planned, visit_strips, visit_bag, visit_state, visit_note };

/// What the grid asks of its page.
struct VisitTyping {
    bool by_boxes = false;                                                 ///< the rule counts brood boxes, not frames of bees
    /// Boxes or frames of a hive, written at once; false where they are refused.
    std::function<bool(work::HiveId hive, std::optional<int> figure)> set_figure;
    std::function<std::optional<work::BagId>(const QString& code)> bag_named;
    std::function<void()> changed;
};

class VisitGrid {
    Q_DECLARE_TR_FUNCTIONS(VisitGrid)

public:
    static std::vector<Column<VisitRow>> columns(const VisitTyping& typing);
    static std::vector<int> widths();
};

} // namespace soakbook::ui
