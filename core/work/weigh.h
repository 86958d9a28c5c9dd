// SPDX-License-Identifier: GPL-3.0-or-later
// Weigh: strips on the scale, together or one by one; mean, uptake, acid in a strip, and the verdict.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: strips, total, singles/<i>, drip, at.
struct WeighEntry {
    // exactly one of these is weighed
    std::optional<SoakId> soak;
    std::optional<BagId> bag;
    std::optional<PlacementId> placement; ///< pulled strips
    std::optional<int> strips;            ///< empty: the figure sample_strips
    std::optional<maths::Mass> total;     ///< together
    std::vector<maths::Mass> singles;     ///< one by one; then strips and total follow
    std::optional<int> drip_minutes;
    std::optional<maths::Instant> at;
    QString note;
};
enum class WeighVerdict { on_target, light, heavy, weigh_more };
struct WeighFigures {
    int strips = 0;
    maths::Mass mean{};
    std::optional<maths::Mass> low;  ///< 95 % interval of the mean; only one by one
    std::optional<maths::Mass> high;
    maths::Mass uptake{};
    maths::Mass acid_per_strip{};            ///< as dihydrate
    maths::Mass acid_per_strip_anhydrous{};
    std::optional<WeighVerdict> verdict;     ///< none for pulled strips
    maths::Mass off_target{};                ///< mean less target, with a sign
    maths::Mass target{};
    maths::Mass tolerance{};
    maths::Mass dry{};
};
/// The sum behind the form. Refuses wet strips lighter than dry ones and more strips than are there.
Outcome<WeighFigures> reckon_weighing(const book::Workbook& workbook, const WeighEntry& entry);
/// Asks (heavier_than_possible) above dry plus twice the uptake wanted ("3 kg in one strip?").
Outcome<WeighFigures> log_weighing(book::Workbook& workbook, const WeighEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});
/// Puts a weighing right, reason in `doing`; what it said before stays in the history and is shown.
Outcome<WeighFigures> correct_weighing(book::Workbook& workbook, WeighInId id, const WeighEntry& entry, const book::Doing& doing);
Outcome<int> void_weighing(book::Workbook& workbook, WeighInId id, const book::Doing& doing);

} // namespace soakbook::work
