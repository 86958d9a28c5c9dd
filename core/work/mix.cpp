// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/mix.h"

#include "core/book/queries/batches.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/maths/sampling.h"
#include "core/maths/yield.h"
#include "core/work/batch_checks.h"
#include "core/work/figures.h"
#include "core/work/lot_stock.h"
#include "core/work/pail_choice.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

constexpr int furthest_plan_days = 730;

/// Everything that a plan names, looked up and reckoned.
struct MixReckoned {
    MixFigures figures;
    book::Vessel tank;
    book::StripKind kind;
    std::optional<book::MaterialLot> acid_lot;
    std::optional<book::MaterialLot> glycerine_lot;
    PailChoice pails;
};

/// The refusal for a sum without an answer.
Refusal refusal_of(maths::Unanswerable why, const MixFigures& figures, maths::Fraction assay, const PailChoice& pails) {
    using maths::Unanswerable;
    const QString amount = QStringLiteral("from_amount");
    const auto old = maths::mixture_of(pails.inputs());
    const maths::Fraction got = old ? old->strength() : maths::Fraction{};
    switch (why) {
    case Unanswerable::assay_below_strength:
        return {Why::assay_below_strength, QStringLiteral("acid_lot"), {fact(assay), fact(figures.strength)}, false};
    case Unanswerable::overfills_vessel:
        return {Why::too_small, amount, {fact(pails.total())}, false};
    case Unanswerable::mix_too_strong:
        return {Why::too_strong_without_water, QStringLiteral("pails"), {fact(got)}, false};
    case Unanswerable::mix_too_weak:
        return {Why::strength_off, QStringLiteral("pails"), {fact(got), fact(figures.strength)}, false};
    case Unanswerable::too_large:
        return {Why::too_large, amount, {fact(most_mass)}, false};
    default:
        return {Why::not_positive, amount, {}, false};
    }
}

/// Fresh material beside the pails for what is at hand: all of the acid, or all of the glycerine.
maths::Answer<maths::Amounts> beside_pails(MixFrom from, maths::Mass at_hand, maths::Fraction strength,
                                           maths::Fraction assay, const PailChoice& pails) {
    const bool acid_first = from == MixFrom::acid_at_hand;
    std::vector<maths::Input> inputs = pails.inputs();
    inputs.push_back({at_hand, acid_first ? assay : maths::Fraction{}});
    const auto mix = maths::mixture_of(inputs);
    if (!mix)
        return unexpected(mix.error());
    const auto correction = maths::correct(*mix, strength, assay);
    maths::Amounts add;
    if (correction)
        add = correction->add;
    else if (correction.error() != maths::Unanswerable::nothing_to_correct)
        return unexpected(correction.error());
    if (acid_first)
        return add.acid.count > 0 ? maths::Answer<maths::Amounts>(unexpected(maths::Unanswerable::mix_too_weak))
                                  : maths::Amounts{at_hand, add.glycerine};
    return add.glycerine.count > 0 ? maths::Answer<maths::Amounts>(unexpected(maths::Unanswerable::mix_too_strong))
                                   : maths::Amounts{add.acid, at_hand};
}

maths::Answer<maths::Amounts> fresh_amounts(MixFrom from, maths::Mass amount, maths::Fraction strength,
                                            maths::Fraction assay, const PailChoice& pails) {
    const bool none = pails.pails.empty();
    switch (from) {
    case MixFrom::acid_at_hand:
        return none ? maths::amounts_from_acid(amount, strength, assay)
                    : beside_pails(from, amount, strength, assay, pails);
    case MixFrom::glycerine_at_hand:
        return none ? maths::amounts_from_glycerine(amount, strength, assay)
                    : beside_pails(from, amount, strength, assay, pails);
    case MixFrom::total:
    case MixFrom::strips_wanted:
        break;
    }
    // Pails that are all of the mix and right already need nothing.
    if (const auto old = maths::mixture_of(pails.inputs());
        old && old->total == amount && is_right(old->strength(), strength))
        return maths::Amounts{};
    return maths::amounts_with_pails(amount, strength, assay, pails.inputs());
}

/// The amount that the sum starts from: what was typed, or what the strips wanted take up.
Outcome<maths::Mass> start_amount(const MixPlan& plan, const book::StripKind& kind, const PailChoice& pails) {
    if (plan.from != MixFrom::strips_wanted) {
        const bool pails_only = plan.from == MixFrom::total && !plan.amount && !pails.pails.empty();
        return checked_mass(pails_only ? pails.total() : plan.amount, QStringLiteral("from_amount"), most_mass);
    }
    const auto strips = checked_count(plan.strips, QStringLiteral("strips"), 10 * most_count);
    if (!strips)
        return unexpected(strips.error());
    const auto uptake = maths::uptake(kind.target, kind.dry);
    const auto liquid =
        uptake ? maths::liquid_for_strips(*strips, *uptake) : maths::Answer<maths::Mass>(unexpected(uptake.error()));
    return checked_mass(liquid ? *liquid : most_mass + most_mass, QStringLiteral("strips"), most_mass);
}

Outcome<maths::Fraction> wanted_strength(const book::Workbook& workbook, const MixPlan& plan) {
    const QString field = QStringLiteral("strength");
    if (!plan.strength) {
        const auto said = needed(workbook, Figure::strength, field);
        return said ? Outcome<maths::Fraction>(maths::Fraction{*said}) : unexpected(said.error());
    }
    if (plan.strength->count <= 0)
        return refuse(Why::not_positive, field);
    if (plan.strength->count < info(Figure::strength).least)
        return refuse(Why::too_small, field, {fact(maths::Fraction{info(Figure::strength).least})});
    if (plan.strength->count > info(Figure::strength).most)
        return refuse(Why::too_large, field, {fact(maths::Fraction{info(Figure::strength).most})});
    return *plan.strength;
}

template <class Record>
Outcome<Record> named_record(const book::Workbook& workbook, std::optional<book::Id<Record>> id, const QString& field) {
    if (!id || !*id)
        return refuse(Why::missing, field);
    const auto record = book::fetch(workbook, *id);
    if (!record || !record->active)
        return refuse(Why::not_found, field, record ? QStringList{fact(record->name)} : QStringList{});
    return *record;
}

InContainers in_containers(maths::Mass amount, const std::optional<book::MaterialLot>& lot) {
    InContainers parts{amount, std::nullopt, 0, amount};
    if (!lot || !lot->container_amount)
        return parts;
    parts.container = maths::Mass{*lot->container_amount};
    if (const auto split = maths::containers_for(amount, *parts.container)) {
        parts.whole = split->whole;
        parts.rest = split->last_part;
    }
    return parts;
}

/// The lot that gives `amount`; none is needed for nothing.
Outcome<std::optional<book::MaterialLot>> giving_lot(const book::Workbook& workbook, std::optional<LotId> id,
                                                     book::Material material, maths::Mass amount) {
    const QString field =
        material == book::Material::acid ? QStringLiteral("acid_lot") : QStringLiteral("glycerine_lot");
    if (amount.count == 0)
        return std::optional<book::MaterialLot>{};
    if (!id || !*id)
        return refuse(Why::missing, field);
    const auto lot = usable_lot(workbook, *id, {material, amount.count}, field);
    return lot ? Outcome<std::optional<book::MaterialLot>>(*lot) : unexpected(lot.error());
}

/// The assay of the acid lot named; pure acid while none is, to learn whether any acid is needed at all.
Outcome<maths::Fraction> assay_named(const book::Workbook& workbook, std::optional<LotId> id) {
    if (!id || !*id)
        return maths::ppm(1'000'000);
    const auto lot = usable_lot(workbook, *id, {book::Material::acid, 0}, QStringLiteral("acid_lot"));
    return lot ? Outcome<maths::Fraction>(*lot->assay) : unexpected(lot.error());
}

Outcome<MixReckoned> reckon(const book::Workbook& workbook, const MixPlan& plan) {
    MixReckoned reckoned;
    const auto strength = wanted_strength(workbook, plan);
    if (!strength)
        return unexpected(strength.error());
    const auto tank = named_record<book::Vessel>(workbook, plan.tank, QStringLiteral("tank"));
    if (!tank)
        return unexpected(tank.error());
    if (tank->kind != book::VesselKind::tank)
        return refuse(Why::not_found, QStringLiteral("tank"), {fact(tank->name)});
    const auto kind = named_record<book::StripKind>(workbook, plan.strip_kind, QStringLiteral("strip_kind"));
    if (!kind)
        return unexpected(kind.error());
    auto pails = chosen_pails(workbook, plan);
    if (!pails)
        return unexpected(pails.error());
    const auto amount = start_amount(plan, *kind, *pails);
    if (!amount)
        return unexpected(amount.error());
    const auto assay = assay_named(workbook, plan.acid_lot);
    if (!assay)
        return unexpected(assay.error());

    MixFigures& figures = reckoned.figures;
    figures.strength = *strength;
    figures.strength_anhydrous = maths::anhydrous_from_dihydrate(*strength).value_or(maths::Fraction{});
    const auto fresh = fresh_amounts(plan.from, *amount, *strength, *assay, *pails);
    if (!fresh)
        return unexpected(refusal_of(fresh.error(), figures, *assay, *pails));
    const auto acid_lot = giving_lot(workbook, plan.acid_lot, book::Material::acid, fresh->acid);
    if (!acid_lot)
        return unexpected(acid_lot.error());
    const auto glycerine_lot = giving_lot(workbook, plan.glycerine_lot, book::Material::glycerine, fresh->glycerine);
    if (!glycerine_lot)
        return unexpected(glycerine_lot.error());

    figures.acid = in_containers(fresh->acid, *acid_lot);
    figures.glycerine = in_containers(fresh->glycerine, *glycerine_lot);
    figures.from_pails = pails->total();
    figures.total = fresh->total() + figures.from_pails;
    const auto fill = maths::fill_of(figures.total, *tank->capacity);
    if (!fill || !fill->fits())
        return refuse(Why::overfills_tank, QStringLiteral("from_amount"), {fact(figures.total), fact(*tank->capacity)});
    figures.tank_room = fill->room;
    if (const auto uptake = maths::uptake(kind->target, kind->dry)) {
        const auto strips = maths::strips_by_mass(figures.total, *uptake);
        if (strips && *strips > 0 && *strips <= 10 * most_count) {
            figures.strips = static_cast<int>(*strips);
            if (const auto left = maths::most_left(figures.total, *strips, *uptake))
                figures.most_left = *left;
        }
    }
    reckoned.tank = *tank;
    reckoned.kind = *kind;
    reckoned.acid_lot = *acid_lot;
    reckoned.glycerine_lot = *glycerine_lot;
    reckoned.pails = std::move(*pails);
    return reckoned;
}

/// What is asked once before a plan is written.
Not odd_plan(const book::Workbook& workbook, const MixReckoned& reckoned, maths::Day day, const book::Doing& doing,
             const Confirmed& confirmed) {
    const auto ago = maths::days_between(day, doing.today());
    if (-ago > furthest_plan_days)
        return no(Why::too_large, QStringLiteral("planned_on"),
                  {fact(maths::days_after(doing.today(), furthest_plan_days))});
    if (ago > 365)
        if (const Not asked = no_unless(confirmed, Why::long_ago, QStringLiteral("planned_on"), {fact(ago)}))
            return asked;
    if (reckoned.acid_lot)
        if (const Not asked = lot_past_date(*reckoned.acid_lot, day, QStringLiteral("acid_lot"), confirmed))
            return asked;
    if (reckoned.glycerine_lot)
        if (const Not asked = lot_past_date(*reckoned.glycerine_lot, day, QStringLiteral("glycerine_lot"), confirmed))
            return asked;
    if (const auto others = book::batches_in_tank(workbook, reckoned.tank.id); !others.empty())
        return no_unless(confirmed, Why::tank_in_use, QStringLiteral("tank"),
                         {fact(reckoned.tank.name), others.front().code});
    return {};
}

} // namespace

Outcome<MixFigures> reckon_mix(const book::Workbook& workbook, const MixPlan& plan, maths::Day) {
    const auto reckoned = reckon(workbook, plan);
    return reckoned ? Outcome<MixFigures>(reckoned->figures) : unexpected(reckoned.error());
}

Outcome<PlannedBatch> plan_mix(book::Workbook& workbook, const MixPlan& plan, const book::Doing& doing,
                               const Confirmed& confirmed) {
    return perform(
        workbook, {QStringLiteral("mix_planned"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<PlannedBatch> {
            const auto reckoned = reckon(writing.workbook(), plan);
            if (!reckoned)
                return unexpected(reckoned.error());
            const maths::Day day = plan.planned_on.value_or(doing.today());
            if (const Not odd = odd_plan(writing.workbook(), *reckoned, day, doing, confirmed))
                return because(odd);
            const auto ceiling = needed(writing.workbook(), Figure::tank_ceiling);
            if (!ceiling)
                return unexpected(ceiling.error());

            book::Batch batch;
            batch.code = next_code(writing, 'B');
            batch.tank = reckoned->tank.id;
            batch.strip_kind = reckoned->kind.id;
            batch.planned_on = day;
            batch.strength = reckoned->figures.strength;
            batch.ceiling = {*ceiling};
            writing.name(1, batch.code);
            batch.id = book::insert(writing, batch);
            const auto put_in = [&](std::optional<LotId> lot, std::optional<PailId> pail, maths::Mass planned) {
                book::BatchInput input;
                input.batch = batch.id;
                input.lot = lot;
                input.pail = pail;
                input.planned = planned;
                book::insert(writing, input);
            };
            if (reckoned->acid_lot)
                put_in(reckoned->acid_lot->id, std::nullopt, reckoned->figures.acid.total);
            if (reckoned->glycerine_lot)
                put_in(reckoned->glycerine_lot->id, std::nullopt, reckoned->figures.glycerine.total);
            for (const book::Pail& pail : reckoned->pails.pails)
                put_in(std::nullopt, pail.id, pail.mass);
            return PlannedBatch{batch.id, batch.code, reckoned->figures};
        });
}

} // namespace soakbook::work
