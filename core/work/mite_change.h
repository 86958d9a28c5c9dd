// SPDX-License-Identifier: GPL-3.0-or-later
// What a round did to the mites: before the strips went in against after they came out, and against hives that were
// left untreated on purpose. It shows what happened here, and promises nothing.
#pragma once

#include "core/work/count.h"

namespace soakbook::work {

enum class MiteChangeSays {
    against_untreated,   ///< Henderson & Tilton: beyond what untreated hives did by themselves
    without_untreated,   ///< no untreated hive was counted before and after: a change, no efficacy
    zero_below_the_line, ///< no mites before, or none in untreated hives: cannot be computed
    no_counts,           ///< no treated hive was counted both before and after
};
/// Hives that were counted before and after, pooled.
struct CountedTwice {
    int hives = 0;     ///< lines of the yard; a group is one
    double before = 0; ///< mites a bee, or a day
    double after = 0;
};
struct MiteChange {
    MiteChangeSays says = MiteChangeSays::no_counts;
    MiteCountKind kind{};
    CountedTwice treated;
    CountedTwice untreated;
    std::optional<maths::Fraction> change; ///< part of the mites that is gone; below zero: there are more
};
/// From counts of that kind entered for the round: the newest up to the day a hive's strips went in, and the newest
/// from the day all of them were out. Untreated hives go by the days of the yard they stand in.
MiteChange mite_change(const book::Workbook& workbook, RoundId round, MiteCountKind kind);

} // namespace soakbook::work
