// SPDX-License-Identifier: GPL-3.0-or-later
// Mix, put right: more acid or glycerine, a weight that was written wrongly, a batch made void.
#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/soaks.h"
#include "core/work/batch_checks.h"
#include "core/work/copies.h"
#include "core/work/lot_stock.h"
#include "core/work/mix.h"
#include "core/work/mix_inputs.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

Piece batch_piece(const char* key, const QString& code) {
    return {QLatin1String(key), 1, code};
}

/// A batch whose liquid is still all in its tank.
Outcome<book::Batch> mix_in_tank(const book::Workbook& workbook, BatchId id) {
    auto batch = mixed_batch(workbook, id);
    if (batch && !book::soaks_of(workbook, id).empty())
        return refuse(Why::undo_blocked, {}, {batch->code});
    return batch;
}

} // namespace

Outcome<MixResult> add_to_mix(book::Workbook& workbook, const MixCorrection& entry, const book::Doing& doing) {
    return perform(
        workbook, batch_piece("mix_corrected", {}), doing, [&](book::Writing& writing) -> Outcome<MixResult> {
            const book::Workbook& book = writing.workbook();
            auto batch = mix_in_tank(book, entry.batch);
            if (!batch)
                return unexpected(batch.error());
            if (!entry.lot || !*entry.lot)
                return refuse(Why::missing, QStringLiteral("lot"));
            const auto lot = book::fetch(book, *entry.lot);
            const bool acid = lot && lot->material == book::Material::acid;
            const QString field = acid ? QStringLiteral("acid") : QStringLiteral("glycerine");
            const auto mass = checked_mass(entry.mass, field, most_mass);
            if (!mass)
                return unexpected(mass.error());
            const auto usable = usable_lot(
                book, *entry.lot, {acid ? book::Material::acid : book::Material::glycerine, mass->count}, field);
            if (!usable)
                return unexpected(usable.error());
            maths::Mixture liquid = liquid_of(book, batch->id);
            liquid.total += *mass;
            if (const Not over = overfills(book, *batch, liquid.total, field))
                return because(over);
            book::BatchInput input;
            input.batch = batch->id;
            input.lot = usable->id;
            input.mass = *mass;
            input.acid = acid ? maths::part_of(*mass, *usable->assay) : maths::Mass{};
            writing.name(1, batch->code);
            book::insert(writing, input);
            liquid.acid += *input.acid;
            // Whatever was added has to dissolve anew: what was seen clear before does not count.
            batch->mixed = doing.at;
            book::update(writing, *batch);
            return mix_result(book, *batch, liquid);
        });
}

Outcome<MixResult> correct_weighed(book::Workbook& workbook, BatchInputId id, maths::Mass mass,
                                   const book::Doing& doing) {
    return perform(workbook, batch_piece("corrected", {}), doing, [&](book::Writing& writing) -> Outcome<MixResult> {
        const book::Workbook& book = writing.workbook();
        auto input = book::fetch(book, id);
        if (!input || input->void_reason)
            return refuse(Why::not_found);
        const auto batch = batch_there(book, input->batch);
        if (!batch)
            return unexpected(batch.error());
        if (!input->mass)
            return refuse(Why::batch_not_mixed, {}, {batch->code});
        const QString field = QStringLiteral("mass");
        const auto checked = checked_mass(mass, field, most_mass);
        if (!checked)
            return unexpected(checked.error());
        const auto acid = acid_in(book, *input, mass, field);
        if (!acid)
            return unexpected(acid.error());
        if (mass == *input->mass && *acid == *input->acid)
            return refuse(Why::nothing_changed, field);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        if (const Not lacks = lot_lacks(book, *input, mass, field))
            return because(lacks);
        if (const Not over = overfills(book, *batch, liquid_of(book, batch->id).total - *input->mass + mass, field))
            return because(over);
        writing.name(1, batch->code);
        const Copies copies(book, batch->id);
        input->mass = mass;
        input->acid = *acid;
        book::update(writing, *input);
        copies.follow(writing);
        rebalance(writing, batch->id);
        return mix_result(book, *batch, liquid_of(book, batch->id));
    });
}

Outcome<int> void_batch(book::Workbook& workbook, BatchId id, const book::Doing& doing) {
    return perform(workbook, batch_piece("made_void", {}), doing, [&](book::Writing& writing) -> Outcome<int> {
        const book::Workbook& book = writing.workbook();
        auto batch = batch_there(book, id);
        if (!batch)
            return unexpected(batch.error());
        if (const Not missing = reason_missing(doing))
            return because(missing);
        const auto bags = book::bags_of(book, id);
        for (const book::Bag& bag : bags)
            if (bag.sealed_on && !bag.void_reason)
                return refuse(Why::undo_blocked, {}, {bag.code});
        for (const book::Pail& pail : book::pails_of(book, id))
            if (!pail.discarded_on)
                return refuse(Why::undo_blocked, {}, {pail.code});
        writing.name(1, batch->code);
        const QString reason = doing.why.trimmed();
        for (book::Bag bag : bags) {
            if (bag.void_reason)
                continue;
            bag.void_reason = reason;
            book::update(writing, bag);
        }
        // Once strips stood in it the material is gone, whatever became of the batch.
        if (book::soaks_of(book, id).empty())
            for (book::BatchInput input : book::inputs_of(book, id)) {
                input.void_reason = reason;
                book::update(writing, input);
            }
        batch->void_reason = reason;
        book::update(writing, *batch);
        return 1;
    });
}

} // namespace soakbook::work
