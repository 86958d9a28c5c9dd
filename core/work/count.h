// SPDX-License-Identifier: GPL-3.0-or-later
// Mite counts: a wash, a powder shake or the natural drop, and the rate with its interval.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

enum class MiteCountKind { wash, powder, drop };
/// Fields: rows/<i>/mites, rows/<i>/bees, rows/<i>/days, on.
struct CountEntry {
    std::optional<RoundId> round;
    std::optional<maths::Day> on;
    MiteCountKind kind{};
    struct Row {
        HiveId hive;
        std::optional<int> mites; ///< empty: not counted
        std::optional<int> bees;
        std::optional<int> days;
        QString note;
    };
    std::vector<Row> rows;
};
Outcome<int> enter_counts(book::Workbook& workbook, const CountEntry& entry, const book::Doing& doing,
                          const Confirmed& confirmed = {});
Outcome<int> void_count(book::Workbook& workbook, MiteCountId id, const book::Doing& doing);

/// The rate of one count: mites per bee with its 95 % interval (Wilson), or mites a day.
struct MiteFigures {
    std::optional<maths::Fraction> rate;
    std::optional<maths::Fraction> low;
    std::optional<maths::Fraction> high;
    std::optional<double> per_day;
    std::optional<maths::Fraction> threshold; ///< the user's figure, when it was said and there is a rate
    std::optional<bool> over_threshold;       ///< the rate against it
    bool is_sure = false;                     ///< the whole interval lies on that side of it
};
MiteFigures mite_figures(const book::Workbook& workbook, MiteCountKind kind, int mites, std::optional<int> bees,
                         std::optional<int> days);

struct CountLine {
    MiteCountId id;
    HiveId hive;
    QString hive_name;
    maths::Day on{};
    MiteCountKind kind{};
    int mites = 0;
    std::optional<int> bees;
    std::optional<int> days;
    QString round_name;
    MiteFigures figures;
};
/// Counts of a hive (0: of the yard; both 0: all), newest first.
std::vector<CountLine> counts(const book::Workbook& workbook, HiveId hive, YardId yard);

} // namespace soakbook::work
