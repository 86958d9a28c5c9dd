// SPDX-License-Identifier: GPL-3.0-or-later
// The hazard class and statements that follow from the strength of the liquid, for a label of one's own use. It is not
// a legal classification. Typed codes only: their words stand with whoever prints them. Source: UN Globally Harmonized
// System (GHS), chapters 1.4, 3.1 and 3.3; oxalic acid classified H302, H312, H318.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <optional>
#include <span>
#include <vector>

namespace soakbook::maths {

/// How the toxicity of an ingredient is known.
enum class Toxicity {
    known,     ///< by its estimate
    not_toxic, ///< known not to be acutely toxic: left out of the sum
    unknown,   ///< no data: takes its part out of the sum once such parts exceed 10 %
};
/// One ingredient of a mixture.
struct Ingredient {
    Fraction part;
    Toxicity toxicity = Toxicity::not_toxic;
    double estimate = 0.0; ///< acute toxicity estimate (ATE), mg per kg body weight; with `known` only
};
/// `100 / ATEmix = sum C_i / ATE_i` over ingredients of 1 % and more; with more than 10 % unknown,
/// `(100 - unknown) / ATEmix`. GHS 3.1.3.6. Refuses parts outside 0 to 1 or above 1 together, estimates not above zero,
/// and zero_below_the_line when no ingredient of 1 % or more is toxic: then nothing is to be classified.
Answer<double> toxicity_of_mixture(std::span<const Ingredient> ingredients);

enum class Route { oral, dermal };
/// Acute toxicity categories, the worst first.
enum class AcuteCategory { one, two, three, four, none };
/// The category an estimate falls in (GHS table 3.1.1: oral 5, 50, 300, 2000; dermal 50, 200, 1000, 2000 mg/kg).
/// Refuses what is not above zero.
Answer<AcuteCategory> acute_category(Route route, double estimate);

enum class SignalWord { none, warning, danger };
enum class Pictogram { ghs05_corrosion, ghs07_exclamation };
enum class HazardStatement { h302, h312, h318, h319 };
enum class PrecautionaryStatement {
    p261,
    p264,
    p270,
    p280,
    p301_p312,
    p301_p317,
    p330,      ///< swallowed
    p302_p352, ///< on skin
    p312,
    p317, ///< skin contact that makes unwell: whom to call
    p305_p351_p338,
    p305_p354_p338, ///< in eyes
    p310,           ///< in eyes, up to Rev. 8: call at once
    p337_p313,
    p337_p317, ///< eye irritation that lasts
    p362_p364, ///< clothes
    p405,      ///< locked up
    p501,      ///< disposal
};
/// Which edition's statements are printed; one set at a time.
enum class StatementSet { up_to_rev_8, from_rev_9 };

/// From which oral figure H302 is reckoned. Printed is the stricter.
enum class OralBasis {
    point_estimate, ///< GHS table 3.1.2, category 4: 500 mg/kg, so H302 from 25 %
    rat_ld50,       ///< 375 mg/kg, so H302 from 18.75 %
};

/// What the label says.
struct Hazard {
    std::vector<HazardStatement> hazards; ///< in the order of their numbers
    std::vector<Pictogram> pictograms;
    SignalWord word = SignalWord::none;
    std::vector<PrecautionaryStatement> precautions; ///< gloves and rinsing the skin always among them
    std::optional<double> oral_estimate;             ///< mg/kg; empty below 1 % of acid
    std::optional<double> dermal_estimate;           ///< mg/kg
};

constexpr double oral_point_estimate = 500.0;    ///< mg/kg, category 4, GHS table 3.1.2
constexpr double dermal_point_estimate = 1100.0; ///< mg/kg, category 4, GHS table 3.1.2
constexpr double oral_rat_ld50 = 375.0;          ///< mg/kg

/// The hazard of a liquid of that strength (dihydrate by mass, the stricter way to reckon). H302 by `basis`, H312 from
/// 55 %, H318 from 3 %, H319 from 1 % to below 3 %. Refuses a strength outside 0 to 1.
Answer<Hazard> hazard_of_liquid(Fraction strength, StatementSet set, OralBasis basis = OralBasis::rat_ld50);
/// The acid powder itself: H302, H312, H318.
Hazard hazard_of_powder(StatementSet set);

} // namespace soakbook::maths
