// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/store_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct StoreCautionsWords {
    Q_DECLARE_TR_FUNCTIONS(StoreCautions)
};

} // namespace

QString keeping_caution() {
    //: Caution at the foot of the pages of the Store
    return StoreCautionsWords::tr(
        "Keep strips, pails and acid locked, airtight and labelled, away from food and children. The "
        "label, the safety data "
        "sheet and local rules come first.");
}

QString discard_strips_caution() {
    //: Caution in the form in which strips are thrown away
    return StoreCautionsWords::tr(
        "Used or spoilt strips are not burned and not left lying: they still hold acid. Gloves and "
        "goggles on; dispose of "
        "them as your local rules say, not with food waste and not down a drain.");
}

QString discard_pail_caution() {
    //: Caution in the form in which the contents of a pail are thrown away
    return StoreCautionsWords::tr(
        "The liquid burns eyes and skin: goggles and acid-proof gloves, rinsing water beside you. Dispose of it as the "
        "safety data sheet and your local rules say, not down a drain and not onto the ground.");
}

} // namespace soakbook::ui
