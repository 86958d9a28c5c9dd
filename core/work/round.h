// SPDX-License-Identifier: GPL-3.0-or-later
// A round: which yards, which strips, which rule, when. The rule is copied in and changes no more.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/hives.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: name, strip_kind, planned_on, yards, dose_rule, dose_strips, dose_frames_tenths, dose_least, dose_most,
/// pull_from_days, pull_by_days, withdrawal_days. What is empty comes from the strip kind and Set-up; what is missing
/// there too is refused as missing or figure_missing.
struct RoundEntry {
    RoundId id; ///< 0 plans a new one; another changes one in which nothing hangs yet
    QString name;
    std::optional<StripKindId> strip_kind;
    std::optional<maths::Day> planned_on;
    std::vector<YardId> yards;
    std::optional<DoseRule> dose_rule;
    std::optional<int> dose_strips;
    std::optional<int> dose_frames_tenths;
    std::optional<int> dose_least;
    std::optional<int> dose_most;
    std::optional<int> pull_from_days;
    std::optional<int> pull_by_days;
    std::optional<int> withdrawal_days;
    QString note;
};
/// Hives of a round that have as many boxes or frames, whichever its rule looks at, so that each gets the same.
struct DoseOfAlike {
    int hives = 0;
    std::optional<int> brood_boxes;    ///< of all of them
    std::optional<int> frames_of_bees; ///< of all of them
    std::optional<int> strips;         ///< for all of them; empty where the rule has no figure
};
struct RoundFigures {
    int hives = 0;
    int strips = 0;               ///< by the rule
    int hives_without_figure = 0; ///< no boxes or frames said: the rule gives no number for them
    int ready = 0;                ///< strips ready and in date on that day
    int short_of = 0;
    std::vector<DoseOfAlike> doses; ///< most hives first
    maths::Day pull_from{};
    maths::Day pull_by{};
    QStringList warnings_yards;         ///< "Yard: what, from to": flows and closed times that meet the days
    std::vector<YardTimeEntry> meeting; ///< the same, for who words them
};
Outcome<RoundFigures> reckon_round(const book::Workbook& workbook, const RoundEntry& entry, maths::Day today);
/// Asks about flows and closed times of the planned day, and days more than a year back.
Outcome<RoundId> plan_round(book::Workbook& workbook, const RoundEntry& entry, const book::Doing& doing,
                            const Confirmed& confirmed = {});
Outcome<int> close_round(book::Workbook& workbook, RoundId round, const book::Doing& doing);

struct RoundLine {
    RoundId id;
    QString name;
    StripKindId strip_kind;
    QString strip_kind_name;
    maths::Day planned_on{};
    std::vector<std::pair<YardId, bool>> yards; ///< and whether strips were put in there
    QStringList yard_names;
    int hives_planned = 0;
    int strips_planned = 0;
    int strips_in = 0;
    int strips_hanging = 0;
    std::optional<maths::Day> pull_from; ///< earliest of what hangs
    std::optional<maths::Day> pull_by;
    bool closed = false;
};
/// Newest first.
std::vector<RoundLine> rounds(const book::Workbook& workbook, bool also_closed = true);
RoundEntry round_entry(const book::Workbook& workbook, RoundId round);

} // namespace soakbook::work
