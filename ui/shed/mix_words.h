// SPDX-License-Identifier: GPL-3.0-or-later
// What Mix says of pails, level marks and bins, in sentences.
#pragma once

#include "core/work/bin_yield.h"
#include "core/work/level_marks.h"
#include "core/work/mix.h"
#include "core/work/pail_advice.h"
#include "ui/parts/habits.h"

#include <optional>

namespace soakbook::ui {

/// Which pails go in, what that saves, and whether better could be had.
QString advice_words(const Habits& habits, const work::PailAdvice& advice);
/// Why a pail stays out, in few words; empty where it goes in, or where its row says it already.
QString stays_out_words(const work::PailAdviceLine& pail);
/// Where the last weighed part of the glycerine stands on a can with marks; empty where only whole cans go in.
QString marks_words(const Habits& habits, const work::InContainers& glycerine);
/// Where the whole liquid stands, warm: an estimate and said so.
QString liquid_mark_words(const Habits& habits, const work::LevelMark& mark);
/// Strips with bins like that one, at once and one after another.
QString yield_words(const Habits& habits, const work::BinYields& yields, const QString& bin);
/// What is weighed out after the whole containers; all of it where the container is not known.
maths::Mass weighed_out(const work::InContainers& amount);

} // namespace soakbook::ui
