// SPDX-License-Identifier: GPL-3.0-or-later
// How heavy a volume of glycerine or of the liquid is, for level marks only: the trade mixes by mass. Densities in
// kg/m3. Sources: Cheng 2008, Ind. Eng. Chem. Res. 47:3285; Volk & Kaehler 2018, Exp. Fluids 59:75. A loaded mix has no
// published density: its figure is an estimate from ideal volumes, and the user's own weighed litre replaces it.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

namespace soakbook::maths {

/// Whose formula the density of glycerine is taken from.
enum class DensitySource {
    cheng_2008,        ///< 1277 - 0.654 T
    volk_kaehler_2018, ///< 1273.3 - 0.6121 T
};
constexpr double acid_crystal_density = 1653.0; ///< kg/m3, oxalic acid dihydrate

/// Pure glycerol, kg/m3. Refuses temperatures outside 0 to 100 C.
Answer<double> glycerol_density(Temperature temperature, DensitySource source = DensitySource::cheng_2008);
/// Estimate for the liquid, kg/m3: `1 / (s / 1653 + (1 - s) / glycerol)`. Refuses as above, and a strength outside 0
/// to 1.
Answer<double> liquid_density_estimate(Fraction strength, Temperature temperature,
                                       DensitySource source = DensitySource::cheng_2008);
/// kg/m3 from a volume that the user weighed. Refuses a mass or volume of zero or less, and densities outside 500 to
/// 3000.
Answer<double> density_from_weighing(Mass mass, Volume volume);

/// The volume a mass takes up. Refuses a negative mass, and a density outside 500 to 3000 kg/m3.
Answer<Volume> volume_of(Mass mass, double density);
/// The mass that a volume holds. Refuses a negative volume, and a density outside 500 to 3000 kg/m3.
Answer<Mass> mass_of(Volume volume, double density);

} // namespace soakbook::maths
