// SPDX-License-Identifier: GPL-3.0-or-later
// A kind of strip: what it weighs dry and soaked, how many make a bag, and its dose rule if one was said.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

enum class DoseKind { fixed, brood_boxes, frames_of_bees };
template <> struct Names<DoseKind> {
    static constexpr const char* all[] = {"fixed", "brood_boxes", "frames_of_bees"};
};

/// A kind of strip: what it weighs dry and soaked, how many make a bag, and its dose rule if one was said.
struct StripKind {
    Id<StripKind> id;
    QString name;
    maths::Mass dry{}; ///< of one dry strip
    maths::Mass target{}; ///< of one soaked strip
    maths::Mass tolerance{}; ///< either side of the target
    int strips_per_bag = 0;
    std::optional<DoseKind> dose_kind;
    std::optional<int> dose_strips; ///< for fixed: strips a hive; for brood_boxes: strips a box
    std::optional<int> dose_frames_tenths; ///< frames of bees for one strip, in tenths
    std::optional<int> dose_least;
    std::optional<int> dose_most;
    bool active = true;

    bool operator==(const StripKind&) const = default;
    static constexpr const char* table = "strip_kind";
    static constexpr auto columns() {
        return std::tuple{
            column("name", &StripKind::name),
            column("dry_mg", &StripKind::dry),
            column("target_mg", &StripKind::target),
            column("tolerance_mg", &StripKind::tolerance),
            column("strips_per_bag", &StripKind::strips_per_bag),
            column("dose_kind", &StripKind::dose_kind),
            column("dose_strips", &StripKind::dose_strips),
            column("dose_frames_tenths", &StripKind::dose_frames_tenths),
            column("dose_least", &StripKind::dose_least),
            column("dose_most", &StripKind::dose_most),
            column("active", &StripKind::active)};
    }
};

} // namespace soakbook::book
