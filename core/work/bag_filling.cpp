// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bag_filling.h"

#include "core/book/queries/soaks.h"
#include "core/maths/balance.h"
#include "core/maths/keeping.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/figures.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// The first day on which strips of that soak, or of any of the batch, can be in a bag.
Outcome<maths::Day> first_day(const book::Workbook& workbook, const book::Batch& batch, std::optional<SoakId> soak) {
    std::optional<maths::Day> first;
    for (const book::Soak& one : book::soaks_of(workbook, batch.id))
        if (!soak || one.id == *soak)
            first = std::min(first.value_or(one.started.local_day()), one.started.local_day());
    if (soak && !first)
        return refuse(Why::not_found, QStringLiteral("soak"));
    return first.value_or(batch.mixed->local_day());
}

/// When only one bin still has strips, the bag is of that one, whether the form says so or not.
std::optional<SoakId> only_soak_left(const book::Workbook& workbook, BatchId batch, maths::Day sealed) {
    const Bagged bagged = bagged_of(workbook, batch);
    std::optional<SoakId> only;
    for (const book::Soak& soak : book::soaks_of(workbook, batch)) {
        if (soak.started.local_day() > sealed || bagged.by_soak.at(soak.id.value) >= soak.strips)
            continue;
        if (only)
            return std::nullopt;
        only = soak.id;
    }
    return only;
}

/// The moment of bagging, as near as it is known.
maths::Instant moment_of(const Filling& filling, const book::Doing& doing) {
    if (filling.sealed == doing.today())
        return doing.at;
    const auto noon = std::chrono::duration_cast<std::chrono::milliseconds>(filling.sealed.time_since_epoch() +
                                                                            std::chrono::hours(12));
    return {noon.count() - doing.at.offset_minutes * 60'000, doing.at.offset_minutes};
}

} // namespace

Not date_bag(Filling& filling) {
    const QString field = QStringLiteral("sealed_on");
    const auto use_by = maths::use_by(filling.sealed, filling.use_months);
    if (!use_by)
        return no(Why::unreadable, field);
    filling.use_by = *use_by;
    filling.rest_until.reset();
    if (!filling.rest_days)
        return {};
    const auto rest_until = maths::rest_until(filling.sealed, *filling.rest_days);
    if (!rest_until)
        return no(Why::unreadable, field);
    filling.rest_until = *rest_until;
    return {};
}

Outcome<Filling> filling_of(const book::Workbook& workbook, BatchId id, std::optional<SoakId> soak,
                            std::optional<maths::Day> sealed, const book::Doing& doing, const Confirmed& confirmed) {
    Filling filling;
    const auto batch = mixed_batch(workbook, id);
    if (!batch)
        return unexpected(batch.error());
    filling.batch = *batch;
    filling.soak = soak && *soak ? soak : std::nullopt;
    filling.kind = *book::fetch(workbook, batch->strip_kind);
    const auto earliest = first_day(workbook, *batch, filling.soak);
    if (!earliest)
        return unexpected(earliest.error());
    const auto day = checked_day(sealed, doing, confirmed, *earliest, QStringLiteral("sealed_on"));
    if (!day)
        return unexpected(day.error());
    filling.sealed = *day;
    if (!filling.soak)
        filling.soak = only_soak_left(workbook, id, filling.sealed);
    const auto months = needed(workbook, Figure::use_within_months, QStringLiteral("sealed_on"));
    if (!months)
        return unexpected(months.error());
    filling.use_months = static_cast<int>(*months);
    if (const auto rest = figure(workbook, Figure::rest_days))
        filling.rest_days = static_cast<int>(*rest);
    if (const Not bad = date_bag(filling))
        return because(bad);
    filling.weights = strip_weights(workbook, *batch, filling.soak, filling.sealed);
    return filling;
}

Not not_weighed_well(const Filling& filling, const Confirmed& confirmed) {
    if (!filling.weights.strip)
        return no_unless(confirmed, Why::no_weigh_in);
    if (filling.weights.verdict == WeighVerdict::light)
        return no_unless(confirmed, Why::light_strips, {}, {fact(*filling.weights.strip), fact(filling.weights.least)});
    return {};
}

Not odd_net(const Filling& filling, int strips, std::optional<maths::Mass> net, const QString& field,
            const Confirmed& confirmed) {
    if (!net)
        return {};
    if (const auto checked = checked_mass(net, field, most_mass); !checked)
        return checked.error();
    if (!maths::liquid_in_bag(*net, strips, filling.weights.dry))
        return no(Why::lighter_than_dry, field, {fact(*net), fact(filling.weights.dry * strips)});
    if (!filling.weights.strip)
        return {};
    const maths::Mass expected = *filling.weights.strip * strips;
    const maths::Mass off = *net > expected ? *net - expected : expected - *net;
    return off * 10 > expected ? no_unless(confirmed, Why::odd_bag_weight, field, {fact(*net), fact(expected)}) : Not{};
}

void fill(book::Bag& bag, const Filling& filling, int strips, std::optional<maths::Mass> net) {
    bag.batch = filling.batch.id;
    bag.strip_kind = filling.kind.id;
    bag.soak = filling.soak;
    bag.packed = strips;
    bag.net = net;
    bag.dry = filling.weights.dry;
    bag.strip = filling.weights.strip;
    bag.acid_per_strip = filling.weights.acid;
    bag.strength = filling.weights.strength;
    bag.sealed_on = filling.sealed;
    bag.rest_days = filling.rest_days;
    bag.rest_until = filling.rest_until;
    bag.use_months = filling.use_months;
    bag.use_by = filling.use_by;
}

BagFigures figures_of(const book::Workbook& workbook, const Filling& filling, int bags, int strips, int last_bag,
                      int per_bag) {
    BagFigures figures;
    figures.bags = bags;
    figures.strips = strips;
    figures.last_bag = last_bag;
    const Bagged bagged = bagged_of(workbook, filling.batch.id);
    figures.still_to_bag = bagged.soaked - bagged.bagged - strips;
    figures.rest_until = filling.rest_until;
    figures.use_by = filling.use_by;
    figures.strip = filling.weights.strip;
    figures.dry = filling.weights.dry;
    figures.strength = filling.weights.strength;
    figures.acid_per_strip = filling.weights.acid;
    if (filling.weights.strip)
        figures.expected_net = *filling.weights.strip * per_bag;
    figures.verdict = filling.weights.verdict;
    return figures;
}

void end_bagged_soaks(book::Writing& writing, const Filling& filling) {
    const Bagged bagged = bagged_of(writing.workbook(), filling.batch.id);
    for (book::Soak soak : book::soaks_of(writing.workbook(), filling.batch.id)) {
        if (soak.ended || bagged.by_soak.at(soak.id.value) < soak.strips)
            continue;
        const maths::Instant out = moment_of(filling, writing.doing());
        soak.ended = out < soak.started ? soak.started : out;
        book::update(writing, soak);
    }
}

} // namespace soakbook::work
