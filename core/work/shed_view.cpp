// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/shed_view.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/materials.h"
#include "core/book/queries/soaks.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/work/batch_line.h"
#include "core/work/clear_liquid.h"
#include "core/work/figures.h"
#include "core/work/lot_stock.h"
#include "core/work/pail_choice.h"

#include <algorithm>

namespace soakbook::work {

namespace {

BatchState state_of(const book::Workbook& workbook, const book::Batch& batch, const book::BatchCounts& counts) {
    if (batch.void_reason)
        return BatchState::made_void;
    if (batch.closed)
        return BatchState::closed;
    if (!batch.mixed)
        return BatchState::planned;
    if (counts.strips == 0)
        return clear_since(workbook, batch) ? BatchState::clear : BatchState::warming;
    if (counts.strips_bagged >= counts.strips)
        return BatchState::to_close;
    return counts.soaks_running > 0 ? BatchState::soaking : BatchState::bagging;
}

template <class Record> QString name_of(const book::Workbook& workbook, book::Id<Record> id) {
    const auto record = book::fetch(workbook, id);
    return record ? record->name : QString();
}

/// The lot used last when something is left of it, else the newest that has something.
std::optional<LotId> lot_to_take(const book::Workbook& workbook, book::Material material) {
    const auto last = book::lot_used_last(workbook, material);
    std::optional<LotId> first;
    for (const book::MaterialLot& lot : book::lots_newest_first(workbook)) {
        if (lot.material != material || lot.finished_on || left_of(workbook, lot) <= 0)
            continue;
        if (lot.id == last)
            return lot.id;
        if (!first)
            first = lot.id;
    }
    return first;
}

/// That record if it is in use, else the first that is.
template <class Record, class Fits>
std::optional<book::Id<Record>> in_use(const book::Workbook& workbook, book::Id<Record> wanted, Fits fits) {
    std::optional<book::Id<Record>> first;
    for (const Record& record : book::fetch_all<Record>(workbook)) {
        if (!record.active || !fits(record))
            continue;
        if (record.id == wanted)
            return record.id;
        if (!first)
            first = record.id;
    }
    return first;
}

BatchLine line_with(const book::Workbook& workbook, const book::Batch& batch, const book::BatchCounts& counts) {
    BatchLine line;
    line.id = batch.id;
    line.code = batch.code;
    line.day = batch.mixed ? batch.mixed->local_day() : batch.planned_on;
    line.strips = counts.strips;
    line.bags = counts.bags;
    line.resting = counts.resting;
    line.state = state_of(workbook, batch, counts);
    return line;
}

} // namespace

BatchLine batch_line(const book::Workbook& workbook, const book::Batch& batch, maths::Day today) {
    BatchLine line = line_with(workbook, batch, book::counts_of(workbook, batch.id, today));
    line.tank = name_of(workbook, batch.tank);
    line.strip_kind = name_of(workbook, batch.strip_kind);
    return line;
}

std::vector<BatchLine> batches(const book::Workbook& workbook, maths::Day today, bool also_void) {
    std::map<VesselId, QString> vessels;
    for (const book::Vessel& vessel : book::fetch_all<book::Vessel>(workbook))
        vessels[vessel.id] = vessel.name;
    std::map<StripKindId, QString> kinds;
    for (const book::StripKind& kind : book::fetch_all<book::StripKind>(workbook))
        kinds[kind.id] = kind.name;
    auto counts = book::counts_of_all(workbook, today);
    std::vector<BatchLine> lines;
    for (const book::Batch& batch : book::batches_open_first(workbook, also_void)) {
        BatchLine line = line_with(workbook, batch, counts[batch.id]);
        line.tank = vessels[batch.tank];
        line.strip_kind = kinds[batch.strip_kind];
        lines.push_back(std::move(line));
    }
    return lines;
}

MixStart mix_start(const book::Workbook& workbook, maths::Day today) {
    MixStart start;
    const auto last = book::newest_batch(workbook);
    start.plan.tank = in_use<book::Vessel>(workbook, last ? last->tank : VesselId{},
                                           [](const book::Vessel& v) { return v.kind == book::VesselKind::tank; });
    start.plan.strip_kind = in_use<book::StripKind>(workbook, last ? last->strip_kind : StripKindId{},
                                                    [](const book::StripKind&) { return true; });
    if (const auto strength = figure(workbook, Figure::strength))
        start.plan.strength = maths::Fraction{*strength};
    start.plan.acid_lot = lot_to_take(workbook, book::Material::acid);
    start.plan.glycerine_lot = lot_to_take(workbook, book::Material::glycerine);
    start.plan.planned_on = today;
    start.pails_that_can = pails_that_can(workbook);
    return start;
}

} // namespace soakbook::work
