// SPDX-License-Identifier: GPL-3.0-or-later
// Own words. Sources: International Chemical Safety Card 0707 (oxalic acid dihydrate), the hazard statements that
// follow from the strength, and common practice.
#include "ui/print/sheet_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct SheetCautionsWords {
    Q_DECLARE_TR_FUNCTIONS(SheetCautions)
};

} // namespace

QStringList mixing_cautions() {
    return {
        //: caution on a printed sheet
        SheetCautionsWords::tr("Acid powder: goggles or face shield, acid-proof gloves, particle mask (P2, FFP2, N95 "
                               "or as the data sheet says), no "
                               "draught."),
        //: caution on a printed sheet
        SheetCautionsWords::tr("Heat: water in the jacket before the power goes on; room aired; never lidded tight; "
                               "above the ceiling the liquid gives "
                               "off gas. Then heat off, do not lean over the tank, leave the room if the air stings."),
        //: caution on a printed sheet
        SheetCautionsWords::tr("Rinsing water and an eye wash stand beside you. Splashes are washed off at once with "
                               "plenty of water. The acid's "
                               "safety data sheet and local rules come first."),
    };
}

QStringList hanging_cautions() {
    return {
        //: caution on a printed sheet
        SheetCautionsWords::tr("Wet strips burn eyes and skin: acid-proof gloves and goggles, water in the car."),
        //: caution on a printed sheet
        SheetCautionsWords::tr("Supers, harvest and waiting times go by the product's label, your vet and local rules. "
                               "Home-made treatment is not "
                               "lawful everywhere."),
    };
}

QStringList pulling_cautions() {
    return {
        //: caution on a printed sheet
        SheetCautionsWords::tr("Old strips still hold acid: acid-proof gloves. Not into a stove or smoker, away from "
                               "stock and pets; got rid of by "
                               "local rules."),
    };
}

QStringList carrying_cautions() {
    return {
        //: caution on a printed sheet
        SheetCautionsWords::tr("Bags travel closed and upright, apart from food and people, in a labelled box. Gloves, "
                               "goggles and rinsing water come "
                               "along."),
    };
}

QStringList register_cautions() {
    return {
        //: on the printed register
        SheetCautionsWords::tr("Strips made for own use are no authorised veterinary product. Whether they may be "
                               "used, and what must be written "
                               "down, is for local rules and the authority to say."),
    };
}

} // namespace soakbook::ui
