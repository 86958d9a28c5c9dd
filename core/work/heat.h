// SPDX-License-Identifier: GPL-3.0-or-later
// Heat and clear: temperatures read at the tank, stirs, and the liquid seen clear.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>

namespace soakbook::work {

/// Fields: probe, dial, room, at.
struct ReadingEntry {
    BatchId batch;
    std::optional<maths::Temperature> probe;
    std::optional<maths::Temperature> dial;
    std::optional<maths::Temperature> room;
    std::optional<bool> jacket_seen;
    std::optional<maths::Instant> at; ///< empty: now; an earlier one is an entry made late
    QString note;
};
struct ReadingResult {
    ReadingId id;
    bool over_ceiling = false; ///< said at once, with what to do
    maths::Temperature ceiling{};
    std::optional<maths::Temperature> dial_above_probe; ///< this reading's offset
};
/// Refuses times in the future or before the batch, asks for temperatures outside -20 to 120 C.
Outcome<ReadingResult> log_reading(book::Workbook& workbook, const ReadingEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});

/// Fields: minutes, clear, outlet, at.
struct StirEntry {
    BatchId batch;
    std::optional<int> minutes;
    std::optional<bool> clear;
    std::optional<bool> outlet_poured_back; ///< needed when clear is yes
    std::optional<maths::Instant> at;
    QString note;
};
/// Clear without a single probe reading is refused (no_reading).
Outcome<StirId> log_stir(book::Workbook& workbook, const StirEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});

/// Corrections, with the reason in `doing`.
Outcome<int> correct_reading(book::Workbook& workbook, ReadingId id, const ReadingEntry& entry, const book::Doing& doing);
Outcome<int> void_reading(book::Workbook& workbook, ReadingId id, const book::Doing& doing);
Outcome<int> void_stir(book::Workbook& workbook, StirId id, const book::Doing& doing);

} // namespace soakbook::work
