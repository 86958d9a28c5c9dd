// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/batch_checks.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/soaks.h"

namespace soakbook::work {

Outcome<book::Batch> batch_there(const book::Workbook& workbook, book::Id<book::Batch> id) {
    const auto batch = book::fetch(workbook, id);
    if (!batch || batch->void_reason)
        return refuse(Why::not_found, {}, batch ? QStringList{batch->code} : QStringList{});
    return *batch;
}

Outcome<book::Batch> open_batch(const book::Workbook& workbook, book::Id<book::Batch> id) {
    auto batch = batch_there(workbook, id);
    if (batch && batch->closed)
        return refuse(Why::batch_closed, {}, {batch->code});
    return batch;
}

Outcome<book::Batch> mixed_batch(const book::Workbook& workbook, book::Id<book::Batch> id) {
    auto batch = open_batch(workbook, id);
    if (batch && !batch->mixed)
        return refuse(Why::batch_not_mixed, {}, {batch->code});
    return batch;
}

maths::Mixture liquid_of(const book::Workbook& workbook, book::Id<book::Batch> id) {
    maths::Mixture liquid;
    for (const book::BatchInput& input : book::inputs_of(workbook, id)) {
        liquid.total += input.mass.value_or(maths::Mass{});
        liquid.acid += input.acid.value_or(maths::Mass{});
    }
    return liquid;
}

maths::Mass planned_of(const book::Workbook& workbook, book::Id<book::Batch> id) {
    maths::Mass planned;
    for (const book::BatchInput& input : book::inputs_of(workbook, id))
        planned += input.planned;
    return planned;
}

maths::Mass not_spoken_for(const book::Workbook& workbook, book::Id<book::Batch> id) {
    maths::Mass left = liquid_of(workbook, id).total;
    for (const book::Soak& soak : book::soaks_of(workbook, id))
        left -= (soak.target - soak.dry) * soak.strips;
    for (const book::Pail& pail : book::pails_of(workbook, id))
        left -= pail.mass;
    for (const book::BatchLoss& loss : book::losses_of(workbook, id))
        left -= loss.mass;
    return left;
}

} // namespace soakbook::work
