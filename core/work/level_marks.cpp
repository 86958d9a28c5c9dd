// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/level_marks.h"

#include "core/maths/density.h"
#include "core/work/figures.h"

namespace soakbook::work {

std::vector<LevelMark> glycerine_marks(maths::Mass glycerine) {
    std::vector<LevelMark> marks;
    for (const double degrees : {15.0, 20.0, 25.0, 30.0}) {
        const maths::Temperature at = maths::celsius(degrees);
        const auto density = maths::glycerol_density(at);
        const auto volume =
            density ? maths::volume_of(glycerine, *density) : maths::Answer<maths::Volume>(unexpected(density.error()));
        if (volume)
            marks.push_back({at, *volume, glycerine, {}, DensityOf::cheng_2008, false});
    }
    return marks;
}

std::optional<LevelMark> liquid_mark(maths::Mass liquid, maths::Fraction strength, maths::Temperature warm) {
    const auto density = maths::liquid_density_estimate(strength, warm);
    if (!density)
        return std::nullopt;
    const auto volume = maths::volume_of(liquid, *density);
    if (!volume)
        return std::nullopt;
    return LevelMark{warm, *volume, liquid, strength, DensityOf::ideal_volumes, true};
}

std::optional<LevelMark> liquid_mark(const book::Workbook& workbook, maths::Mass liquid, maths::Fraction strength) {
    const auto low = figure(workbook, Figure::heat_low);
    const auto high = figure(workbook, Figure::heat_high);
    if (!low || !high)
        return std::nullopt;
    return liquid_mark(liquid, strength, maths::Temperature{(*low + *high) / 2});
}

} // namespace soakbook::work
