// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of hives, rounds and mites come about.
#include "ui/parts/how_table.h"

#include <QtGlobal>

namespace soakbook::ui {

namespace {

constexpr std::array yard_entries{
    HowEntry{work::HowKind::dose_fixed,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Strips for a hive"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Strips = strips a hive × hives, within the least and the most of the rule."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "your own rule; the label or the vet decides"),
             {{
                 //: A sum with its numbers: %1 strips a hive, %2 hives, %5 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (hives) = %5"), {3, HowWhen::unknown}, {4, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %3 the least
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (hives), not under %3: %5"), {4, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %4 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (hives), not over %4: %5"), {3, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %3 the least, %4 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (hives), not under %3 and not over %4: %5")},
             }}, {}},
    HowEntry{work::HowKind::dose_boxes,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Strips for a hive"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Strips = strips a brood box × brood boxes, within the least and the most of "
                                      "the rule."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "your own rule; the label or the vet decides"),
             {{
                 //: A sum with its numbers: %1 strips a box, %2 boxes, %6 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (brood boxes) = %6"), {4, HowWhen::unknown}, {5, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %4 the least
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (brood boxes), not under %4: %6"), {5, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %5 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (brood boxes), not over %5: %6"), {4, HowWhen::unknown}},
                 //: A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %4 the least, %5 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 × %2 (brood boxes), not under %4 and not over %5: %6")},
                 //: A sum with its numbers: the boxes are not known
                 HowLine{QT_TRANSLATE_NOOP("How", "The brood boxes of this hive are not written down yet."), {2, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::dose_frames,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Strips for a hive"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Strips = frames of bees a hive ÷ frames for one strip, rounded up, within the "
                                      "least and the most of the rule; × hives."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "your own rule; the label or the vet decides"),
             {{
                 //: A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "(%2 ÷ %3) ÷ %1, rounded up, × %3 = %6"), {4, HowWhen::unknown}, {5, HowWhen::unknown}},
                 //: A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %4 the least
                 HowLine{QT_TRANSLATE_NOOP("How", "(%2 ÷ %3) ÷ %1, rounded up, × %3, not under %4: %6"), {5, HowWhen::unknown}},
                 //: A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %5 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "(%2 ÷ %3) ÷ %1, rounded up, × %3, not over %5: %6"), {4, HowWhen::unknown}},
                 //: A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %4 the least, %5 the most
                 HowLine{QT_TRANSLATE_NOOP("How", "(%2 ÷ %3) ÷ %1, rounded up, × %3, not under %4 and not over %5: %6")},
                 //: A sum with its numbers: the frames are not known
                 HowLine{QT_TRANSLATE_NOOP("How", "The frames of bees of this hive are not written down yet."), {2, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::mite_rate,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Mites on a hundred bees"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Rate = mites ÷ bees. Its range, 95 %: (p + z² ÷ 2n ± z × √(p × (1 − p) ÷ n + "
                                      "z² ÷ 4n²)) ÷ (1 + z² ÷ n), with p the rate, n the bees and z = 1.96 (Wilson)."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Dietemann et al. 2013, J. Apic. Res. 52(1); Newcombe 1998, Stat. Med. 17:857"),
             {{
                 //: A sum with its numbers: %1 mites, %2 bees, %3 rate
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 ÷ %2 = %3")},
                 //: A sum with its numbers: %4 and %5 the ends of the range
                 HowLine{QT_TRANSLATE_NOOP("How", "From %4 to %5")},
                 //: A sum with its numbers: %6 the user's threshold for mites on a hundred bees
                 HowLine{QT_TRANSLATE_NOOP("How", "Your threshold: %6")},
                 //: A sum with its numbers: %1 mites; the bees were not counted
                 HowLine{QT_TRANSLATE_NOOP("How", "Mites: %1; how many bees is not known"), {2, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::mite_drop,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Mites a day"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Mites a day = mites on the board ÷ days it lay."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Dietemann et al. 2013, J. Apic. Res. 52(1)"),
             {{
                 //: A sum with its numbers: %1 mites, %2 days, %3 mites a day
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 ÷ %2 = %3 a day")},
                 //: A sum with its numbers: %1 mites; the days are not known
                 HowLine{QT_TRANSLATE_NOOP("How", "Mites: %1; how many days is not known"), {2, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::mite_change,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Change against untreated hives"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Change = 1 − (treated after × untreated before) ÷ (treated before × untreated "
                                      "after)."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Henderson & Tilton 1955, J. Econ. Entomol. 48:157"),
             {{
                 //: A sum with its numbers: %1 and %2 treated hives before and after, %3 and %4 untreated ones, %5 the change
                 HowLine{QT_TRANSLATE_NOOP("How", "1 − (%2 × %3) ÷ (%1 × %4) = %5")},
                 //: A sum with its numbers: %1 and %2 mites in treated hives before and after
                 HowLine{QT_TRANSLATE_NOOP("How", "Treated: %1 before, %2 after")},
                 //: A sum with its numbers: %3 and %4 mites in untreated hives before and after
                 HowLine{QT_TRANSLATE_NOOP("How", "Untreated: %3 before, %4 after")},
             }}, {}},
    HowEntry{work::HowKind::mite_fall,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Change without untreated hives"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Change = (before − after) ÷ before. Without untreated hives it says how the "
                                      "mites changed, and not how well the treatment worked."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "common practice, no source"),
             {{
                 //: A sum with its numbers: %1 before, %2 after, %3 the change
                 HowLine{QT_TRANSLATE_NOOP("How", "(%1 − %2) ÷ %1 = %3")},
                 //: A sum with its numbers: %1 before, %2 after; no change can be told
                 HowLine{QT_TRANSLATE_NOOP("How", "Before: %1; after: %2"), {3, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::pull_window,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "When to pull"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "First day = day placed + fewest days; last day = day placed + most days."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "your own rule; the label decides"),
             {{
                 //: A sum with its numbers: %1 day placed, %2 days, %4 first day
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 + %2 (days) = %4")},
                 //: A sum with its numbers: %1 day placed, %3 days, %5 last day
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 + %3 (days) = %5")},
             }}, {}},
};

} // namespace

std::span<const HowEntry> yard_hows() {
    return yard_entries;
}

} // namespace soakbook::ui
