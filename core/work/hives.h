// SPDX-License-Identifier: GPL-3.0-or-later
// Yards, their times, and the hives or groups that stand in them. An id of 0 adds, another changes.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: name, where_it_is, note.
struct YardEntry {
    YardId id;
    QString name;
    QString where_it_is;
    QString note;
    bool active = true;
};
std::vector<YardEntry> yards(const book::Workbook& workbook, bool also_inactive = false);
Outcome<YardId> save_yard(book::Workbook& workbook, const YardEntry& yard, const book::Doing& doing);

enum class TimeKind { flow, closed };
/// Fields: what, from, to.
struct YardTimeEntry {
    YardTimeId id;
    YardId yard;
    TimeKind kind{};
    QString what;
    std::optional<maths::Day> from;
    std::optional<maths::Day> to; ///< last day
};
std::vector<YardTimeEntry> yard_times(const book::Workbook& workbook, YardId yard);
Outcome<YardTimeId> save_yard_time(book::Workbook& workbook, const YardTimeEntry& time, const book::Doing& doing);
Outcome<int> remove_yard_time(book::Workbook& workbook, YardTimeId time, const book::Doing& doing);

enum class StateOfHive { alive, dead, gone };
/// Fields: name, hives, brood_boxes, frames_of_bees, supers_on, state_on.
struct HiveEntry {
    HiveId id;
    YardId yard;
    QString name;
    int hives = 1;                     ///< 1, or how many make this group
    std::optional<int> brood_boxes;    ///< of the whole group
    std::optional<int> frames_of_bees; ///< of the whole group
    std::optional<bool> supers_on;
    bool untreated = false; ///< left untreated on purpose, to compare with
    StateOfHive state{};
    std::optional<maths::Day> state_on;
    QString note;
};
std::vector<HiveEntry> hives(const book::Workbook& workbook, YardId yard, bool also_dead = false);
std::optional<HiveEntry> hive(const book::Workbook& workbook, HiveId id);
Outcome<HiveId> save_hive(book::Workbook& workbook, const HiveEntry& hive, const book::Doing& doing);
/// Adds numbered hives in one go: "A", 1, 20 gives A1 ... A20 (`digits` 2: A01 ... A20). Fields: prefix, first, count.
struct HiveRow {
    YardId yard;
    QString prefix;
    std::optional<int> first;
    std::optional<int> count;
    int digits = 1;
    std::optional<int> brood_boxes;    ///< each
    std::optional<int> frames_of_bees; ///< each
};
Outcome<std::vector<HiveId>> add_hives(book::Workbook& workbook, const HiveRow& row, const book::Doing& doing);
/// Sets boxes, frames and supers of several hives, as the grid was typed over.
Outcome<int> save_hives(book::Workbook& workbook, const std::vector<HiveEntry>& hives, const book::Doing& doing);
/// Moves hives with what hangs in them; placements keep the yard they were made in. Fields: to, on.
Outcome<int> move_hives(book::Workbook& workbook, const std::vector<HiveId>& hives, std::optional<YardId> to,
                        std::optional<maths::Day> on, const book::Doing& doing);

} // namespace soakbook::work
