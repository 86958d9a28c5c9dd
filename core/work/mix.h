// SPDX-License-Identifier: GPL-3.0-or-later
// Mix: plan the amounts for a strength, then write down what was weighed in.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// What the user starts from; exactly one of the amounts is said.
enum class MixFrom { total, acid_at_hand, glycerine_at_hand, strips_wanted };

/// Fields: from_amount, strips, strength, tank, strip_kind, acid_lot, glycerine_lot, pails, planned_on.
struct MixPlan {
    MixFrom from = MixFrom::total;
    std::optional<maths::Mass> amount;     ///< total, acid or glycerine; empty with strips_wanted
    std::optional<int> strips;
    std::optional<maths::Fraction> strength; ///< empty: the figure of Set-up
    std::optional<VesselId> tank;
    std::optional<StripKindId> strip_kind;
    std::optional<LotId> acid_lot;
    std::optional<LotId> glycerine_lot;
    std::vector<PailId> pails;             ///< each whole
    std::vector<std::pair<PailId, maths::Mass>> parts_of_pails; ///< refused with the reason; here so that the wish can be answered
    std::optional<maths::Day> planned_on;  ///< empty: today
};

/// An amount of one material in whole containers and a last weighed part.
struct InContainers {
    maths::Mass total{};
    std::optional<maths::Mass> container;
    qint64 whole = 0;
    maths::Mass rest{}; ///< to weigh after the whole ones; the container's weight tared away
};
struct MixFigures {
    maths::Mass total{};
    InContainers acid;
    InContainers glycerine;
    maths::Mass from_pails{};
    maths::Fraction strength{};
    maths::Fraction strength_anhydrous{}; ///< the same counted as anhydrous acid
    std::optional<int> strips;            ///< that it soaks by mass, of the chosen kind
    std::optional<maths::Mass> most_left; ///< of the liquid after those strips
    std::optional<maths::Mass> tank_room; ///< capacity less total
};
/// The sum behind the form while it is typed; refuses as plan_mix does.
Outcome<MixFigures> reckon_mix(const book::Workbook& workbook, const MixPlan& plan, maths::Day today);

struct PlannedBatch {
    BatchId batch;
    QString code;
    MixFigures figures;
};
/// Starts a batch with its code and its planned amounts. Refuses (see Why, mix): assay below strength, overfull tank, short or
/// finished lots, pails that are used, used in part, of unknown strength, or part of a set that is not whole.
Outcome<PlannedBatch> plan_mix(book::Workbook& workbook, const MixPlan& plan, const book::Doing& doing, const Confirmed& confirmed = {});

/// One line of a batch's inputs.
struct InputLine {
    BatchInputId id;
    std::optional<LotId> lot;
    std::optional<PailId> pail;
    bool is_acid = false;
    QString name;              ///< lot or pail code
    maths::Mass planned{};
    std::optional<maths::Mass> mass;
    std::optional<maths::Mass> container;
};
/// Fields: inputs/<i>/mass, at.
struct WeighedMix {
    BatchId batch;
    std::vector<std::pair<BatchInputId, std::optional<maths::Mass>>> masses; ///< pails: their whole mass
    std::optional<maths::Instant> at; ///< when it was done; empty: now
    bool pails_scraped = true;        ///< false is refused: what stays in a pail is settled acid
};
struct MixResult {
    maths::Mass total{};
    maths::Mass acid{};
    maths::Fraction strength{};
    maths::Fraction wanted{};
    /// What would bring it to the strength wanted: acid (of the lot used) or glycerine; empty when it is right to 0.1 %.
    std::optional<maths::Mass> add_acid;
    std::optional<maths::Mass> add_glycerine;
    bool correction_fits = true; ///< in this tank
    /// Of the acid weighed in last, or of the one that would be added; empty when neither is known.
    std::optional<maths::Fraction> assay;
};
Outcome<MixResult> reckon_weighed(const book::Workbook& workbook, const WeighedMix& mix);
/// Writes the weighed amounts; asks (strength_off) when the strength is more than half a per cent point from the plan.
Outcome<MixResult> weigh_mix(book::Workbook& workbook, const WeighedMix& mix, const book::Doing& doing, const Confirmed& confirmed = {});

/// Adds more acid or glycerine to a mix that was weighed, to correct it. Fields: acid, glycerine.
struct MixCorrection {
    BatchId batch;
    std::optional<LotId> lot;
    std::optional<maths::Mass> mass;
};
Outcome<MixResult> add_to_mix(book::Workbook& workbook, const MixCorrection& entry, const book::Doing& doing);
/// Puts a wrongly written weight right; needs a reason in `doing`.
Outcome<MixResult> correct_weighed(book::Workbook& workbook, BatchInputId input, maths::Mass mass, const book::Doing& doing);
/// Drops a planned batch, or makes a mixed one void, with the reason in `doing`; pails become free again if nothing was soaked.
Outcome<int> void_batch(book::Workbook& workbook, BatchId batch, const book::Doing& doing);

} // namespace soakbook::work
