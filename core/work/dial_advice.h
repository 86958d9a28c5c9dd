// SPDX-License-Identifier: GPL-3.0-or-later
// Where to set the dial of a tank, from its own readings, and how sure that is.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <optional>

namespace soakbook::work {

enum class DialSays {
    advised,
    no_pairs,       ///< no reading of this tank shows dial and probe together once it was warm
    nothing_wanted, ///< no temperature was said in Set-up
    above_ceiling,  ///< the temperature wanted is above the ceiling
    nothing_safe,   ///< even a step below the lowest dial seen would not keep under the ceiling
    odd_figures,    ///< temperatures no tank has
};
/// Why the dial is not simply the one that gives the temperature wanted.
enum class DialHeldBy { nothing, ceiling, dials_seen };
struct DialAdvice {
    DialSays says = DialSays::no_pairs;
    int pairs = 0;
    std::optional<maths::Temperature> offset_low; ///< dial above probe, the range seen
    std::optional<maths::Temperature> offset_high;
    std::optional<maths::Temperature> wanted;
    std::optional<maths::Temperature> ceiling;
    // with advised only
    maths::Temperature dial{};         ///< to set
    maths::Temperature highest_dial{}; ///< that keeps the ceiling, as far as is known
    DialHeldBy held_by = DialHeldBy::nothing;
    bool by_line = false;              ///< from four or more pairs; else a range, not a line
    maths::Temperature expected_low{}; ///< of the probe at that dial: 95 % prediction, or from the range of offsets
    maths::Temperature expected_high{};
};
/// For the temperature `wanted`, or the middle of those of Set-up. Pairs count from the lowest temperature wanted on:
/// while a tank warms, its dial is far above its probe and says nothing of the thermostat.
DialAdvice dial_advice(const book::Workbook& workbook, VesselId tank,
                       std::optional<maths::Temperature> wanted = std::nullopt);

} // namespace soakbook::work
