// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/density.h"
#include "core/maths/level_mark.h"
#include "core/maths/viscosity.h"
#include "tests/maths/answers.h"

#include <limits>
#include <random>

namespace soakbook::maths {
namespace {

const double nan = std::numeric_limits<double>::quiet_NaN();

TEST(Density, refuses_what_no_formula_covers) {
    EXPECT_THAT(glycerol_density(celsius(-0.01)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(glycerol_density(celsius(100.01)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(liquid_density_estimate(percent(101), celsius(20)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(liquid_density_estimate(percent(40), celsius(200)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(volume_of(kilograms(-1), 1260), Refuses(Unanswerable::not_a_quantity));
    for (const double density : {0.0, -1.0, 499.0, 3001.0, nan}) {
        EXPECT_THAT(volume_of(kilograms(1), density), Refuses(Unanswerable::out_of_range));
        EXPECT_THAT(mass_of(litres(1), density), Refuses(Unanswerable::out_of_range));
    }
    EXPECT_THAT(mass_of(Volume{INT64_MAX}, 1260), Refuses(Unanswerable::too_large));
    EXPECT_THAT(volume_of(Mass{INT64_MAX}, 1260), Refuses(Unanswerable::too_large));
    EXPECT_THAT(glycerol_viscosity(percent(-1), celsius(20)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(soak_time_ratio(celsius(20), celsius(-5)), Refuses(Unanswerable::out_of_range));
}

TEST(Density, a_weighed_litre_speaks_for_itself) {
    EXPECT_THAT(density_from_weighing(kilograms(1.38), litres(1)), IsNear(1380.0, 1e-9));
    EXPECT_THAT(density_from_weighing(kilograms(1.38), Volume{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(density_from_weighing(kilograms(13.8), litres(1)), Refuses(Unanswerable::out_of_range));
}

TEST(Density, pure_glycerine_and_pure_acid_are_the_ends_of_the_estimate) {
    EXPECT_THAT(liquid_density_estimate(Fraction{}, celsius(22)), IsNear(1262.612, 1e-9));
    EXPECT_THAT(liquid_density_estimate(percent(100), celsius(22)), IsNear(acid_crystal_density, 1e-9));
}

TEST(Level, refuses_vessels_that_are_none) {
    EXPECT_FALSE(StraightVessel::round(Length{}).has_value());
    EXPECT_FALSE(StraightVessel::rectangular(millimetres(300), millimetres(-1)).has_value());
    EXPECT_FALSE(StraightVessel::round(Length{INT64_MAX}).has_value());
    const auto thin = StraightVessel::round(millimetres(1));
    ASSERT_TRUE(thin);
    EXPECT_THAT(thin->height_of(litres(1000)), Refuses(Unanswerable::too_large));
    EXPECT_THAT(thin->height_of(litres(-1)), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(thin->volume_at(millimetres(-1)), Refuses(Unanswerable::not_a_quantity));
}

TEST(DensityProperty, there_and_back_is_the_same_mass) {
    std::mt19937_64 random(1264);
    std::uniform_int_distribution<std::int64_t> mass(0, 100'000'000'000);
    std::uniform_real_distribution<double> density(900.0, 1700.0);
    for (int i = 0; i < 20'000; ++i) {
        const Mass m{mass(random)};
        const double d = density(random);
        const Mass back = mass_of(volume_of(m, d).value(), d).value();
        ASSERT_LE(std::abs((back - m).count), 1);
    }
}

TEST(ViscosityProperty, colder_and_purer_is_thicker) {
    for (int degrees = 1; degrees <= 100; ++degrees)
        for (int part = 0; part <= 100; part += 5) {
            const double here = glycerol_viscosity(percent(part), celsius(degrees)).value();
            ASSERT_TRUE(std::isfinite(here) && here > 0.0);
            ASSERT_LT(here, glycerol_viscosity(percent(part), celsius(degrees - 1)).value());
            ASSERT_TRUE(part == 0 || here > glycerol_viscosity(percent(part - 5), celsius(degrees)).value());
        }
}

} // namespace
} // namespace soakbook::maths
