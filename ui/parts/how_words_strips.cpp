// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of soaking, weighing and counting strips come about.
#include "ui/parts/how_table.h"

#include <QtGlobal>

namespace soakbook::ui {

namespace {

constexpr std::array strip_entries{
    HowEntry{work::HowKind::taken_up,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Taken up by a strip"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Taken up = mean weight of a strip − its dry weight."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass"),
             {{
                 //: A sum with its numbers: %1 mean, %2 dry, %3 taken up
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 − %2 = %3")},
                 //: A sum with its numbers: %4 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "Strips weighed: %4")},
             }}, {}},
    HowEntry{work::HowKind::acid_in_strip,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Acid in a strip"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Acid = (mean weight − dry weight) × strength, counted as dihydrate; as "
                                      "anhydrous acid 90.034 ÷ 126.064 of it."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass; molar masses by the abridged atomic weights of IUPAC"),
             {{
                 //: A sum with its numbers: %1 mean, %2 dry, %3 strength, %4 acid
                 HowLine{QT_TRANSLATE_NOOP("How", "(%1 − %2) × %3 = %4 as dihydrate")},
                 //: A sum with its numbers: %4 acid as dihydrate, %5 as anhydrous acid
                 HowLine{QT_TRANSLATE_NOOP("How", "%4 × 90.034 ÷ 126.064 = %5 as anhydrous acid")},
             }}, {}},
    HowEntry{work::HowKind::sample_interval,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "How sure the mean is"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Mean ± t × s ÷ √n: where the mean of all strips lies in 95 of 100 cases. n "
                                      "strips were weighed, s is the spread of single strips, t is Student’s for the "
                                      "degrees of freedom of s."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2"),
             {{
                 //: A sum with its numbers: %1 strips, %2 mean, %3 spread, %5 Student’s t, %6 and %7 the ends
                 HowLine{QT_TRANSLATE_NOOP("How", "%2 ± %5 × %3 ÷ √%1: from %6 to %7")},
                 //: A sum with its numbers: %4 degrees of freedom
                 HowLine{QT_TRANSLATE_NOOP("How", "Degrees of freedom: %4")},
                 //: A sum with its numbers: %1 strips, %2 mean
                 HowLine{QT_TRANSLATE_NOOP("How", "Mean %2 (strips: %1); how far single strips differ is not known yet"), {3, HowWhen::unknown}},
             }}, {}},
    HowEntry{work::HowKind::more_to_weigh,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "How many more to weigh"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "The fewest strips whose range, mean ± t × s ÷ √n, stays on one side of the "
                                      "nearer limit, less those weighed already."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2"),
             {{
                 //: A sum with its numbers: %2 strips, %3 mean, %4 and %5 the limits
                 HowLine{QT_TRANSLATE_NOOP("How", "Mean %3 (strips: %2); good from %4 to %5")},
                 //: A sum with its numbers: %6 spread of single strips, %7 strips it comes from
                 HowLine{QT_TRANSLATE_NOOP("How", "s = %6 (learned from strips: %7)")},
                 //: A sum with its numbers: %1 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "More to weigh: %1")},
             }}, {}},
    HowEntry{work::HowKind::soak_curve,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Curve of the soak"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Weight after t hours = dry + U × (1 − e^(−k × t)). U is what a strip takes up "
                                      "in the end, k how fast; both by least squares, the dry weight being known."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Bates & Watts 1988, Nonlinear Regression Analysis and Its Applications, ch. "
                                      "2; checked against NIST StRD Misra1a"),
             {{
                 //: A sum with its numbers: %1 dry weight, %2 U, %4 k
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 + %2 × (1 − e^(−%4 × t))")},
                 //: A sum with its numbers: %2 U, %3 its standard error, %4 k, %5 its standard error
                 HowLine{QT_TRANSLATE_NOOP("How", "U = %2, k = %4 an hour; standard errors %3 and %5")},
                 //: A sum with its numbers: %7 R², %8 a weight
                 HowLine{QT_TRANSLATE_NOOP("How", "R² = %7; the weighings lie about %8 off the curve")},
                 //: A sum with its numbers: %6 weighings
                 HowLine{QT_TRANSLATE_NOOP("How", "Weighings: %6")},
             }}, {}},
    HowEntry{work::HowKind::target_hour,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Hour the target is reached"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "t = −ln(1 − (target − dry) ÷ U) ÷ k hours, from the curve of the soak; the "
                                      "range by the delta method with Student’s t."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Bates & Watts 1988, Nonlinear Regression Analysis and Its Applications, ch. 2"),
             {{
                 //: A sum with its numbers: %1 target, %2 dry, %3 U, %4 k, %5 hours
                 HowLine{QT_TRANSLATE_NOOP("How", "−ln(1 − (%1 − %2) ÷ %3) ÷ %4 = %5")},
                 //: A sum with its numbers: %6 and %7 hours
                 HowLine{QT_TRANSLATE_NOOP("How", "From %6 to %7")},
             }}, {}},
    HowEntry{work::HowKind::cold_room,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Soaking in a cold room"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Times as long = how thick glycerine is at this room’s temperature ÷ how thick "
                                      "it is in the usual room."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Washburn 1921, Phys. Rev. 17:273; viscosity of glycerine by Cheng 2008, Ind. "
                                      "Eng. Chem. Res. 47:3285"),
             {{
                 //: A sum with its numbers: %1 temperature of the room, %2 the usual one, %3 how many times
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 instead of %2: %3 times as long")},
             }}, {}},
    HowEntry{work::HowKind::count_by_weight,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Strips by weight"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "For each number n of strips: how well n strips of the mean weight explain the "
                                      "net weight. Its variance is n × s² + n² × s² ÷ m, with s the spread of single "
                                      "strips and m the strips behind the mean; before weighing every number is held "
                                      "equally likely."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Bayes’ rule; variances of weights that do not depend on each other add up"),
             {{
                 //: A sum with its numbers: %1 net weight, %2 mean of a strip, %3 strips behind it
                 HowLine{QT_TRANSLATE_NOOP("How", "Net %1; mean of a strip %2 (m = %3)")},
                 //: A sum with its numbers: %4 spread of single strips, %5 strips it comes from
                 HowLine{QT_TRANSLATE_NOOP("How", "s = %4 (learned from strips: %5)")},
                 //: A sum with its numbers: %6 strips, %7 a share
                 HowLine{QT_TRANSLATE_NOOP("How", "Likeliest: %6, sure to %7")},
                 //: A sum with its numbers: %8 and %9 strips
                 HowLine{QT_TRANSLATE_NOOP("How", "At least 95 % sure: from %8 to %9")},
                 //: A sum with its numbers: the spread is not known
                 HowLine{QT_TRANSLATE_NOOP("How", "How far single strips differ is not known yet, so the number cannot be told."), {4, HowWhen::unknown}},
             }}, {}},
};

} // namespace

std::span<const HowEntry> strip_hows() {
    return strip_entries;
}

} // namespace soakbook::ui
