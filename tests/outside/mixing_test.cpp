// SPDX-License-Identifier: GPL-3.0-or-later
// Molar masses and the two forms of the acid.
#include "core/maths/density.h"
#include "core/maths/mixing.h"
#include "tests/maths/answers.h"

#include <array>

namespace soakbook::maths {
namespace {

// Source: IUPAC abridged standard atomic weights (H 1.008, C 12.011, O 15.999), Pure Appl. Chem. 94 (2022) 573.
TEST(OutsideMixing, molar_masses_follow_from_the_standard_atomic_weights) {
    const double h = 1.008;
    const double c = 12.011;
    const double o = 15.999;
    EXPECT_NEAR(molar_mass_anhydrous, 2 * h + 2 * c + 4 * o, 1e-9);
    EXPECT_NEAR(molar_mass_dihydrate, 6 * h + 2 * c + 6 * o, 1e-9);
    // Source: computed from those weights; water of crystallisation 28.5807 %.
    EXPECT_NEAR(1.0 - molar_mass_anhydrous / molar_mass_dihydrate, 0.285807, 5e-7);
}

// Source: CRC Handbook of Chemistry and Physics, physical constants of organic compounds, oxalic acid 90.03 and
// dihydrate 126.07 g/mol (from memory; older atomic weights).
TEST(OutsideMixing, molar_masses_agree_with_the_handbook_table) {
    EXPECT_NEAR(molar_mass_anhydrous, 90.03, 0.01);
    EXPECT_NEAR(molar_mass_dihydrate, 126.07, 0.01);
}

// Source: computed from the IUPAC weights: dihydrate x 0.714193 = anhydrous.
TEST(OutsideMixing, forty_per_cent_dihydrate_are_28_5677_per_cent_anhydrous) {
    EXPECT_THAT(anhydrous_from_dihydrate(percent(40)), Is(percent(28.5677)));
    EXPECT_THAT(dihydrate_from_anhydrous(percent(28.5677)), Is(percent(40)));
    EXPECT_THAT(anhydrous_from_dihydrate(kilograms(1)), Is(grams(714.193)));
    EXPECT_THAT(anhydrous_from_dihydrate(grams(6.6)), Is(grams(4.714))); // 4.71367 g
}

// Source: conservation of mass; densities by Cheng 2008, Ind. Eng. Chem. Res. 47:3285.
TEST(OutsideMixing, recipes_told_by_volume_come_to_these_strengths) {
    const auto strength = [](double acid_grams, double glycerine_ml) {
        const double density = glycerol_density(celsius(22)).value();
        const Mass glycerine = mass_of(millilitres(glycerine_ml), density).value();
        const std::array inputs{Input{grams(acid_grams), percent(100)}, Input{glycerine, Fraction{}}};
        return mixture_of(inputs).value().strength();
    };
    EXPECT_EQ(strength(1000, 1000), percent(44.1967));
    EXPECT_EQ(strength(2000, 3000), percent(34.5552));
}

// Source: conservation of mass. One to one by mass is one half.
TEST(OutsideMixing, equal_masses_are_fifty_per_cent) {
    const std::array inputs{Input{kilograms(3), percent(100)}, Input{kilograms(3), Fraction{}}};
    EXPECT_EQ(mixture_of(inputs)->strength(), percent(50));
}

// Source: conservation of mass; density by Cheng 2008.
TEST(OutsideMixing, a_kilogram_at_forty_per_cent) {
    const auto amounts = amounts_from_total(kilograms(1), percent(40), percent(100));
    ASSERT_TRUE(amounts);
    EXPECT_EQ(*amounts, (Amounts{grams(400), grams(600)}));
    EXPECT_THAT(volume_of(amounts->glycerine, glycerol_density(celsius(22)).value()), Is(millilitres(475.205)));
}

// Source: Pearson's square, the mixing cross of pharmacy and dairy textbooks (common practice): from 50 % and 30 % to
// 35 % takes one part to three.
TEST(OutsideMixing, agrees_with_the_mixing_cross) {
    const std::array pails{Input{kilograms(1), percent(50)}, Input{kilograms(3), percent(30)}};
    EXPECT_EQ(mixture_of(pails)->strength(), percent(35));
}

} // namespace
} // namespace soakbook::maths
