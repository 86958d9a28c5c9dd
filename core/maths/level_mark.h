// SPDX-License-Identifier: GPL-3.0-or-later
// Where on the wall of a straight-sided vessel a volume stands. Source: geometry.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

namespace soakbook::maths {

/// The level area of a vessel whose walls go straight up, in square millimetres.
class StraightVessel {
public:
    /// Refuses sides of zero or less and above 100 m.
    static Answer<StraightVessel> round(Length inner_diameter);
    static Answer<StraightVessel> rectangular(Length inner_length, Length inner_width);

    double level_area() const { return m_area; }
    /// Height above the bottom. Refuses a negative volume, and heights above 100 m.
    Answer<Length> height_of(Volume volume) const;
    /// What stands in it up to that height. Refuses a negative height, and one above 100 m.
    Answer<Volume> volume_at(Length height) const;

private:
    explicit StraightVessel(double area) : m_area(area) {}
    double m_area; ///< mm2
};

} // namespace soakbook::maths
