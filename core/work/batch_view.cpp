// SPDX-License-Identifier: GPL-3.0-or-later
// One batch as its course, from the records.
#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/soaks.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/vessel.h"
#include "core/maths/thermostat.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/batch_line.h"
#include "core/work/clear_liquid.h"
#include "core/work/mix_inputs.h"
#include "core/work/weigh_sums.h"

#include <algorithm>
#include <set>

namespace soakbook::work {

namespace {

constexpr std::int64_t late_ms = 3'600'000;

std::vector<InputLine> input_lines(const book::Workbook& workbook, const std::vector<book::BatchInput>& inputs) {
    std::vector<InputLine> lines;
    for (const book::BatchInput& input : inputs) {
        InputLine line;
        line.id = input.id;
        line.lot = input.lot;
        line.pail = input.pail;
        line.planned = input.planned;
        line.mass = input.mass;
        if (input.lot) {
            if (const auto lot = book::fetch(workbook, *input.lot)) {
                line.name = lot->name;
                line.is_acid = lot->material == book::Material::acid;
                if (lot->container_amount)
                    line.container = maths::Mass{*lot->container_amount};
            }
        } else if (const auto pail = book::fetch(workbook, *input.pail)) {
            line.name = pail->code;
        }
        lines.push_back(line);
    }
    return lines;
}

void add_heat(const book::Workbook& workbook, const book::Batch& batch, BatchView& view) {
    for (const book::Reading& reading : book::readings_of(workbook, batch.id)) {
        ReadingLine line;
        line.id = reading.id;
        line.at = reading.at;
        line.probe = reading.probe;
        line.dial = reading.dial;
        line.room = reading.room;
        line.jacket_seen = reading.jacket_seen;
        line.over_ceiling = reading.probe && maths::is_over_ceiling(*reading.probe, batch.ceiling);
        line.written_late = reading.written.utc_ms - reading.at.utc_ms > late_ms;
        line.note = reading.note;
        view.readings.push_back(line);
        if (reading.probe)
            view.highest = std::max(view.highest.value_or(*reading.probe), *reading.probe);
    }
    for (const book::Stir& stir : book::stirs_of(workbook, batch.id))
        view.stirs.push_back({stir.id, stir.at, stir.minutes, stir.clear, stir.outlet_poured_back, stir.note});
    view.clear_at = clear_since(workbook, batch);
}

SoakLine soak_line(const book::Workbook& workbook, const book::Soak& soak, maths::Fraction strength, int bagged) {
    SoakLine line;
    line.id = soak.id;
    line.bin = soak.bin;
    if (const auto bin = book::fetch(workbook, soak.bin))
        line.bin_name = bin->name;
    line.strips = soak.strips;
    line.bagged = bagged;
    line.dry = soak.dry;
    line.target = soak.target;
    line.tolerance = soak.tolerance;
    line.room = soak.room;
    line.started = soak.started;
    line.ended = soak.ended;
    const std::set<qint64> corrected = book::corrected_weigh_ins(workbook, soak.id);
    for (const book::WeighIn& record : book::weigh_ins_of(workbook, soak.id)) {
        WeighLine weighing;
        weighing.id = record.id;
        weighing.at = record.at;
        weighing.hours = maths::hours_between(soak.started, record.at);
        weighing.strips = record.strips;
        weighing.total = record.total;
        const auto singles = single_masses(workbook, record.id);
        weighing.one_by_one = !singles.empty();
        weighing.drip_minutes = record.drip_minutes;
        if (const auto figures = weigh_sum(basis_of(soak, strength), record.strips, record.total, singles))
            weighing.figures = *figures;
        weighing.corrected = corrected.count(record.id.value) != 0;
        weighing.note = record.note;
        line.weighings.push_back(weighing);
    }
    return line;
}

QString label_text(book::LabelState label) {
    return QLatin1String(book::Names<book::LabelState>::all[static_cast<std::size_t>(label)]);
}

void add_bags(const book::Workbook& workbook, BatchId batch, BatchView& view) {
    for (const book::Bag& bag : book::bags_of(workbook, batch)) {
        BatchBag line;
        line.id = bag.id;
        line.code = bag.code;
        line.packed = bag.packed;
        line.net = bag.net;
        line.sealed_on = bag.sealed_on;
        line.rest_until = bag.rest_until;
        line.use_by = bag.use_by;
        line.label = label_text(bag.label);
        line.made_void = bag.void_reason.has_value();
        view.bags.push_back(line);
        if (!bag.packed && !bag.void_reason)
            ++view.labels_reserved;
    }
}

void add_leftovers(const book::Workbook& workbook, BatchId batch, BatchView& view) {
    for (const book::Pail& pail : book::pails_of(workbook, batch)) {
        BatchPail line{pail.id, pail.code, pail.mass, pail.strength, {}};
        if (const auto input = book::input_of_pail(workbook, pail.id))
            if (const auto taker = book::fetch(workbook, input->batch))
                line.went_to = taker->code;
        view.pails.push_back(line);
    }
    for (const book::BatchLoss& loss : book::losses_of(workbook, batch))
        view.losses.push_back({loss.id, static_cast<NamedLoss>(loss.kind), loss.mass, loss.note});
    if (const auto account = balance(workbook, batch))
        view.balance = *account;
}

} // namespace

std::optional<BatchView> batch_view(const book::Workbook& workbook, BatchId id, maths::Day today) {
    const auto batch = book::fetch(workbook, id);
    if (!batch)
        return std::nullopt;
    BatchView view;
    view.line = batch_line(workbook, *batch, today);
    view.tank = batch->tank;
    if (const auto tank = book::fetch(workbook, batch->tank))
        view.tank_capacity = tank->capacity;
    view.strip_kind = batch->strip_kind;
    view.wanted = batch->strength;
    view.ceiling = batch->ceiling;
    view.mixed = batch->mixed;
    view.closed = batch->closed;
    view.note = batch->note;
    view.void_reason = batch->void_reason.value_or(QString());
    view.inputs = input_lines(workbook, book::inputs_of(workbook, id));
    view.planned_total = planned_of(workbook, id);
    view.total = view.planned_total;
    const maths::Mixture liquid = liquid_of(workbook, id);
    if (batch->mixed && liquid.total.count > 0) {
        view.total = liquid.total;
        view.strength = liquid.strength();
        view.mix = mix_result(workbook, *batch, liquid);
    }
    add_heat(workbook, *batch, view);
    const Bagged bagged = bagged_of(workbook, id);
    view.strips_soaked = bagged.soaked;
    view.strips_bagged = bagged.bagged;
    for (const book::Soak& soak : book::soaks_of(workbook, id))
        view.soaks.push_back(soak_line(workbook, soak, liquid.strength(), bagged.by_soak.at(soak.id.value)));
    add_bags(workbook, id, view);
    add_leftovers(workbook, id, view);
    return view;
}

} // namespace soakbook::work
