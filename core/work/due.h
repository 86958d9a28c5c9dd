// SPDX-License-Identifier: GPL-3.0-or-later
// Due: one list over the whole workbook of what is to be done, each with where it leads.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"
#include "core/work/store_view.h"

#include <optional>
#include <vector>

namespace soakbook::work {

enum class DueGroup { now, today, this_week, later };
/// Worded by ui/due; the comment says which fields a kind fills.
enum class DueKind {
    over_ceiling,      ///< batch; temperature
    read_tank,         ///< batch; since
    stir_tank,         ///< batch; since
    weigh_planned,     ///< a planned batch whose amounts are to be weighed in; batch
    weigh_strips,      ///< batch; subject: bin; since: soak start; by
    bag_strips,        ///< batch; count: strips soaked, ended or on target, not bagged
    fill_reserved,     ///< batch; count: labels without a bag
    pour_or_close,     ///< batch; all is bagged, leftovers open
    rest_ends,         ///< batch; count: bags; strips; by: the day
    pull_past,         ///< yard; count: hives; since: placed; by: latest day
    pull_open,         ///< yard; count: hives; from, by
    pull_opens,        ///< yard; count: hives; from, by
    pull_dead,         ///< yard; count: dead hives that still hold strips
    bags_near_limit,   ///< count: bags; strips; from, by: first and last limit
    bags_past_limit,   ///< count: bags; strips; by: the first limit
    opened_too_long,   ///< count: bags
    pail_waits,        ///< count: pails; since: the oldest
    print_label_again, ///< count: bags or pails; ids
    count_mites,       ///< yard; count: hives; since: pulled
    visit_yard,        ///< round; yard; by: planned day; strips
    round_short,       ///< round; strips: how many short; by: planned day
    figure_missing,    ///< subject: key of a figure that keeps something from being said
    safe_copy_late,    ///< (filled by the shell) since
    second_place,      ///< (filled by the shell) safe copies lie on this computer alone, or the second place does not answer; subject: it
    draft_waits,       ///< (filled by the shell) subject: the form's title; since: typed
    changed_outside,   ///< (filled by the shell) count: changes by other programs; since: the newest
};
struct DueRow {
    DueKind kind{};
    DueGroup group{};
    BatchId batch;
    SoakId soak;
    YardId yard;
    RoundId round;
    std::vector<qint64> ids; ///< bags, pails or placements the row stands for
    bool of_pails = false;   ///< print_label_again: they are pails
    QString subject;         ///< code or name to show
    int count = 0;
    int strips = 0;
    std::optional<maths::Day> from;
    std::optional<maths::Day> by;
    std::optional<maths::Instant> since;
    std::optional<maths::Instant> by_hour; ///< weigh_strips, read_tank, stir_tank: when
    std::optional<maths::Temperature> temperature;
    maths::Day sort_day{};
};
/// Most urgent first within each group.
std::vector<DueRow> due(const book::Workbook& workbook, maths::Instant now);

/// The page's figures in one sentence.
struct DueFigures {
    StockFigures stock;
    int hives_carrying = 0;
    int hives_past_pull = 0;
};
DueFigures due_figures(const book::Workbook& workbook, maths::Day today);
/// What the year's band shows: months with strips in date, wanted by rounds, and short.
struct YearRound {
    QString name;
    maths::Day on{};
    int wanted = 0;
    int short_of = 0;
};
struct YearAhead {
    std::vector<StockMonth> months;
    std::vector<int> in_date_after_rounds; ///< per month, nearest limit used first
    std::vector<int> reach_limit;          ///< strips that reach their limit in that month, unused
    std::vector<YearRound> rounds;
};
YearAhead year_ahead(const book::Workbook& workbook, maths::Day today);

} // namespace soakbook::work
