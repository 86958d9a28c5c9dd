// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/hazard.h"
#include "tests/maths/answers.h"

#include <algorithm>
#include <array>

namespace soakbook::maths {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

Hazard liquid(double strength, StatementSet set = StatementSet::up_to_rev_8) {
    return hazard_of_liquid(percent(strength), set).value();
}

TEST(Hazard, plain_glycerine_has_no_statement_at_all) {
    for (const double strength : {0.0, 0.5, 0.9999}) {
        const Hazard hazard = liquid(strength);
        EXPECT_THAT(hazard.hazards, IsEmpty());
        EXPECT_THAT(hazard.pictograms, IsEmpty());
        EXPECT_THAT(hazard.precautions, IsEmpty());
        EXPECT_EQ(hazard.word, SignalWord::none);
        EXPECT_FALSE(hazard.oral_estimate);
    }
}

TEST(Hazard, a_weak_liquid_irritates_eyes_and_warns) {
    const Hazard hazard = liquid(2);
    EXPECT_THAT(hazard.hazards, ElementsAre(HazardStatement::h319));
    EXPECT_THAT(hazard.pictograms, ElementsAre(Pictogram::ghs07_exclamation));
    EXPECT_EQ(hazard.word, SignalWord::warning);
    EXPECT_THAT(hazard.precautions, Contains(PrecautionaryStatement::p337_p313));
}

TEST(Hazard, eyes_alone_bring_no_exclamation_mark) {
    const Hazard hazard = liquid(10);
    EXPECT_THAT(hazard.hazards, ElementsAre(HazardStatement::h318));
    EXPECT_THAT(hazard.pictograms, ElementsAre(Pictogram::ghs05_corrosion));
    EXPECT_EQ(hazard.word, SignalWord::danger);
}

TEST(Hazard, gloves_and_rinsing_the_skin_are_printed_with_every_statement) {
    for (int tenths = 10; tenths <= 1000; ++tenths)
        for (const StatementSet set : {StatementSet::up_to_rev_8, StatementSet::from_rev_9}) {
            const Hazard hazard = liquid(tenths / 10.0, set);
            ASSERT_THAT(hazard.precautions, Contains(PrecautionaryStatement::p280));
            ASSERT_THAT(hazard.precautions, Contains(PrecautionaryStatement::p302_p352));
            auto sorted = hazard.precautions;
            std::sort(sorted.begin(), sorted.end());
            ASSERT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << tenths;
        }
}

TEST(Hazard, the_two_statement_sets_are_never_mixed) {
    const Hazard older = liquid(40, StatementSet::up_to_rev_8);
    const Hazard newer = liquid(40, StatementSet::from_rev_9);
    using P = PrecautionaryStatement;
    for (const P p : {P::p301_p312, P::p305_p351_p338, P::p310}) {
        EXPECT_THAT(older.precautions, Contains(p));
        EXPECT_THAT(newer.precautions, Not(Contains(p)));
    }
    for (const P p : {P::p301_p317, P::p305_p354_p338, P::p317}) {
        EXPECT_THAT(newer.precautions, Contains(p));
        EXPECT_THAT(older.precautions, Not(Contains(p)));
    }
}

TEST(Hazard, a_stronger_liquid_never_loses_a_statement) {
    for (int ppm_more = 0; ppm_more < 1'000'000; ppm_more += 2'500) {
        const Hazard weaker = hazard_of_liquid(Fraction{ppm_more}, StatementSet::from_rev_9).value();
        const Hazard stronger = hazard_of_liquid(Fraction{ppm_more + 2'500}, StatementSet::from_rev_9).value();
        for (const HazardStatement statement : weaker.hazards) {
            const bool gives_way = statement == HazardStatement::h319; // to H318
            ASSERT_TRUE(gives_way || testing::Matches(Contains(statement))(stronger.hazards)) << ppm_more;
        }
        ASSERT_GE(stronger.word, weaker.word);
    }
}

TEST(Hazard, refuses_what_is_no_mixture) {
    EXPECT_THAT(hazard_of_liquid(Fraction{-1}, StatementSet::from_rev_9), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(hazard_of_liquid(percent(101), StatementSet::from_rev_9), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(toxicity_of_mixture({}), Refuses(Unanswerable::zero_below_the_line));
    const std::array too_much{Ingredient{percent(60), Toxicity::known, 500}, Ingredient{percent(60)}};
    EXPECT_THAT(toxicity_of_mixture(too_much), Refuses(Unanswerable::out_of_range));
    const std::array no_estimate{Ingredient{percent(60), Toxicity::known, 0.0}};
    EXPECT_THAT(toxicity_of_mixture(no_estimate), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(acute_category(Route::oral, std::nan("")), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(acute_category(Route::oral, -1), Refuses(Unanswerable::not_a_quantity));
}

TEST(Hazard, unknown_parts_count_only_beyond_a_tenth) {
    const std::array some{Ingredient{percent(40), Toxicity::known, 500}, Ingredient{percent(10), Toxicity::unknown}};
    EXPECT_THAT(toxicity_of_mixture(some), IsNear(1250.0, 1e-9));
    const std::array more{Ingredient{percent(40), Toxicity::known, 500}, Ingredient{percent(20), Toxicity::unknown}};
    EXPECT_THAT(toxicity_of_mixture(more), IsNear(1000.0, 1e-9));
}

} // namespace
} // namespace soakbook::maths
