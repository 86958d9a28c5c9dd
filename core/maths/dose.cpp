// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/dose.h"

#include "core/maths/exact.h"

#include <algorithm>

namespace soakbook::maths {
namespace {

constexpr std::int64_t most_reckoned = 10'000;

/// What the rule's kind gives before least and most.
Answer<std::int64_t> by_kind(const DoseRule& rule, const Colony& colony) {
    if (rule.kind == DoseKind::per_bee_frames) {
        if (rule.frames_tenths <= 0)
            return unexpected(Unanswerable::not_a_quantity);
        if (!colony.frames_tenths)
            return unexpected(Unanswerable::too_few);
        if (*colony.frames_tenths <= 0)
            return unexpected(Unanswerable::not_a_quantity);
        return rounded_up(*colony.frames_tenths, rule.frames_tenths);
    }
    if (rule.strips <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (rule.strips > most_reckoned)
        return unexpected(Unanswerable::too_large);
    if (rule.kind == DoseKind::fixed)
        return rule.strips;
    if (!colony.brood_boxes)
        return unexpected(Unanswerable::too_few);
    if (*colony.brood_boxes <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (*colony.brood_boxes > most_reckoned)
        return unexpected(Unanswerable::too_large);
    return rule.strips * *colony.brood_boxes;
}

} // namespace

Answer<std::int64_t> strips_for(const DoseRule& rule, const Colony& colony) {
    if ((rule.least && *rule.least < 0) || (rule.most && *rule.most < 0))
        return unexpected(Unanswerable::not_a_quantity);
    if (rule.least && rule.most && *rule.least > *rule.most)
        return unexpected(Unanswerable::out_of_range);
    auto strips = by_kind(rule, colony);
    if (!strips)
        return strips;
    if (rule.least)
        *strips = std::max(*strips, *rule.least);
    if (rule.most)
        *strips = std::min(*strips, *rule.most);
    if (*strips > most_reckoned)
        return unexpected(Unanswerable::too_large);
    return strips;
}

Answer<Mass> acid_in_hive(std::span<const Hung> hung) {
    Wide acid = 0;
    for (const Hung& strips : hung) {
        if (strips.strips < 0 || strips.acid_per_strip.count < 0)
            return unexpected(Unanswerable::not_a_quantity);
        acid += static_cast<Wide>(strips.strips) * strips.acid_per_strip.count;
        if (acid > heaviest.count)
            return unexpected(Unanswerable::too_large);
    }
    return Mass{static_cast<std::int64_t>(acid)};
}

Answer<AcidLimit> against_limits(Mass acid, std::optional<Mass> least, std::optional<Mass> most) {
    if (acid.count < 0 || (least && least->count < 0) || (most && most->count < 0))
        return unexpected(Unanswerable::not_a_quantity);
    if (least && most && *least > *most)
        return unexpected(Unanswerable::out_of_range);
    if (least && acid < *least)
        return AcidLimit::below_least;
    return most && acid > *most ? AcidLimit::above_most : AcidLimit::within;
}

} // namespace soakbook::maths
