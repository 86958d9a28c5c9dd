// SPDX-License-Identifier: GPL-3.0-or-later
// What Yards shows: the yards, and the hives of one with what hangs in them.
#pragma once

#include "core/work/count.h"
#include "core/work/hives.h"
#include "core/work/pull.h"
#include "core/work/round.h"

namespace soakbook::work {

struct YardLine {
    YardId id;
    QString name;
    QString where_it_is;
    int hives = 0;    ///< alive, groups counted whole
    int carrying = 0; ///< hives with strips in
    int strips_hanging = 0;
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by; ///< earliest last day of what hangs
    std::optional<PullState> state;    ///< the worst of its hives
    bool active = true;
};
std::vector<YardLine> yard_lines(const book::Workbook& workbook, maths::Day today);

struct HiveLine {
    HiveEntry entry;
    QString yard_name;
    int strips = 0; ///< hanging now
    QStringList bags;
    std::optional<maths::Day> since; ///< the earliest of what hangs
    int day_number = 0;
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by; ///< earliest last day
    bool windows_clash = false;        ///< strips hang with windows that do not meet
    std::optional<PullState> state;
    std::optional<CountLine> last_count;
    std::optional<maths::Day>
        no_harvest_before; ///< by the withdrawal days of its placements, counted from the day strips came out
};
/// Hives of a yard (0: of all), alive ones first, in the order people count (A2 before A10).
std::vector<HiveLine> hive_lines(const book::Workbook& workbook, YardId yard, maths::Day today);

/// One hive's story: every placement, pull, count and move, newest first.
struct HiveEvent {
    maths::Day on{};
    enum class Kind { strips_in, strips_out, count, moved, died } kind{};
    HiveId hive;
    PlacementId placement;
    MiteCountId count;
    int strips = 0;
    int missing = 0;
    QString text; ///< bag code, yard, or count in figures
    QString note;
    bool made_void = false;
    bool written_late = false;
};
std::vector<HiveEvent> hive_events(const book::Workbook& workbook, HiveId hive);

/// Natural order of names: numbers inside count as numbers.
bool comes_before(const QString& a, const QString& b);

} // namespace soakbook::work
