// SPDX-License-Identifier: GPL-3.0-or-later
// What the weighings of a soak say, in sentences: the hour the target is reached, what a sample settles, a cold room.
#pragma once

#include "core/work/more_to_weigh.h"
#include "core/work/shed_view.h"
#include "core/work/soak_curve.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// "at about 14:10 today, between 13:00 and 16:00".
QString reached_words(const Habits& habits, const work::WeightReached& reached);
/// When that bin reaches its target, or why there is no hour. Empty before the first weighing, and once the strips are on
/// target or taken out: then the verdict says it.
QString curve_words(const Habits& habits, const work::SoakLine& soak, const work::SoakCurve& curve);
/// What a sample leaves open and what would settle it; empty where it is settled.
QString sample_words(const Habits& habits, const work::MoreToWeigh& sample);
QString cold_words(const Habits& habits, const work::ColdHint& hint);

} // namespace soakbook::ui
