// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a delivery can give what a piece of work wants of it. For core/work's own use.
#pragma once

#include "core/book/records/material_lot.h"
#include "core/work/checks.h"

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// What is left of a lot: delivered, less used, with what counting anew changed.
qint64 left_of(const book::Workbook& workbook, const book::MaterialLot& lot);
/// What is wanted of a lot, as the unit of its material goes: mg, or pieces.
struct LotWish {
    book::Material material{};
    qint64 amount = 0;
    qint64 held_back = 0; ///< part of what counts as used that this very wish replaces (a planned amount, now weighed)
};
/// The lot, when it is of that material, not void, not finished, and has enough. Refuses lot_wrong_material,
/// lot_finished, lot_short.
Outcome<book::MaterialLot> usable_lot(const book::Workbook& workbook, book::Id<book::MaterialLot> id,
                                      const LotWish& wish, const QString& field);
/// Asks when the lot's date is past on that day.
Not lot_past_date(const book::MaterialLot& lot, maths::Day day, const QString& field, const Confirmed& confirmed);
/// Refuses a day before the lot came.
Not before_delivery(const book::MaterialLot& lot, maths::Day day, const QString& field);

/// An amount as a fact: a mass for acid and glycerine, a number for strips and bags.
QString amount_fact(book::Material material, qint64 amount);

} // namespace soakbook::work
