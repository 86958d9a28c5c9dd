// SPDX-License-Identifier: GPL-3.0-or-later
// Classification of the mixture, UN GHS. For an own-use label; not a legal classification.
#include "core/maths/hazard.h"
#include "tests/maths/answers.h"

#include <array>

namespace soakbook::maths {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Not;

// Source: UN document ST/SG/AC.10/C.4/2008/23, worked example: 16 % at 1600, 4 % at 200, 80 % at 3450 mg/kg.
TEST(OutsideHazard, un_example_of_three_ingredients) {
    const std::array mixture{Ingredient{percent(16), Toxicity::known, 1600},
                             Ingredient{percent(4), Toxicity::known, 200},
                             Ingredient{percent(80), Toxicity::known, 3450}};
    EXPECT_THAT(toxicity_of_mixture(mixture), IsNear(1880.11, 0.005));
    EXPECT_THAT(acute_category(Route::oral, 1880.11), Is(AcuteCategory::four));
}

// Source: ST/SG/AC.10/C.4/2008/23, annex 2, example 3: 4 % at 1737 mg/kg, the rest not toxic: 43 425 mg/kg, not
// classified.
TEST(OutsideHazard, un_example_of_one_toxic_ingredient) {
    const std::array mixture{Ingredient{percent(4), Toxicity::known, 1737}, Ingredient{percent(5)},
                             Ingredient{percent(5)}, Ingredient{percent(86)}};
    EXPECT_THAT(toxicity_of_mixture(mixture), IsNear(43'425.0, 1e-6));
    EXPECT_THAT(acute_category(Route::oral, 43'425.0), Is(AcuteCategory::none));
}

// Source: ST/SG/AC.10/C.4/2008/23, example on ingredients of unknown toxicity: by mouth 26 % at 2737, 23 % at 4500, 40
// % at 400, the rest not toxic: 873 mg/kg, category 4; with 11 % unknown and estimates 11, 19, 4: 6.6 in its own unit.
TEST(OutsideHazard, un_example_with_an_unknown_ingredient) {
    const std::array oral{Ingredient{percent(26), Toxicity::known, 2737},
                          Ingredient{percent(23), Toxicity::known, 4500}, Ingredient{percent(40), Toxicity::known, 400},
                          Ingredient{percent(11)}};
    EXPECT_THAT(toxicity_of_mixture(oral), IsNear(873.0, 0.5));
    const std::array unknown{Ingredient{percent(26), Toxicity::known, 11}, Ingredient{percent(23), Toxicity::known, 19},
                             Ingredient{percent(40), Toxicity::known, 4}, Ingredient{percent(11), Toxicity::unknown}};
    EXPECT_THAT(toxicity_of_mixture(unknown), IsNear(6.6, 0.05));
}

// Source: GHS table 3.1.1, limits of the acute toxicity categories.
TEST(OutsideHazard, category_limits) {
    EXPECT_THAT(acute_category(Route::oral, 300), Is(AcuteCategory::three));
    EXPECT_THAT(acute_category(Route::oral, 300.1), Is(AcuteCategory::four));
    EXPECT_THAT(acute_category(Route::oral, 2000), Is(AcuteCategory::four));
    EXPECT_THAT(acute_category(Route::oral, 2000.1), Is(AcuteCategory::none));
    EXPECT_THAT(acute_category(Route::dermal, 1000), Is(AcuteCategory::three));
    EXPECT_THAT(acute_category(Route::dermal, 1100), Is(AcuteCategory::four));
    EXPECT_THAT(acute_category(Route::oral, 5), Is(AcuteCategory::one));
    EXPECT_THAT(acute_category(Route::oral, 50), Is(AcuteCategory::two));
}

// Source: GHS 3.1.3.6.1 with the point estimate 500 mg/kg of table 3.1.2.
TEST(OutsideHazard, oral_estimates_of_the_liquid) {
    const auto oral = [](double strength) {
        return hazard_of_liquid(percent(strength), StatementSet::up_to_rev_8, OralBasis::point_estimate)
            ->oral_estimate.value();
    };
    EXPECT_NEAR(oral(40), 1250.0, 1e-9);
    EXPECT_NEAR(oral(30), 1666.67, 0.005);
    EXPECT_NEAR(oral(20), 2500.0, 1e-9);
}

bool has(Fraction strength, HazardStatement statement, OralBasis basis) {
    const auto hazard = hazard_of_liquid(strength, StatementSet::from_rev_9, basis).value();
    return testing::Matches(Contains(statement))(hazard.hazards);
}

// Source: GHS 3.1 (oral 500, dermal 1100, limit 2000 mg/kg) and table 3.3.3 (eyes: 3 % and 1 %).
TEST(OutsideHazard, strengths_from_which_statements_hold) {
    const Fraction step{1};
    const auto point = OralBasis::point_estimate;
    EXPECT_TRUE(has(percent(25), HazardStatement::h302, point));
    EXPECT_FALSE(has(percent(25) - step, HazardStatement::h302, point));
    EXPECT_TRUE(has(percent(55), HazardStatement::h312, point));
    EXPECT_FALSE(has(percent(55) - step, HazardStatement::h312, point));
    EXPECT_TRUE(has(percent(3), HazardStatement::h318, point));
    EXPECT_FALSE(has(percent(3) - step, HazardStatement::h318, point));
    EXPECT_TRUE(has(percent(3) - step, HazardStatement::h319, point));
    EXPECT_TRUE(has(percent(1), HazardStatement::h319, point));
    EXPECT_FALSE(has(percent(1) - step, HazardStatement::h319, point));
    EXPECT_FALSE(has(percent(3), HazardStatement::h319, point));
}

// Source: rat oral LD50 375 mg/kg (RTECS, as quoted in data sheets; from memory): 375 / 2000 = 18.75 %. The stricter is
// printed.
TEST(OutsideHazard, the_stricter_oral_figure_is_the_one_printed) {
    EXPECT_TRUE(has(percent(18.75), HazardStatement::h302, OralBasis::rat_ld50));
    EXPECT_FALSE(has(percent(18.75) - Fraction{1}, HazardStatement::h302, OralBasis::rat_ld50));
    const auto printed = hazard_of_liquid(percent(20), StatementSet::up_to_rev_8);
    ASSERT_TRUE(printed);
    EXPECT_THAT(printed->hazards, Contains(HazardStatement::h302));
}

// Source: GHS chapters 3.1 and 3.3, annex 1: what follows for the strengths the trade uses.
TEST(OutsideHazard, thirty_to_fifty_per_cent_is_danger_with_two_pictograms) {
    for (double strength = 30; strength <= 50; strength += 0.5)
        for (const OralBasis basis : {OralBasis::point_estimate, OralBasis::rat_ld50}) {
            const auto hazard = hazard_of_liquid(percent(strength), StatementSet::from_rev_9, basis);
            ASSERT_TRUE(hazard);
            ASSERT_EQ(hazard->word, SignalWord::danger);
            ASSERT_THAT(hazard->hazards, ElementsAre(HazardStatement::h302, HazardStatement::h318));
            ASSERT_THAT(hazard->pictograms, ElementsAre(Pictogram::ghs05_corrosion, Pictogram::ghs07_exclamation));
        }
}

// Source: classification of oxalic acid, Regulation (EC) 1272/2008 annex VI (H302, H312); H318 as notified by
// suppliers.
TEST(OutsideHazard, the_powder_has_its_own_class) {
    const Hazard powder = hazard_of_powder(StatementSet::from_rev_9);
    EXPECT_THAT(powder.hazards, ElementsAre(HazardStatement::h302, HazardStatement::h312, HazardStatement::h318));
    EXPECT_EQ(powder.word, SignalWord::danger);
    EXPECT_THAT(powder.precautions, Contains(PrecautionaryStatement::p261));
}

// Source: GHS annex 3, Rev. 8 and Rev. 9 (numbers from memory).
TEST(OutsideHazard, first_aid_of_either_edition) {
    const auto rev8 = hazard_of_liquid(percent(40), StatementSet::up_to_rev_8)->precautions;
    EXPECT_THAT(rev8, Contains(PrecautionaryStatement::p301_p312));
    EXPECT_THAT(rev8, Contains(PrecautionaryStatement::p305_p351_p338));
    EXPECT_THAT(rev8, Contains(PrecautionaryStatement::p310));
    const auto rev9 = hazard_of_liquid(percent(40), StatementSet::from_rev_9)->precautions;
    EXPECT_THAT(rev9, Contains(PrecautionaryStatement::p301_p317));
    EXPECT_THAT(rev9, Contains(PrecautionaryStatement::p305_p354_p338));
    EXPECT_THAT(rev9, Contains(PrecautionaryStatement::p317));
    EXPECT_THAT(rev9, Not(Contains(PrecautionaryStatement::p310)));
}

} // namespace
} // namespace soakbook::maths
