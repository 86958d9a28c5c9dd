// SPDX-License-Identifier: GPL-3.0-or-later
// The hazard that a label of this workbook's liquid states, in the wording of both editions; the printer's user chooses one.
#pragma once

#include "core/maths/hazard.h"
#include "core/maths/quantities.h"

#include <optional>

namespace soakbook::work {

struct LabelHazard {
    maths::Hazard up_to_rev_8;
    maths::Hazard from_rev_9;
};

/// What follows from the strength (mass fraction as dihydrate). Of a liquid whose strength is not known the label says what
/// the acid itself is: the strictest.
LabelHazard label_hazard(std::optional<maths::Fraction> strength);

} // namespace soakbook::work
