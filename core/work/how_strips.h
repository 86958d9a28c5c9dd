// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of Soak, Weigh and Bag come about.
#pragma once

#include "core/work/count_check.h"
#include "core/work/how.h"
#include "core/work/more_to_weigh.h"
#include "core/work/soak_curve.h"

namespace soakbook::work {

How how_taken_up(const WeighFigures& figures);
/// `strength` of the batch's liquid.
How how_acid_in_strip(const WeighFigures& figures, maths::Fraction strength);
How how_sample_interval(const MoreToWeigh& sample);
How how_more_to_weigh(const MoreToWeigh& sample);
/// Its facts are empty but for the dry weight and the number of weighings while no curve could be laid.
How how_soak_curve(const SoakCurve& curve);
How how_target_hour(const SoakCurve& curve);
How how_cold_room(const ColdHint& hint);
How how_count_by_weight(const CountCheck& check);

} // namespace soakbook::work
