// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/label_hazard.h"

namespace soakbook::work {

namespace {

maths::Hazard of(std::optional<maths::Fraction> strength, maths::StatementSet set) {
    if (strength) {
        if (const auto hazard = maths::hazard_of_liquid(*strength, set))
            return *hazard;
    }
    return maths::hazard_of_powder(set);
}

} // namespace

LabelHazard label_hazard(std::optional<maths::Fraction> strength) {
    return {of(strength, maths::StatementSet::up_to_rev_8), of(strength, maths::StatementSet::from_rev_9)};
}

} // namespace soakbook::work
