// SPDX-License-Identifier: GPL-3.0-or-later
// How the figures of a mix, its vessels and its heat come about.
#include "ui/parts/how_table.h"

#include <QtGlobal>

namespace soakbook::ui {

namespace {

constexpr std::array liquid_entries{
    HowEntry{work::HowKind::mix_amounts,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Acid and glycerine of a mix"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Acid = (total × strength − acid in the old liquid) ÷ content of the acid; "
                                      "glycerine = total − old liquid − acid. The strength counts the acid as "
                                      "dihydrate."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass; molar masses 126.064 and 90.034 g/mol by the abridged "
                                      "atomic weights of IUPAC"),
             {{
                 //: A sum with its numbers: %1 total, %2 strength, %3 content of the acid, %4 acid
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid: %1 × %2 ÷ %3 = %4"), {6, HowWhen::zero}},
                 //: A sum with its numbers: %1 total, %2 strength, %3 content of the acid, %4 acid, %6 old liquid
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid: (%1 × %2 − acid in %6 of old liquid) ÷ %3 = %4"), {6, HowWhen::not_zero}},
                 //: A sum with its numbers: %4 acid; no lot of acid is chosen
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid: %4, as long as the content of the acid is not said"), {3, HowWhen::unknown}},
                 //: A sum with its numbers: %1 total, %4 acid, %5 glycerine
                 HowLine{QT_TRANSLATE_NOOP("How", "Glycerine: %1 − %4 = %5"), {6, HowWhen::zero}},
                 //: A sum with its numbers: %1 total, %4 acid, %5 glycerine, %6 old liquid
                 HowLine{QT_TRANSLATE_NOOP("How", "Glycerine: %1 − %6 − %4 = %5"), {6, HowWhen::not_zero}},
                 //: A sum with its numbers: %2 a strength as dihydrate, %7 the same as anhydrous acid
                 HowLine{QT_TRANSLATE_NOOP("How", "Strength: %2 as dihydrate is %7 as anhydrous acid")},
             }}, {}},
    HowEntry{work::HowKind::mix_correction,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Correction of a mix"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Strength = acid ÷ mix. Too weak: acid to add = (strength wanted × mix − acid) "
                                      "÷ (content of the acid − strength wanted). Too strong: glycerine to add = "
                                      "acid ÷ strength wanted − mix."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass"),
             {{
                 //: A sum with its numbers: %1 mix, %2 acid in it, %3 strength
                 HowLine{QT_TRANSLATE_NOOP("How", "Strength: %2 ÷ %1 = %3")},
                 //: A sum with its numbers: %1 mix, %2 acid in it, %4 strength wanted, %5 content of the acid, %6 acid to add
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid to add: (%4 × %1 − %2) ÷ (%5 − %4) = %6")},
                 //: A sum with its numbers: %6 acid to add; its content is not known
                 HowLine{QT_TRANSLATE_NOOP("How", "Acid to add: %6"), {5, HowWhen::unknown}},
                 //: A sum with its numbers: %1 mix, %2 acid in it, %4 strength wanted, %7 glycerine to add
                 HowLine{QT_TRANSLATE_NOOP("How", "Glycerine to add: %2 ÷ %4 − %1 = %7")},
             }}, {}},
    HowEntry{work::HowKind::level_mark,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Level mark of glycerine"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Volume = mass ÷ density; density of glycerine in kg/m³ = 1277 − 0.654 × "
                                      "temperature in °C."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "Cheng 2008, Ind. Eng. Chem. Res. 47:3285"),
             {{
                 //: A sum with its numbers: %2 temperature, %3 density
                 HowLine{QT_TRANSLATE_NOOP("How", "Density at %2: %3 kg/m³")},
                 //: A sum with its numbers: %1 mass, %3 density, %4 volume
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 ÷ %3 kg/m³ = %4")},
             }}, {}},
    HowEntry{work::HowKind::level_mark_estimate,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Level mark of the liquid, an estimate"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Volume = mass ÷ density; density in kg/m³ = 1 ÷ (strength ÷ 1653 + (1 − "
                                      "strength) ÷ density of glycerine), as if the volumes of acid and glycerine "
                                      "added up."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "an estimate, since no density of the liquid is published; density of "
                                      "glycerine by Cheng 2008, Ind. Eng. Chem. Res. 47:3285"),
             {{
                 //: A sum with its numbers: %2 temperature, %3 density, %5 strength
                 HowLine{QT_TRANSLATE_NOOP("How", "Density at %2 and %5: about %3 kg/m³")},
                 //: A sum with its numbers: %1 mass, %3 density, %4 volume
                 HowLine{QT_TRANSLATE_NOOP("How", "%1 ÷ %3 kg/m³ = about %4")},
             }}, {}},
    HowEntry{work::HowKind::pails_chosen,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Which pails go in whole"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Of all sets of whole pails that keep to the total and the strength, the one "
                                      "that uses most old liquid; among those, the oldest first, then the fewest "
                                      "pails. Fresh acid and glycerine make up the rest."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass; search by branch and bound, Land & Doig 1960, "
                                      "Econometrica 28:497"),
             {{
                 //: A sum with its numbers: %1 pails chosen, %2 pails in the store
                 HowLine{QT_TRANSLATE_NOOP("How", "Pails that go in: %1 of %2")},
                 //: A sum with its numbers: %3 old liquid, %4 total, %5 strength, %6 acid, %7 glycerine
                 HowLine{QT_TRANSLATE_NOOP("How", "%3 of old liquid + %6 of acid + %7 of glycerine = %4 at %5")},
                 //: A sum with its numbers: said when no better set of pails exists
                 HowLine{QT_TRANSLATE_NOOP("How", "No other set of pails does better: all were tried or ruled out."), {8, HowWhen::not_zero}},
                 //: A sum with its numbers: %9 an amount of old liquid
                 HowLine{QT_TRANSLATE_NOOP("How", "Not every set of pails could be tried: at the most %9 more old liquid might "
                                                  "go in."), {8, HowWhen::zero}},
             }}, {}},
    HowEntry{work::HowKind::yield,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Strips and what is left"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Strips = liquid ÷ what one strip takes up, in whole strips; left at the most "
                                      "= liquid − strips × what one strip takes up."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "conservation of mass"),
             {{
                 //: A sum with its numbers: %1 liquid, %2 taken up by one strip, %3 strips, %4 left
                 HowLine{QT_TRANSLATE_NOOP("How", "Left at the most: %1 − %3 × %2 = %4")},
             }}, {}},
    HowEntry{work::HowKind::dial_by_range,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Where to set the dial"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Dial = temperature wanted + smallest difference of dial and probe seen, so "
                                      "that the tank does not get hotter than meant; highest dial = ceiling + "
                                      "smallest difference. Never far from a dial that was seen."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "common practice, no source"),
             {{
                 //: A sum with its numbers: %2 readings, %3 and %4 the smallest and the largest difference
                 HowLine{QT_TRANSLATE_NOOP("How", "Dial above probe: %3 to %4 (readings: %2)")},
                 //: A sum with its numbers: %1 temperature wanted, %5 where to set the dial
                 HowLine{QT_TRANSLATE_NOOP("How", "For %1: dial at %5")},
                 //: A sum with its numbers: %6 and %7 the ends of a range of temperature
                 HowLine{QT_TRANSLATE_NOOP("How", "Expected in the tank: %6 to %7")},
                 //: A sum with its numbers: %8 the ceiling, %9 a dial
                 HowLine{QT_TRANSLATE_NOOP("How", "For the ceiling of %8: dial no higher than %9")},
             }}, {3, 4}},
    HowEntry{work::HowKind::dial_by_line,
             //: The name of a figure, over how it is worked out
             QT_TRANSLATE_NOOP("How", "Where to set the dial"),
             //: A formula in words
             QT_TRANSLATE_NOOP("How", "Probe = a + b × dial, the straight line through the readings with the least "
                                      "squares; the range is where the next reading falls in 95 of 100 cases."),
             //: Where a formula comes from, after "Source:"
             QT_TRANSLATE_NOOP("How", "NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.2"),
             {{
                 //: A sum with its numbers: %2 readings, %3 and %4 the smallest and the largest difference
                 HowLine{QT_TRANSLATE_NOOP("How", "Dial above probe: %3 to %4 (readings: %2)")},
                 //: A sum with its numbers: %1 temperature wanted, %5 where to set the dial
                 HowLine{QT_TRANSLATE_NOOP("How", "For %1: dial at %5")},
                 //: A sum with its numbers: %6 and %7 the ends of a range of temperature
                 HowLine{QT_TRANSLATE_NOOP("How", "Expected in the tank: %6 to %7")},
                 //: A sum with its numbers: %8 the ceiling, %9 a dial
                 HowLine{QT_TRANSLATE_NOOP("How", "For the ceiling of %8: dial no higher than %9")},
             }}, {3, 4}},
};

} // namespace

std::span<const HowEntry> liquid_hows() {
    return liquid_entries;
}

} // namespace soakbook::ui
