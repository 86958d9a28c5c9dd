// SPDX-License-Identifier: GPL-3.0-or-later
// How many strips a hive gets by the user's rule, and whether the acid in them keeps to the user's limits.
// Source: common practice, no source; the label or the vet decides.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace soakbook::maths {

enum class DoseKind {
    fixed,          ///< so many strips a hive
    per_brood_box,  ///< so many strips a brood box
    per_bee_frames, ///< one strip for every so many frames of bees, rounded up
};

/// One rule, as the user wrote it for a kind of strip.
struct DoseRule {
    DoseKind kind = DoseKind::fixed;
    std::int64_t strips = 0;           ///< fixed, per_brood_box: strips a hive or a box
    std::int64_t frames_tenths = 0;    ///< per_bee_frames: frames of bees for one strip, in tenths; 25 is 2.5 frames
    std::optional<std::int64_t> least; ///< never fewer strips than this
    std::optional<std::int64_t> most;  ///< never more than this
};
/// What the rule needs to know of a hive. What is not known is left empty, and never guessed.
struct Colony {
    std::optional<std::int64_t> brood_boxes;
    std::optional<std::int64_t> frames_tenths; ///< frames covered with bees, in tenths
};

/// Refuses: figures of zero or less, a least above the most (out_of_range), a figure of the colony the rule needs and
/// does not have (too_few), more than 10 000 strips (too_large).
Answer<std::int64_t> strips_for(const DoseRule& rule, const Colony& colony);

/// Strips of one bag hung in a hive.
struct Hung {
    std::int64_t strips = 0;
    Mass acid_per_strip;
};
/// Dihydrate in all strips hung in a hive. Refuses negative figures and too much to reckon with.
Answer<Mass> acid_in_hive(std::span<const Hung> hung);

enum class AcidLimit { within, below_least, above_most };
/// Against the user's least and most grams a hive; a limit that is not said does not bind. Refuses a least above the
/// most.
Answer<AcidLimit> against_limits(Mass acid, std::optional<Mass> least, std::optional<Mass> most);

} // namespace soakbook::maths
