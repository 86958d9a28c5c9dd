// SPDX-License-Identifier: GPL-3.0-or-later
// How thick glycerine is, and so how much longer strips soak in a colder room: a hint, never a verdict.
// Sources: Cheng 2008, Ind. Eng. Chem. Res. 47:3285; Washburn 1921, Phys. Rev. 17:273 (time goes with viscosity).
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

namespace soakbook::maths {

/// Dynamic viscosity of glycerol in water, mPa s; `glycerol` is its mass fraction. Refuses a fraction outside 0 to 1
/// and temperatures outside 0 to 100 C.
Answer<double> glycerol_viscosity(Fraction glycerol, Temperature temperature);
/// How many times as long strips soak at `colder` as at `warmer` (below 1 the other way round), for pure glycerol.
/// Refuses as above.
Answer<double> soak_time_ratio(Temperature warmer, Temperature colder);

} // namespace soakbook::maths
