// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/mix_inputs.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/materials.h"
#include "core/book/records/pail.h"
#include "core/book/records/vessel.h"
#include "core/work/batch_checks.h"
#include "core/work/lot_stock.h"

namespace soakbook::work {

Outcome<maths::Mass> acid_in(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass,
                             const QString& field) {
    if (input.pail) {
        const auto pail = book::fetch(workbook, *input.pail);
        if (!pail || !pail->strength)
            return refuse(Why::pail_strength_unknown, field, {pail ? pail->code : QString()});
        if (mass < pail->mass)
            return refuse(Why::pail_part_wanted, field, {pail->code, fact(pail->mass)});
        if (mass > pail->mass)
            return refuse(Why::too_large, field, {fact(pail->mass)});
        return maths::part_of(mass, *pail->strength);
    }
    const auto lot = book::fetch(workbook, *input.lot);
    return lot && lot->material == book::Material::acid ? maths::part_of(mass, lot->assay.value_or(maths::Fraction{}))
                                                        : maths::Mass{};
}

Not lot_lacks(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass, const QString& field) {
    if (!input.lot)
        return {};
    const auto lot = book::fetch(workbook, *input.lot);
    if (!lot)
        return no(Why::not_found, field);
    const auto usable =
        usable_lot(workbook, lot->id, {lot->material, mass.count, input.mass.value_or(input.planned).count}, field);
    return usable ? Not{} : Not{usable.error()};
}

Not overfills(const book::Workbook& workbook, const book::Batch& batch, maths::Mass total, const QString& field) {
    const auto tank = book::fetch(workbook, batch.tank);
    if (!tank || !tank->capacity || total <= *tank->capacity)
        return {};
    return no(Why::overfills_tank, field, {fact(total), fact(*tank->capacity)});
}

MixResult mix_result(const book::Workbook& workbook, const book::Batch& batch, maths::Mixture liquid) {
    MixResult result;
    result.total = liquid.total;
    result.acid = liquid.acid;
    result.strength = liquid.strength();
    result.wanted = batch.strength;
    for (const book::BatchInput& input : book::inputs_of(workbook, batch.id))
        if (input.lot)
            if (const auto lot = book::fetch(workbook, *input.lot); lot && lot->material == book::Material::acid)
                result.assay = lot->assay;
    if (is_right(result.strength, result.wanted))
        return result;
    for (const book::MaterialLot& lot : book::lots_newest_first(workbook))
        if (!result.assay && lot.material == book::Material::acid && !lot.finished_on)
            result.assay = lot.assay;
    const auto tank = book::fetch(workbook, batch.tank);
    const auto correction = maths::correct(liquid, batch.strength, result.assay.value_or(maths::ppm(1'000'000)),
                                           tank ? tank->capacity : std::nullopt);
    if (!correction)
        return result;
    if (correction->add.acid.count > 0 && result.assay)
        result.add_acid = correction->add.acid;
    if (correction->add.glycerine.count > 0)
        result.add_glycerine = correction->add.glycerine;
    result.correction_fits = correction->fits();
    return result;
}

} // namespace soakbook::work
