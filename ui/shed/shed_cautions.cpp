// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shed_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct ShedCautions {
    Q_DECLARE_TR_FUNCTIONS(ShedCautions)
};

} // namespace

QString powder_caution() {
    //: Caution beside the form in which acid powder is weighed
    return ShedCautions::tr(
        "Acid powder burns eyes and lungs. Wear goggles, acid-proof gloves and a particle mask (P2, FFP2, N95, or what the "
        "data sheet asks for); no draught, break lumps under cover, rinsing water within reach. The label, the safety data "
        "sheet and local rules come first.");
}

QString tank_caution() {
    //: Caution beside the form in which the tank's temperature is written down
    return ShedCautions::tr(
        "See the jacket water before you switch on, and use a residual-current breaker. Air the room, keep away what burns, "
        "never close the lid tight, and have somebody look in. Goggles and gloves at the tank. The label, the safety data "
        "sheet and local rules come first.");
}

QString liquid_caution() {
    //: Caution beside the forms in which warm liquid is handled
    return ShedCautions::tr(
        "The liquid harms eyes for good and burns skin. Goggles and acid-proof gloves, contact lenses out, rinsing water and "
        "an eye wash beside you; wash splashes off at once with plenty of water. No galvanised steel, aluminium or bare iron. "
        "The label, the safety data sheet and local rules come first.");
}

QString bag_caution() {
    //: Caution beside the form in which wet strips are bagged
    return ShedCautions::tr(
        "Wet strips are as sharp as the liquid: gloves and goggles. Keep the bag's mouth clean or it will not seal. Store "
        "locked, airtight, away from food. The label, the safety data sheet and local rules come first.");
}

QString pail_caution() {
    //: Caution beside the form in which leftover liquid is poured into pails
    return ShedCautions::tr(
        "Pour slowly, goggles and gloves on, rinsing water beside you. Pails airtight, labelled, locked away from food; none "
        "of galvanised steel, aluminium or bare iron. If swallowed do not make sick, get help. The label, the safety data "
        "sheet and local rules come first.");
}

QString over_ceiling_words(const Habits& habits, maths::Temperature probe, maths::Temperature ceiling) {
    //: A warning; %1 the temperature read, %2 the most it should be
    return ShedCautions::tr(
               "%1 is over the ceiling of %2. Heat off now. Do not lean over the tank. Air the room, and leave it if the air "
               "stings. Read again in some minutes. Never cool the tank by adding water.")
        .arg(habits.temperature(probe), habits.temperature(ceiling));
}

} // namespace soakbook::ui
