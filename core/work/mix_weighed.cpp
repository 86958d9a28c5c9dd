// SPDX-License-Identifier: GPL-3.0-or-later
// Mix, the second half: what was really weighed in.
#include "core/book/queries/batches.h"
#include "core/book/records/pail.h"
#include "core/work/batch_checks.h"
#include "core/work/lot_stock.h"
#include "core/work/mix.h"
#include "core/work/mix_inputs.h"
#include "core/work/perform.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// How far weighed amounts may be off the plan's strength unasked: half a per cent point. Common practice, no source.
constexpr maths::Fraction odd_strength = maths::ppm(5'000);

QString mass_field(std::size_t place) {
    return QStringLiteral("inputs/%1/mass").arg(static_cast<qulonglong>(place));
}

/// The inputs of a batch with the weights of a form in them.
Outcome<std::vector<book::BatchInput>> weighed_inputs(const book::Workbook& workbook, const book::Batch& batch,
                                                      const WeighedMix& mix) {
    auto inputs = book::inputs_of(workbook, batch.id);
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        book::BatchInput& input = inputs[i];
        const auto said =
            std::find_if(mix.masses.begin(), mix.masses.end(), [&](const auto& m) { return m.first == input.id; });
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

} // namespace

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

Outcome<MixResult> weigh_mix(book::Workbook& workbook, const WeighedMix& mix, const book::Doing& doing,
                             const Confirmed& confirmed) {
    return perform(
        workbook, {QStringLiteral("mix_weighed"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<MixResult> {
            const book::Workbook& book = writing.workbook();
            auto batch = open_batch(book, mix.batch);
            if (!batch)
                return unexpected(batch.error());
            const auto result = reckon_weighed(book, mix);
            if (!result)
                return unexpected(result.error());
            auto inputs = weighed_inputs(book, *batch, mix);
            if (batch->mixed) // a second pressing of the same button, or a correction in the wrong form
                return refuse(*inputs == book::inputs_of(book, batch->id) ? Why::nothing_changed : Why::reason_missing,
                              QStringLiteral("reason"));
            const auto at = checked_time(mix.at, doing, confirmed);
            if (!at)
                return unexpected(at.error());
            if (const Not early = before_its_inputs(book, *inputs, at->local_day()))
                return because(early);
            const maths::Fraction off = result->strength - batch->strength;
            if (off > odd_strength || -off > odd_strength)
                if (const Not odd =
                        no_unless(confirmed, Why::strength_off, {}, {fact(result->strength), fact(batch->strength)}))
                    return because(odd);
            writing.name(1, batch->code);
            for (const book::BatchInput& input : *inputs)
                book::update(writing, input);
            batch->mixed = *at;
            book::update(writing, *batch);
            return *result;
        });
}

} // namespace soakbook::work
