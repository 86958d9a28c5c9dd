// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of Mix and Heat come about.
#pragma once

#include "core/work/dial_advice.h"
#include "core/work/how.h"
#include "core/work/level_marks.h"
#include "core/work/mix.h"
#include "core/work/pail_advice.h"
#include "core/work/soak.h"

#include <optional>

namespace soakbook::work {

How how_mix_amounts(const book::Workbook& workbook, const MixPlan& plan, const MixFigures& figures);
How how_mix_correction(const MixResult& result);
How how_level_mark(const LevelMark& mark);
How how_pails_chosen(const PailAdvice& advice);
/// `uptake`: what one strip of the kind takes up.
How how_yield(const MixFigures& figures, maths::Mass uptake);
How how_yield(const SoakFigures& figures);
/// For the kind of strip of the plan; nothing while none is chosen or no strips follow.
std::optional<How> how_yield(const book::Workbook& workbook, const MixPlan& plan, const MixFigures& figures);
How how_dial(const DialAdvice& advice);

} // namespace soakbook::work
