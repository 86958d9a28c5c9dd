// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/hazard.h"

#include "core/maths/exact.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace soakbook::maths {
namespace {

constexpr Fraction relevant{10'000};          // GHS 3.1.3.3: ingredients of 1 % and more
constexpr Fraction unknown_counts{100'000};   // GHS 3.1.3.6.2.3: more than 10 %
constexpr Fraction eye_damage_from{30'000};   // GHS table 3.3.3: 3 % of category 1
constexpr Fraction eye_irritant_from{10'000}; // GHS table 3.3.3: 1 % of category 1

bool has(const Hazard& hazard, HazardStatement statement) {
    return std::find(hazard.hazards.begin(), hazard.hazards.end(), statement) != hazard.hazards.end();
}

bool is_category_4(Route route, double estimate) {
    const auto category = acute_category(route, estimate);
    return category && *category == AcuteCategory::four;
}

/// Signal word and pictograms, which follow from the statements (GHS 1.4.10.5.3: corrosion takes the place of the
/// exclamation mark for the eye, not for swallowing or skin).
void add_signs(Hazard& hazard) {
    const bool damages_eyes = has(hazard, HazardStatement::h318);
    const bool harmful = has(hazard, HazardStatement::h302) || has(hazard, HazardStatement::h312);
    if (damages_eyes)
        hazard.pictograms.push_back(Pictogram::ghs05_corrosion);
    if (harmful || has(hazard, HazardStatement::h319))
        hazard.pictograms.push_back(Pictogram::ghs07_exclamation);
    if (damages_eyes)
        hazard.word = SignalWord::danger;
    else if (!hazard.hazards.empty())
        hazard.word = SignalWord::warning;
}

/// The precautions that go with the statements; the numbering of the two sets is from memory.
void add_precautions(Hazard& hazard, StatementSet set, bool powder) {
    using P = PrecautionaryStatement;
    const bool newer = set == StatementSet::from_rev_9;
    std::vector<P>& list = hazard.precautions;
    if (hazard.hazards.empty())
        return;
    if (powder)
        list.push_back(P::p261);
    list.push_back(P::p264);
    if (has(hazard, HazardStatement::h302))
        list.push_back(P::p270);
    list.push_back(P::p280);
    if (has(hazard, HazardStatement::h302)) {
        list.push_back(newer ? P::p301_p317 : P::p301_p312);
        list.push_back(P::p330);
    }
    list.push_back(P::p302_p352);
    if (has(hazard, HazardStatement::h312))
        list.push_back(newer ? P::p317 : P::p312);
    if (has(hazard, HazardStatement::h318)) {
        list.push_back(newer ? P::p305_p354_p338 : P::p305_p351_p338);
        if (!newer)
            list.push_back(P::p310);
        else if (!has(hazard, HazardStatement::h312))
            list.push_back(P::p317);
    }
    if (has(hazard, HazardStatement::h319)) {
        list.push_back(P::p305_p351_p338);
        list.push_back(newer ? P::p337_p317 : P::p337_p313);
    }
    if (has(hazard, HazardStatement::h312))
        list.push_back(P::p362_p364);
    list.push_back(P::p405);
    list.push_back(P::p501);
}

} // namespace

Answer<double> toxicity_of_mixture(std::span<const Ingredient> ingredients) {
    Wide together = 0;
    std::int64_t unknown = 0;
    double sum = 0.0;
    for (const Ingredient& ingredient : ingredients) {
        if (!is_part(ingredient.part))
            return unexpected(Unanswerable::out_of_range);
        together += ingredient.part.count;
        if (ingredient.part < relevant)
            continue;
        if (ingredient.toxicity == Toxicity::unknown)
            unknown += ingredient.part.count;
        if (ingredient.toxicity != Toxicity::known)
            continue;
        if (!std::isfinite(ingredient.estimate) || ingredient.estimate <= 0.0)
            return unexpected(Unanswerable::not_a_quantity);
        sum += in_percent(ingredient.part) / ingredient.estimate;
    }
    if (together > 1'000'000)
        return unexpected(Unanswerable::out_of_range);
    if (!(sum > 0.0))
        return unexpected(Unanswerable::zero_below_the_line);
    const double counted = unknown > unknown_counts.count ? 100.0 - in_percent(Fraction{unknown}) : 100.0;
    const double estimate = counted / sum;
    if (!std::isfinite(estimate))
        return unexpected(Unanswerable::out_of_range);
    return estimate;
}

Answer<AcuteCategory> acute_category(Route route, double estimate) {
    if (!std::isfinite(estimate) || estimate <= 0.0)
        return unexpected(Unanswerable::not_a_quantity);
    constexpr std::array<double, 4> oral{5.0, 50.0, 300.0, 2000.0};
    constexpr std::array<double, 4> dermal{50.0, 200.0, 1000.0, 2000.0};
    const auto& limits = route == Route::oral ? oral : dermal;
    const auto reached =
        std::find_if(limits.begin(), limits.end(), [estimate](double most) { return estimate <= most; });
    return static_cast<AcuteCategory>(reached - limits.begin());
}

Answer<Hazard> hazard_of_liquid(Fraction strength, StatementSet set, OralBasis basis) {
    if (!is_part(strength))
        return unexpected(Unanswerable::out_of_range);
    Hazard hazard;
    const auto estimate_from = [strength](double pure) -> std::optional<double> {
        const Ingredient acid{strength, Toxicity::known, pure};
        const auto estimate = toxicity_of_mixture({&acid, 1});
        return estimate ? std::optional<double>(*estimate) : std::nullopt;
    };
    hazard.oral_estimate = estimate_from(basis == OralBasis::rat_ld50 ? oral_rat_ld50 : oral_point_estimate);
    hazard.dermal_estimate = estimate_from(dermal_point_estimate);
    if (hazard.oral_estimate && is_category_4(Route::oral, *hazard.oral_estimate))
        hazard.hazards.push_back(HazardStatement::h302);
    if (hazard.dermal_estimate && is_category_4(Route::dermal, *hazard.dermal_estimate))
        hazard.hazards.push_back(HazardStatement::h312);
    if (strength >= eye_damage_from)
        hazard.hazards.push_back(HazardStatement::h318);
    else if (strength >= eye_irritant_from)
        hazard.hazards.push_back(HazardStatement::h319);
    add_signs(hazard);
    add_precautions(hazard, set, false);
    return hazard;
}

Hazard hazard_of_powder(StatementSet set) {
    Hazard hazard;
    hazard.hazards = {HazardStatement::h302, HazardStatement::h312, HazardStatement::h318};
    add_signs(hazard);
    add_precautions(hazard, set, true);
    return hazard;
}

} // namespace soakbook::maths
