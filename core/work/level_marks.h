// SPDX-License-Identifier: GPL-3.0-or-later
// Where on a marked vessel a weighed mass stands: a second look beside the scale, never instead of it.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Whose density the marks stand on.
enum class DensityOf {
    cheng_2008,    ///< pure glycerol: Cheng 2008, Ind. Eng. Chem. Res. 47:3285, 1277 - 0.654 T kg/m3
    ideal_volumes, ///< an estimate: no density of the loaded liquid is published; acid crystal 1653 kg/m3 and glycerol
};
struct LevelMark {
    maths::Temperature at{};
    maths::Volume volume{};
    maths::Mass mass{};
    maths::Fraction strength{}; ///< nothing for glycerine alone
    DensityOf density{};
    bool is_estimate = false; ///< to be labelled as one wherever it is shown
};
/// A mass of glycerine at 15, 20, 25 and 30 C. None for a negative mass.
std::vector<LevelMark> glycerine_marks(maths::Mass glycerine);
/// The whole liquid, warm: an estimate. None for a strength outside 0 to 1, or a temperature outside 0 to 100 C.
std::optional<LevelMark> liquid_mark(maths::Mass liquid, maths::Fraction strength, maths::Temperature warm);
/// The same at the middle of the temperatures wanted in the tank; none while they were not said.
std::optional<LevelMark> liquid_mark(const book::Workbook& workbook, maths::Mass liquid, maths::Fraction strength);

} // namespace soakbook::work
