// SPDX-License-Identifier: GPL-3.0-or-later
// Bag: fill bags with a code, a rest and a limit each; or reserve labels first, since a wet bag takes no label.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"
#include "core/work/weigh.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: bags, strips_per_bag, last_bag, net, sealed_on, stands, bag_lot, soak.
struct BagEntry {
    BatchId batch;
    std::optional<SoakId> soak;          ///< empty: any of the batch
    std::optional<int> bags;
    std::optional<int> strips_per_bag;   ///< empty: as the strip kind says
    std::optional<int> last_bag;         ///< strips in a short last bag; empty: as the others
    std::optional<maths::Mass> net;      ///< contents of one full bag, weighed
    std::optional<maths::Day> sealed_on; ///< empty: today
    std::optional<LotId> bag_lot;
    QString stands;
};
struct BagFigures {
    int bags = 0;
    int strips = 0;
    int last_bag = 0;
    int still_to_bag = 0;                     ///< strips soaked and not bagged after these
    std::optional<maths::Day> rest_until;     ///< empty: no rest was said in Set-up
    maths::Day use_by{};
    std::optional<maths::Mass> strip;         ///< mean of the last weighing
    maths::Mass dry{};                        ///< of one strip
    maths::Fraction strength{};               ///< of the liquid it took up
    std::optional<maths::Mass> acid_per_strip;
    std::optional<maths::Mass> expected_net;  ///< of a full bag, strips times mean
    std::optional<WeighVerdict> verdict;      ///< of the last weighing
};
Outcome<BagFigures> reckon_bags(const book::Workbook& workbook, const BagEntry& entry, maths::Day today);
struct BagsFilled {
    std::vector<BagId> bags;
    QStringList codes;
    BagFigures figures;
};
/// Refuses more strips than were soaked, a batch not mixed or closed; asks when no weighing was made or the last was light.
Outcome<BagsFilled> fill_bags(book::Workbook& workbook, const BagEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});

/// Gives out `labels` codes whose bags are filled later. Fields: labels.
Outcome<BagsFilled> reserve_labels(book::Workbook& workbook, BatchId batch, std::optional<int> labels, const book::Doing& doing);
/// Fills bags whose labels were reserved. Fields: rows/<i>/strips, rows/<i>/net, sealed_on.
struct FillReserved {
    BatchId batch;
    struct Row {
        BagId bag;
        std::optional<int> strips;
        std::optional<maths::Mass> net;
    };
    std::vector<Row> rows;
    std::optional<maths::Day> sealed_on;
    QString stands;
};
Outcome<BagsFilled> fill_reserved(book::Workbook& workbook, const FillReserved& entry, const book::Doing& doing, const Confirmed& confirmed = {});

/// Corrects a bag, reason in `doing`: strips packed, net weight, day sealed. A label that was printed becomes stale and Due
/// asks to print it again. Fields: packed, net, sealed_on.
struct BagCorrection {
    BagId bag;
    std::optional<int> packed;
    std::optional<maths::Mass> net;
    std::optional<maths::Day> sealed_on;
};
Outcome<int> correct_bag(book::Workbook& workbook, const BagCorrection& entry, const book::Doing& doing);
/// A spoilt label or a burst bag: void, reason in `doing`; refused while its strips hang in hives.
Outcome<int> void_bag(book::Workbook& workbook, BagId bag, const book::Doing& doing);

} // namespace soakbook::work
