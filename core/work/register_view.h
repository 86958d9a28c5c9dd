// SPDX-License-Identifier: GPL-3.0-or-later
// The Register: treatments in a range of days, yards and batches, with their corrections; and a record's history.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"
#include "core/work/pull.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace soakbook::work {

struct RegisterFilter {
    std::optional<maths::Day> from;
    std::optional<maths::Day> to;
    YardId yard;   ///< 0: all
    BatchId batch; ///< 0: all
    bool also_void = true;
};
/// A correction as the register shows it: what it said, what it says, why, who, when.
struct CorrectionLine {
    QString record; ///< code or name of what was corrected
    QString column; ///< key of the column in the store: "strips", "placed_on", "total_mg" ...; worded by ui. A weighing
                    ///< has "mean_mg" as well, and the history of a record begins with "added" and may hold "removed"
    QString before; ///< as in the store; ui writes it as a quantity by the column's kind
    QString after;
    QString why;
    QString who;
    maths::Instant at;
    bool made_void = false;
    bool undone = false;
    bool outside = false; ///< made by another program: nobody's name and no reason stand with it
    qint64 row = 0;       ///< its key
    QString table;        ///< what kind of record it is, as the store calls it: "reading", "weigh_in" ...
};
/// One treatment of one hive or group.
struct RegisterLine {
    PlacementId placement;
    maths::Day placed_on{};
    QString hive;
    int hives = 1;
    QString yard; ///< where it stood that day
    QString bag_code;
    QString batch_code;
    int strips = 0;
    std::optional<maths::Mass> acid_per_strip;
    std::optional<maths::Mass> acid; ///< all strips together
    std::optional<maths::Fraction> strength;
    maths::Day use_by{};
    QString placed_by;
    bool written_late = false; ///< entered on a later day
    maths::Instant written;
    std::optional<maths::Day> pull_by;
    std::optional<maths::Day> pulled_on;
    std::optional<int> pulled;
    std::optional<int> missing;
    QString pulled_by;
    bool pulled_late = false;       ///< out after the last day of its window
    bool pull_written_late = false; ///< coming out was entered on a later day
    std::optional<maths::Day> no_harvest_before;
    std::optional<bool> supers_on;
    QString past_limit_reason;
    QStringList asked; ///< keys of Why answered with yes
    QString round;
    QString note;
    QString void_reason;
    std::vector<CorrectionLine> corrections; ///< of the placement itself
};
/// Oldest first.
std::vector<RegisterLine> treatments(const book::Workbook& workbook, const RegisterFilter& filter);
/// Corrections and voids of those treatments, and of batches, weighings, bags, pails and deliveries behind them (or all,
/// with an empty filter), oldest first; also "undone" pieces of work that were shown outside.
std::vector<CorrectionLine> corrections(const book::Workbook& workbook, const RegisterFilter& filter);
/// Hives found dead or gone in the range, and hives left without strips in a visit, oldest first.
struct HiveStateLine {
    maths::Day on{};
    QString hive;
    QString yard;
    QString state; ///< "dead", "gone"; "none_hung" or "untreated" for one left without strips
    QString note;
};
std::vector<HiveStateLine> hive_states(const book::Workbook& workbook, const RegisterFilter& filter);

/// The history of one record as lines, newest first. `table` as in the store: "batch", "bag", "placement" ...
std::vector<CorrectionLine> history(const book::Workbook& workbook, const QString& table, qint64 id);
/// The newest entries of the whole workbook: who, when, what piece of work.
struct JournalLine {
    qint64 seq = 0;
    book::Piece piece;
    QString who;
    QString why;
    maths::Instant at;
    int records = 0;
    bool outside = false; ///< changed by another program
};
std::vector<JournalLine> journal(const book::Workbook& workbook, int most);

} // namespace soakbook::work
