// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/level_mark.h"

#include <cmath>
#include <numbers>

namespace soakbook::maths {
namespace {

constexpr Length longest{100'000'000}; // 100 m

bool is_side(Length side) {
    return side.count > 0 && side <= longest;
}

} // namespace

Answer<StraightVessel> StraightVessel::round(Length inner_diameter) {
    if (!is_side(inner_diameter))
        return unexpected(Unanswerable::not_a_quantity);
    const double radius = in_millimetres(inner_diameter) / 2.0;
    return StraightVessel{std::numbers::pi * radius * radius};
}

Answer<StraightVessel> StraightVessel::rectangular(Length inner_length, Length inner_width) {
    if (!is_side(inner_length) || !is_side(inner_width))
        return unexpected(Unanswerable::not_a_quantity);
    return StraightVessel{in_millimetres(inner_length) * in_millimetres(inner_width)};
}

// A microlitre is a cubic millimetre.
Answer<Length> StraightVessel::height_of(Volume volume) const {
    if (volume.count < 0)
        return unexpected(Unanswerable::not_a_quantity);
    const double height = static_cast<double>(volume.count) / m_area;
    if (!(height <= in_millimetres(longest)))
        return unexpected(Unanswerable::too_large);
    return millimetres(height);
}

Answer<Volume> StraightVessel::volume_at(Length height) const {
    if (height.count < 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (height > longest)
        return unexpected(Unanswerable::too_large);
    return Volume{std::llround(in_millimetres(height) * m_area)};
}

} // namespace soakbook::maths
