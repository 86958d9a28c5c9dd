// SPDX-License-Identifier: GPL-3.0-or-later
// What the Store shows: bags by limit, pails, and strips by month of use-by.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace soakbook::work {

/// Found here alone and never stored. `reserved`: a label without a bag yet.
enum class BagState { reserved, resting, ready, near_limit, past_limit, gone, made_void };

struct BagLine {
    BagId id;
    QString code;
    BatchId batch;
    QString batch_code;
    StripKindId strip_kind;
    QString strip_kind_name;
    BagState state{};
    std::optional<int> packed;
    int left = 0;
    int placed = 0;
    int discarded = 0;
    int recounted = 0; ///< with a sign
    std::optional<maths::Mass> net;
    std::optional<maths::Mass> acid_per_strip;
    std::optional<maths::Fraction> strength;
    std::optional<maths::Day> sealed_on;
    std::optional<maths::Day> rest_until;
    std::optional<maths::Day> use_by;
    std::optional<int> days_left; ///< below zero: past
    std::optional<maths::Day> opened_on;
    std::optional<maths::Day> resealed_on;
    bool opened_too_long = false; ///< by the figure opened_days
    QString stands;
    QString label; ///< "none", "printed", "stale"
    QString note;
    QString void_reason;
};
BagState bag_state(const BagLine& bag, maths::Day today, std::optional<qint64> near_limit_days);

enum class BagFilter { in_stock, resting, ready, near_limit, past_limit, opened, reserved, gone, all };
/// In order of use-by day; gone and void ones last.
std::vector<BagLine> bags(const book::Workbook& workbook, maths::Day today, BagFilter filter = BagFilter::in_stock);
std::optional<BagLine> bag(const book::Workbook& workbook, BagId id, maths::Day today);

/// What happened to a bag, oldest first, for its card: placed where, discarded, recounted.
struct BagEvent {
    maths::Day on{};
    enum class Kind { sealed, opened, resealed, placed, discarded, recounted } kind{};
    int strips = 0; ///< with a sign
    QString where;  ///< hive and yard
    QString reason;
    bool made_void = false;
};
std::vector<BagEvent> bag_events(const book::Workbook& workbook, BagId id);

enum class PailState { ready, only_with_its_set, strength_unknown, planned, used, discarded, made_void };
struct PailLine {
    PailId id;
    QString code;
    PourId pour;
    QString batch_code;
    maths::Mass mass{};
    std::optional<maths::Fraction> strength;
    maths::Day sealed_on{};
    maths::Day oldest_on{};
    int times_warmed = 1;
    int days_waiting = 0;
    bool waits_too_long = false; ///< by the figure pail_wait_days
    PailState state{};
    QString used_in; ///< batch code
    QStringList set; ///< codes of the pails it goes in together with
    QString stands;
    QString label;
    QString reason; ///< discarded or void
};
/// Usable first, oldest first.
std::vector<PailLine> pails(const book::Workbook& workbook, maths::Day today, bool also_gone = false);
std::optional<PailLine> pail(const book::Workbook& workbook, PailId id, maths::Day today);

/// The store in one sentence and as months.
struct StockFigures {
    int ready = 0;
    int resting = 0;
    int near_limit = 0; ///< strips, part of ready
    int past_limit = 0; ///< strips
    int bags_in_stock = 0;
    int pails = 0;
    maths::Mass in_pails{};
};
StockFigures stock_figures(const book::Workbook& workbook, maths::Day today);
struct StockMonth {
    int year = 0;
    unsigned month = 0;
    int strips = 0;  ///< whose use-by day lies in that month
    int wanted = 0;  ///< by rounds planned in that month
    int in_date = 0; ///< still in date at the month's end if nothing is hung
};
/// Twelve months from today's.
std::vector<StockMonth> stock_by_month(const book::Workbook& workbook, maths::Day today);

} // namespace soakbook::work
