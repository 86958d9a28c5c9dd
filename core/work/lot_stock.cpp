// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/lot_stock.h"

#include "core/book/queries/materials.h"

namespace soakbook::work {

qint64 left_of(const book::Workbook& workbook, const book::MaterialLot& lot) {
    return lot.amount + book::changes_of_lot(workbook, lot.id) - book::used_of_lot(workbook, lot);
}

Outcome<book::MaterialLot> usable_lot(const book::Workbook& workbook, book::Id<book::MaterialLot> id,
                                      const LotWish& wish, const QString& field) {
    const auto lot = book::fetch(workbook, id);
    if (!lot || lot->void_reason)
        return refuse(Why::not_found, field, lot ? QStringList{fact(lot->name)} : QStringList{});
    if (lot->material != wish.material)
        return refuse(Why::lot_wrong_material, field, {fact(lot->name)});
    // What is held back was taken before the lot was finished.
    if (lot->finished_on && wish.amount > wish.held_back)
        return refuse(Why::lot_finished, field, {fact(lot->name)});
    const qint64 left = left_of(workbook, *lot) + wish.held_back;
    if (wish.amount > left)
        return refuse(Why::lot_short, field,
                      {fact(lot->name), amount_fact(lot->material, left), amount_fact(lot->material, wish.amount)});
    return *lot;
}

Not lot_past_date(const book::MaterialLot& lot, maths::Day day, const QString& field, const Confirmed& confirmed) {
    if (!lot.best_before || *lot.best_before >= day)
        return {};
    return no_unless(confirmed, Why::lot_past_date, field, {fact(lot.name), fact(*lot.best_before)});
}

Not before_delivery(const book::MaterialLot& lot, maths::Day day, const QString& field) {
    return day < lot.received_on ? no(Why::before_start, field, {fact(lot.received_on)}) : Not{};
}

QString amount_fact(book::Material material, qint64 amount) {
    const bool by_mass = material == book::Material::acid || material == book::Material::glycerine;
    return by_mass ? fact(maths::Mass{amount}) : fact(amount);
}

} // namespace soakbook::work
