// SPDX-License-Identifier: GPL-3.0-or-later
// Mix, the second half: what was really weighed in, and how it is put right.
#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/batches.h"
#include "core/book/queries/materials.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/soaks.h"
#include "core/book/records/vessel.h"
#include "core/work/batch_checks.h"
#include "core/work/copies.h"
#include "core/work/lot_stock.h"
#include "core/work/mix.h"
#include "core/work/mix_result.h"
#include "core/work/perform.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// How far weighed amounts may be off the plan's strength unasked: half a per cent point. Common practice, no source.
constexpr maths::Fraction odd_strength = maths::ppm(5'000);

Piece batch_piece(const char* key, const QString& code) { return {QLatin1String(key), 1, code}; }

QString mass_field(std::size_t place) { return QStringLiteral("inputs/%1/mass").arg(static_cast<qulonglong>(place)); }

/// The acid, as dihydrate, in a mass of an input.
Outcome<maths::Mass> acid_in(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass, const QString& field) {
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
    return lot && lot->material == book::Material::acid ? maths::part_of(mass, lot->assay.value_or(maths::Fraction{})) : maths::Mass{};
}

/// Whether the lot of an input has that much, when what was put down for it so far is held back.
Not lot_lacks(const book::Workbook& workbook, const book::BatchInput& input, maths::Mass mass, const QString& field) {
    if (!input.lot)
        return {};
    const auto lot = book::fetch(workbook, *input.lot);
    if (!lot)
        return no(Why::not_found, field);
    const auto usable = usable_lot(workbook, lot->id, {lot->material, mass.count, input.mass.value_or(input.planned).count}, field);
    return usable ? Not{} : Not{usable.error()};
}

Not overfills(const book::Workbook& workbook, const book::Batch& batch, maths::Mass total, const QString& field) {
    const auto tank = book::fetch(workbook, batch.tank);
    if (!tank || !tank->capacity || total <= *tank->capacity)
        return {};
    return no(Why::overfills_tank, field, {fact(total), fact(*tank->capacity)});
}

/// The inputs of a batch with the weights of a form in them.
Outcome<std::vector<book::BatchInput>> weighed_inputs(const book::Workbook& workbook, const book::Batch& batch, const WeighedMix& mix) {
    auto inputs = book::inputs_of(workbook, batch.id);
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        book::BatchInput& input = inputs[i];
        const auto said = std::find_if(mix.masses.begin(), mix.masses.end(), [&](const auto& m) { return m.first == input.id; });
        std::optional<maths::Mass> typed = said == mix.masses.end() ? std::nullopt : said->second;
        if (!typed && input.pail)
            typed = input.planned;
        const auto mass = checked_mass(typed, mass_field(i), most_mass);
        if (!mass)
            return unexpected(mass.error());
        const auto acid = acid_in(workbook, input, *mass, mass_field(i));
        if (!acid)
            return unexpected(acid.error());
        if (const Not lacks = lot_lacks(workbook, input, *mass, mass_field(i)))
            return because(lacks);
        if (input.pail && !mix.pails_scraped) {
            const auto pail = book::fetch(workbook, *input.pail);
            return refuse(Why::pail_used_in_part, QStringLiteral("pails_scraped"), {pail ? pail->code : QString()});
        }
        input.mass = *mass;
        input.acid = *acid;
    }
    return inputs;
}

maths::Mixture sum_of(const std::vector<book::BatchInput>& inputs) {
    maths::Mixture mixture;
    for (const book::BatchInput& input : inputs) {
        mixture.total += input.mass.value_or(maths::Mass{});
        mixture.acid += input.acid.value_or(maths::Mass{});
    }
    return mixture;
}

/// Nothing that goes into a mix can come after it.
Not before_its_inputs(const book::Workbook& workbook, const std::vector<book::BatchInput>& inputs, maths::Day day) {
    for (const book::BatchInput& input : inputs) {
        if (input.lot) {
            const auto lot = book::fetch(workbook, *input.lot);
            if (lot)
                if (const Not early = before_delivery(*lot, day, QStringLiteral("at")))
                    return early;
        } else if (const auto pail = book::fetch(workbook, *input.pail); pail && day < pail->sealed_on) {
            return no(Why::before_start, QStringLiteral("at"), {fact(pail->sealed_on)});
        }
    }
    return {};
}

/// A batch whose liquid is still all in its tank.
Outcome<book::Batch> mix_in_tank(const book::Workbook& workbook, BatchId id) {
    auto batch = mixed_batch(workbook, id);
    if (batch && !book::soaks_of(workbook, id).empty())
        return refuse(Why::undo_blocked, {}, {batch->code});
    return batch;
}

} // namespace

MixResult mix_result(const book::Workbook& workbook, const book::Batch& batch, maths::Mixture liquid) {
    MixResult result;
    result.total = liquid.total;
    result.acid = liquid.acid;
    result.strength = liquid.strength();
    result.wanted = batch.strength;
    if (is_right(result.strength, result.wanted))
        return result;
    maths::Fraction assay;
    for (const book::BatchInput& input : book::inputs_of(workbook, batch.id))
        if (input.lot)
            if (const auto lot = book::fetch(workbook, *input.lot); lot && lot->material == book::Material::acid)
                assay = *lot->assay;
    for (const book::MaterialLot& lot : book::lots_newest_first(workbook))
        if (assay.count == 0 && lot.material == book::Material::acid && !lot.finished_on)
            assay = *lot.assay;
    const auto tank = book::fetch(workbook, batch.tank);
    const auto correction = maths::correct(liquid, batch.strength, assay.count > 0 ? assay : maths::ppm(1'000'000), tank ? tank->capacity : std::nullopt);
    if (!correction)
        return result;
    if (correction->add.acid.count > 0 && assay.count > 0)
        result.add_acid = correction->add.acid;
    if (correction->add.glycerine.count > 0)
        result.add_glycerine = correction->add.glycerine;
    result.correction_fits = correction->fits();
    return result;
}

Outcome<MixResult> reckon_weighed(const book::Workbook& workbook, const WeighedMix& mix) {
    const auto batch = open_batch(workbook, mix.batch);
    if (!batch)
        return unexpected(batch.error());
    const auto inputs = weighed_inputs(workbook, *batch, mix);
    if (!inputs)
        return unexpected(inputs.error());
    const maths::Mixture liquid = sum_of(*inputs);
    if (const Not over = overfills(workbook, *batch, liquid.total, mass_field(0)))
        return because(over);
    return mix_result(workbook, *batch, liquid);
}

Outcome<MixResult> weigh_mix(book::Workbook& workbook, const WeighedMix& mix, const book::Doing& doing, const Confirmed& confirmed) {
    return perform(workbook, batch_piece("mix_weighed", {}), doing, [&](book::Writing& writing) -> Outcome<MixResult> {
        const book::Workbook& book = writing.workbook();
        auto batch = open_batch(book, mix.batch);
        if (!batch)
            return unexpected(batch.error());
        const auto result = reckon_weighed(book, mix);
        if (!result)
            return unexpected(result.error());
        auto inputs = weighed_inputs(book, *batch, mix);
        if (batch->mixed) // a second pressing of the same button, or a correction in the wrong form
            return refuse(*inputs == book::inputs_of(book, batch->id) ? Why::nothing_changed : Why::reason_missing, QStringLiteral("reason"));
        const auto at = checked_time(mix.at, doing, confirmed);
        if (!at)
            return unexpected(at.error());
        if (const Not early = before_its_inputs(book, *inputs, at->local_day()))
            return because(early);
        const maths::Fraction off = result->strength - batch->strength;
        if (off > odd_strength || -off > odd_strength)
            if (const Not odd = no_unless(confirmed, Why::strength_off, {}, {fact(result->strength), fact(batch->strength)}))
                return because(odd);
        writing.name(1, batch->code);
        for (const book::BatchInput& input : *inputs)
            book::update(writing, input);
        batch->mixed = *at;
        book::update(writing, *batch);
        return *result;
    });
}

Outcome<MixResult> add_to_mix(book::Workbook& workbook, const MixCorrection& entry, const book::Doing& doing) {
    return perform(workbook, batch_piece("mix_corrected", {}), doing, [&](book::Writing& writing) -> Outcome<MixResult> {
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
        const auto usable = usable_lot(book, *entry.lot, {acid ? book::Material::acid : book::Material::glycerine, mass->count}, field);
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

Outcome<MixResult> correct_weighed(book::Workbook& workbook, BatchInputId id, maths::Mass mass, const book::Doing& doing) {
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
