// SPDX-License-Identifier: GPL-3.0-or-later
// Soak: strips packed in bins and flooded.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: bins/<i>/bin, bins/<i>/strips, bins/<i>/flood, lot, room, at.
struct SoakEntry {
    BatchId batch;
    struct Bin {
        std::optional<VesselId> bin;
        std::optional<int> strips;          ///< empty: what the bin holds
        std::optional<maths::Mass> flood;   ///< liquid let in, if it was measured
    };
    std::vector<Bin> bins;
    std::optional<LotId> lot; ///< dry strips; may be unknown
    std::optional<maths::Temperature> room;
    std::optional<maths::Instant> at;
};
struct SoakFigures {
    int strips = 0;
    maths::Mass taken_at_target{};  ///< liquid all of them will hold
    maths::Mass liquid{};           ///< in the batch
    maths::Mass most_left{};
    std::optional<maths::Mass> flood; ///< all bins together, where every one is measured
};
Outcome<SoakFigures> reckon_soak(const book::Workbook& workbook, const SoakEntry& entry);
/// Refuses a liquid not seen clear, bins in use, strips that would take up more than there is; asks for overfull bins.
Outcome<std::vector<SoakId>> start_soak(book::Workbook& workbook, const SoakEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});
/// The strips are taken out to drip. `at` empty: now.
Outcome<int> end_soak(book::Workbook& workbook, SoakId soak, std::optional<maths::Instant> at, const book::Doing& doing);
/// Corrects a soak's number of strips or its start; reason in `doing`. Fields: strips, at.
Outcome<int> correct_soak(book::Workbook& workbook, SoakId soak, std::optional<int> strips, std::optional<maths::Instant> started, const book::Doing& doing);

} // namespace soakbook::work
