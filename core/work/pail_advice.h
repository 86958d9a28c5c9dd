// SPDX-License-Identifier: GPL-3.0-or-later
// Which whole pails of the store go into a mix so that most old liquid is used up, why these, and what it saves.
#pragma once

#include "core/work/mix.h"

namespace soakbook::work {

/// Why a pail goes in or not.
enum class PailIs {
    used,
    strength_unknown, ///< used in part: it goes into no mix
    set_not_whole,    ///< of a pour whose pails go in only together, one is gone
    too_heavy,        ///< it, or its set, is heavier than the whole mix
    too_strong,       ///< it, or its set, alone holds more acid than the mix may
    too_weak,         ///< it, or its set, alone leaves no room for the acid it would need
    left_over,        ///< with the others that go in it does not fit
};
struct PailAdviceLine {
    PailId id;
    QString code;
    maths::Mass mass{};
    std::optional<maths::Fraction> strength;
    maths::Day oldest_on{};
    PailIs is = PailIs::left_over;
    QStringList set; ///< codes of those it goes in together with
};
enum class PailAdviceSays {
    advised,
    no_pails,       ///< none stands in the store
    none_fits,      ///< none can go in whole
    not_applicable, ///< the mix starts from the acid or the glycerine at hand: its total is not said
};
struct PailAdvice {
    PailAdviceSays says = PailAdviceSays::no_pails;
    std::vector<PailAdviceLine> lines; ///< every pail that stands in the store, oldest liquid first
    maths::Mass total{};
    maths::Fraction strength{}; ///< of the mix
    maths::Mass old_liquid{};   ///< in the pails that go in
    maths::Mass acid{};         ///< fresh, as weighed of the chosen lot
    maths::Mass glycerine{};    ///< fresh
    maths::Mass saves_acid{};   ///< against the same mix without pails, as weighed of the chosen lot
    maths::Mass saves_glycerine{};
    std::optional<maths::Money> saves_money; ///< when the lots chosen have a cost
    bool proved = true;                      ///< nothing better exists; false: more pails than could be tried out
    maths::Mass could_be_more{};             ///< when not proved: at most so much more old liquid could be used

    std::vector<PailId> used() const;
};
/// For a plan that starts from a total or from strips wanted; whatever pails it holds already are chosen anew. The
/// tank's capacity and what is left of the chosen lots are limits; while no acid lot is chosen, pure acid without limit
/// is reckoned with. Refuses what plan_mix refuses at the same fields: a missing tank, amount or strips,
/// overfills_tank, assay_below_strength, lot_short when even with pails there is too little.
Outcome<PailAdvice> pail_advice(const book::Workbook& workbook, const MixPlan& plan);
/// Pails only, nothing fresh: as near to what the tank holds as whole pails come. Saves are none.
Outcome<PailAdvice> pails_only_advice(const book::Workbook& workbook, VesselId tank);

} // namespace soakbook::work
