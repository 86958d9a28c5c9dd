// SPDX-License-Identifier: GPL-3.0-or-later
// What a round's copied rule gives for a hive or a group, and what the rounds ahead want of the store. For core/work's
// own use.
#pragma once

#include "core/book/records/hive.h"
#include "core/book/records/round.h"
#include "core/maths/dose.h"
#include "core/work/hives.h"
#include "core/work/ids.h"

#include <optional>
#include <vector>

namespace soakbook::work {

maths::DoseRule rule_of(const book::Round& round);
/// Strips for a hive, or for a group: its number times the dose of its average hive. Nothing where the rule needs a
/// figure of the hive that was not said. 0 for hives left untreated.
std::optional<int> strips_by_rule(const maths::DoseRule& rule, const book::Hive& hive);

/// What one yard of a round still wants.
struct Wanted {
    RoundId round;
    QString round_name;
    StripKindId kind;
    YardId yard;
    QString yard_name;
    maths::Day on{}; ///< planned
    int hives = 0;   ///< groups counted whole
    int strips = 0;
    int without_figure = 0;
};
/// Every yard of an open round without its visit, in order of the planned day.
std::vector<Wanted> strips_wanted(const book::Workbook& workbook);

/// Flows and closed times of a yard that meet the days, both included.
std::vector<YardTimeEntry> times_meeting(const book::Workbook& workbook, YardId yard, maths::Day from, maths::Day to);
/// "what, from to" with the days as in the store.
QString time_text(const YardTimeEntry& time);

} // namespace soakbook::work
