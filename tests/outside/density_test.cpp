// SPDX-License-Identifier: GPL-3.0-or-later
// Density and viscosity of glycerine.
#include "core/maths/density.h"
#include "core/maths/level_mark.h"
#include "core/maths/viscosity.h"
#include "tests/maths/answers.h"

#include <array>
#include <numbers>

namespace soakbook::maths {
namespace {

// Source: Volk & Kaehler 2018, Exp. Fluids 59:75, pure glycerol.
TEST(OutsideDensity, volk_and_kaehler) {
    EXPECT_THAT(glycerol_density(celsius(15), DensitySource::volk_kaehler_2018), IsNear(1264.12, 0.005));
    EXPECT_THAT(glycerol_density(celsius(20), DensitySource::volk_kaehler_2018), IsNear(1261.06, 0.005));
    EXPECT_THAT(glycerol_density(celsius(25), DensitySource::volk_kaehler_2018), IsNear(1258.00, 0.005));
}

// Source: Bosart & Snoddy 1928, Ind. Eng. Chem. 20:1377 (values from memory): within 0.05 %.
TEST(OutsideDensity, bosart_and_snoddy_within_half_a_thousandth) {
    for (const auto& [degrees, relative] : {std::pair{15.0, 1.26415}, {20.0, 1.26108}, {25.0, 1.25802}}) {
        const double density = glycerol_density(celsius(degrees), DensitySource::volk_kaehler_2018).value();
        EXPECT_NEAR(density / 1000.0, relative, relative * 0.0005) << degrees;
    }
}

// Source: Cheng 2008, Ind. Eng. Chem. Res. 47:3285, eq. for glycerol; about 0.2 % above Volk & Kaehler.
TEST(OutsideDensity, cheng) {
    EXPECT_THAT(glycerol_density(celsius(0)), IsNear(1277.0, 1e-9));
    EXPECT_THAT(glycerol_density(celsius(20)), IsNear(1263.92, 1e-9));
    EXPECT_THAT(glycerol_density(celsius(100)), IsNear(1211.6, 1e-9));
    EXPECT_NEAR(*glycerol_density(celsius(20)) / *glycerol_density(celsius(20), DensitySource::volk_kaehler_2018),
                1.002, 0.0005);
}

// Source: computed from ideal volumes with Cheng 2008; an estimate, and labelled so.
TEST(OutsideDensity, forty_per_cent_liquid_at_22_degrees) {
    EXPECT_THAT(liquid_density_estimate(percent(40), celsius(22)), IsNear(1394.33, 0.005));
}

// Source: Cheng 2008, the formula, worked for pure glycerol and 90 % by mass.
TEST(OutsideViscosity, cheng) {
    const Fraction pure = percent(100);
    EXPECT_THAT(glycerol_viscosity(pure, celsius(0)), IsNear(12100.0, 1e-6));
    EXPECT_THAT(glycerol_viscosity(pure, celsius(15)), IsNear(2281.22, 0.005));
    EXPECT_THAT(glycerol_viscosity(pure, celsius(20)), IsNear(1413.83, 0.005));
    EXPECT_THAT(glycerol_viscosity(pure, celsius(25)), IsNear(905.680, 0.0005));
    EXPECT_THAT(glycerol_viscosity(percent(90), celsius(20)), IsNear(223.746, 0.0005));
}

// Source: viscosity of water 1.0016 mPa s at 20 C, CRC Handbook (from memory); Cheng states about 1 % for water.
TEST(OutsideViscosity, plain_water_is_water) {
    EXPECT_THAT(glycerol_viscosity(Fraction{}, celsius(20)), IsNear(1.0016, 0.012));
}

// Source: Segur & Oberstar 1951, Ind. Eng. Chem. 43:2117 (values from memory): 1410 and 219 mPa s at 20 C for 100 % and
// 90 %; Cheng fits such data within a few per cent.
TEST(OutsideViscosity, segur_and_oberstar_within_three_per_cent) {
    EXPECT_THAT(glycerol_viscosity(percent(100), celsius(20)), IsNear(1410.0, 1410.0 * 0.03));
    EXPECT_THAT(glycerol_viscosity(percent(90), celsius(20)), IsNear(219.0, 219.0 * 0.03));
}

// Source: Washburn 1921, Phys. Rev. 17:273: the time to a given depth goes with viscosity; ratio by Cheng 2008.
TEST(OutsideViscosity, a_room_at_15_degrees_takes_nearly_twice_as_long) {
    EXPECT_THAT(soak_time_ratio(celsius(22), celsius(15)), IsNear(1.93548, 5e-6));
}

// Source: common practice, no source: the 12.5 kg mark of a can stands at 9.9 L at 20 C.
TEST(OutsideDensity, half_a_can_stands_at_nine_point_nine_litres) {
    for (const DensitySource source : {DensitySource::cheng_2008, DensitySource::volk_kaehler_2018}) {
        const auto volume = volume_of(kilograms(12.5), glycerol_density(celsius(20), source).value());
        ASSERT_TRUE(volume);
        EXPECT_NEAR(in_litres(*volume), 9.9, 0.05);
    }
}

// Source: geometry; a round vessel of 200 mm holds pi litres at 100 mm.
TEST(OutsideLevel, a_round_vessel_holds_pi_litres_to_ten_centimetres) {
    const auto vessel = StraightVessel::round(millimetres(200));
    ASSERT_TRUE(vessel);
    EXPECT_THAT(vessel->volume_at(millimetres(100)), Is(litres(std::numbers::pi)));
    EXPECT_THAT(vessel->height_of(litres(std::numbers::pi)), Is(millimetres(100)));
    const auto box = StraightVessel::rectangular(millimetres(300), millimetres(200));
    EXPECT_THAT(box->height_of(litres(6)), Is(millimetres(100)));
}

} // namespace
} // namespace soakbook::maths
