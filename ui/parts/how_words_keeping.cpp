// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of bags on the shelf and of the accounts come about.
#include "ui/parts/how_table.h"

#include <QtGlobal>

namespace soakbook::ui {

namespace {

constexpr std::array keeping_entries{
    HowEntry{work::HowKind::use_by,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Use by"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Use by = day sealed + months, on the same day of the month or its last day."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "W3C XML Schema Part 2, appendix E; the months are common practice or the "
                                      "label’s"),
             {{
                 //: A sum with its numbers: %1 the day sealed, %2 months, %3 a day
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 + %2 (months) = %3")},
             }}, {}},
    HowEntry{work::HowKind::rest,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Rest"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Rest until = day sealed + days of rest."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "common practice, no source"),
             {{
                 //: A sum with its numbers: %1 the day sealed, %2 days, %3 a day
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 + %2 (days) = %3")},
             }}, {}},
    HowEntry{work::HowKind::balance,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Where the liquid went"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Unexplained = went in − taken up by bagged strips − free in the bags − in "
                                      "pails − named losses."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass; the limit is your own"),
             {{
                 //: A sum with its numbers: %1 went in, %2 in strips, %3 free in bags, %4 in pails, %5 losses, %6 unexplained
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 − %2 − %3 − %4 − %5 = %6")},
                 //: A sum with its numbers: %7 a share
                 HowLine{QT_TRANSLATE_NOOP("How", "Limit: %7 of what went in")},
             }}, {}},
    HowEntry{work::HowKind::strip_cost,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Cost of a strip"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Cost of a strip = (acid + glycerine + carried by old liquid + dry strips + "
                                      "bags) ÷ strips. The cost of the liquid is shared over bags and pails by mass."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "common practice, no source"),
             {{
                 //: A sum with its numbers: %1 acid, %2 glycerine, %3 old liquid, %4 dry strips, %5 bags, %6 strips, %7 cost
                 HowLine{QT_TRANSLATE_NOOP("How", "(%1 + %2 + %3 + %4 + %5) ÷ %6 = %7")},
                 //: A sum with its numbers: %6 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "Strips in bags: %6; a cost behind them is not known yet"), {7, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::batch_limits,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Limits from batch to batch"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Limits = mean ± 3 × mean step from one batch to the next ÷ 1.128379."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; runs of eight by "
                                      "the Western Electric rules"),
             {{
                 //: A sum with its numbers: %1 mean, %2 mean step, %3 and %4 the limits
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 ± 3 × %2 ÷ 1.128379: from %3 to %4")},
                 //: A sum with its numbers: %5 batches
                 HowLine{QT_TRANSLATE_NOOP("How", "Batches: %5")},
             }}, {}},
    HowEntry{work::HowKind::hazard_class,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Hazard class"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "100 ÷ estimate of the mix = share of the acid in % ÷ the acid’s own estimate. "
                                      "H302 from 18.75 % of acid, H312 from 55 %, H318 from 3 %."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "UN GHS, chapters 3.1 and 3.3; by mouth 375 mg/kg (rat LD50, the stricter "
                                      "one), through the skin 1100 mg/kg"),
             {{
                 //: A sum with its numbers: %1 strength
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid: %1")},
                 //: A sum with its numbers: %1 strength, %2 an estimate
                 HowLine{QT_TRANSLATE_NOOP("How", "By mouth: 375 mg/kg ÷ %1 = %2 mg/kg")},
                 //: A sum with its numbers: %1 strength, %3 an estimate
                 HowLine{QT_TRANSLATE_NOOP("How", "Through the skin: 1100 mg/kg ÷ %1 = %3 mg/kg")},
             }}, {}},
};

} // namespace

std::span<const HowEntry> keeping_hows() {
    return keeping_entries;
}

} // namespace soakbook::ui
