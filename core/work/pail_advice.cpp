// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pail_advice.h"

#include "core/book/queries/shelf_pails.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/maths/cost.h"
#include "core/maths/pails.h"
#include "core/maths/sampling.h"
#include "core/maths/yield.h"
#include "core/work/figures.h"
#include "core/work/lot_stock.h"
#include "core/work/pail_choice.h"

#include <algorithm>
#include <set>

namespace soakbook::work {

namespace {

/// The pails that stand in the store, as the page shows them and as the choice takes them.
struct StandingPails {
    std::vector<PailAdviceLine> lines;
    std::vector<maths::PailAtHand> at_hand;
};

bool stands(const book::PailRow& row) {
    return !row.pail.void_reason && !row.pail.discarded_on && row.used_in.isEmpty() && row.planned_in.isEmpty();
}

StandingPails standing_pails(const book::Workbook& workbook) {
    StandingPails standing;
    const std::vector<book::PailRow> rows = book::all_pails(workbook);
    std::set<qint64> there;
    for (const book::PailRow& row : rows)
        if (stands(row))
            there.insert(row.pail.id.value);
    for (const book::PailRow& row : rows) {
        if (!stands(row))
            continue;
        const book::Pail& pail = row.pail;
        PailAdviceLine line{pail.id, pail.code, pail.mass, pail.strength, pail.oldest_on, PailIs::left_over, {}};
        maths::PailAtHand one{pail.mass, pail.strength, pail.oldest_on, std::nullopt};
        if (pail.used_in_part_on || !pail.strength) {
            line.is = PailIs::strength_unknown;
            one.strength.reset();
        }
        const std::vector<book::Pail> set = set_of(workbook, pail);
        if (set.size() > 1 && one.strength)
            one.set = pail.pour.value;
        for (const book::Pail& other : set) {
            if (other.id != pail.id)
                line.set << other.code;
            if (!one.strength)
                continue;
            if (there.count(other.id.value) == 0)
                line.is = PailIs::set_not_whole;
            else if (other.used_in_part_on || !other.strength)
                line.is = PailIs::strength_unknown;
        }
        if (line.is != PailIs::left_over)
            one.strength.reset();
        standing.lines.push_back(line);
        standing.at_hand.push_back(one);
    }
    return standing;
}

/// What the plan comes to, before any pail.
struct PailGround {
    maths::PailWish wish;
    std::optional<book::MaterialLot> acid;
    std::optional<book::MaterialLot> glycerine;
};

Outcome<maths::Mass> wanted_total(const book::Workbook& workbook, const MixPlan& plan) {
    if (plan.from == MixFrom::total)
        return checked_mass(plan.amount, QStringLiteral("from_amount"), most_mass);
    const auto strips = checked_count(plan.strips, QStringLiteral("strips"), 10 * most_count);
    if (!strips)
        return unexpected(strips.error());
    const auto kind = plan.strip_kind ? book::fetch(workbook, *plan.strip_kind) : std::nullopt;
    if (!kind)
        return refuse(Why::missing, QStringLiteral("strip_kind"));
    const auto taken = maths::uptake(kind->target, kind->dry);
    const auto liquid =
        taken ? maths::liquid_for_strips(*strips, *taken) : maths::Answer<maths::Mass>(unexpected(taken.error()));
    return checked_mass(liquid ? *liquid : most_mass + most_mass, QStringLiteral("strips"), most_mass);
}

Outcome<std::optional<book::MaterialLot>> chosen_lot(const book::Workbook& workbook, std::optional<LotId> id,
                                                     book::Material material, const QString& where) {
    if (!id || !*id)
        return std::optional<book::MaterialLot>{};
    const auto lot = usable_lot(workbook, *id, {material, 0}, where);
    return lot ? Outcome<std::optional<book::MaterialLot>>(*lot) : unexpected(lot.error());
}

Outcome<maths::Mass> tank_holds(const book::Workbook& workbook, std::optional<VesselId> id) {
    const auto tank = id && *id ? book::fetch(workbook, *id) : std::nullopt;
    if (!tank)
        return refuse(Why::missing, QStringLiteral("tank"));
    if (tank->kind != book::VesselKind::tank || !tank->capacity)
        return refuse(Why::not_found, QStringLiteral("tank"), {fact(tank->name)});
    return *tank->capacity;
}

Outcome<PailGround> pail_ground(const book::Workbook& workbook, const MixPlan& plan) {
    PailGround ground;
    const auto total = wanted_total(workbook, plan);
    if (!total)
        return unexpected(total.error());
    const auto strength = plan.strength ? Outcome<qint64>(plan.strength->count)
                                        : needed(workbook, Figure::strength, QStringLiteral("strength"));
    if (!strength)
        return unexpected(strength.error());
    const auto capacity = tank_holds(workbook, plan.tank);
    if (!capacity)
        return unexpected(capacity.error());
    const auto acid = chosen_lot(workbook, plan.acid_lot, book::Material::acid, QStringLiteral("acid_lot"));
    if (!acid)
        return unexpected(acid.error());
    const auto glycerine =
        chosen_lot(workbook, plan.glycerine_lot, book::Material::glycerine, QStringLiteral("glycerine_lot"));
    if (!glycerine)
        return unexpected(glycerine.error());
    ground.acid = *acid;
    ground.glycerine = *glycerine;
    maths::PailWish& wish = ground.wish;
    wish.total = *total;
    wish.strength = maths::Fraction{*strength};
    wish.capacity = *capacity;
    wish.assay = ground.acid ? ground.acid->assay.value_or(maths::Fraction{}) : maths::ppm(1'000'000);
    // A lot that was counted short can stand below nothing.
    if (ground.acid)
        wish.acid = maths::Mass{std::max<qint64>(left_of(workbook, *ground.acid), 0)};
    if (ground.glycerine)
        wish.glycerine = maths::Mass{std::max<qint64>(left_of(workbook, *ground.glycerine), 0)};
    return ground;
}

Refusal why_no_choice(maths::Unanswerable why, const PailGround& ground) {
    const maths::PailWish& wish = ground.wish;
    const auto alone = maths::amounts_from_total(wish.total, wish.strength, wish.assay);
    const auto short_of = [](const QString& where, const std::optional<book::MaterialLot>& lot,
                             std::optional<maths::Mass> left, maths::Mass wanted) {
        return Refusal{Why::lot_short,
                       where,
                       {lot ? fact(lot->name) : QString(), fact(left.value_or(maths::Mass{})), fact(wanted)},
                       false};
    };
    switch (why) {
    case maths::Unanswerable::overfills_vessel:
        return {Why::overfills_tank, QStringLiteral("from_amount"), {fact(wish.total), fact(wish.capacity)}, false};
    case maths::Unanswerable::assay_below_strength:
        return {Why::assay_below_strength, QStringLiteral("acid_lot"), {fact(wish.assay), fact(wish.strength)}, false};
    case maths::Unanswerable::glycerine_short:
        return short_of(QStringLiteral("glycerine_lot"), ground.glycerine, wish.glycerine,
                        alone ? alone->glycerine : maths::Mass{});
    case maths::Unanswerable::acid_short:
    case maths::Unanswerable::no_choice_fits:
        return short_of(QStringLiteral("acid_lot"), ground.acid, wish.acid, alone ? alone->acid : maths::Mass{});
    case maths::Unanswerable::out_of_range:
        return {Why::too_large, QStringLiteral("strength"), {fact(maths::ppm(info(Figure::strength).most))}, false};
    default:
        return {Why::too_large, QStringLiteral("from_amount"), {fact(most_mass)}, false};
    }
}

PailIs pail_is(maths::PailPlace place) {
    switch (place) {
    case maths::PailPlace::used:
        return PailIs::used;
    case maths::PailPlace::strength_unknown:
        return PailIs::strength_unknown;
    case maths::PailPlace::too_heavy:
        return PailIs::too_heavy;
    case maths::PailPlace::too_strong:
        return PailIs::too_strong;
    case maths::PailPlace::too_weak:
        return PailIs::too_weak;
    case maths::PailPlace::left_over:
        break;
    }
    return PailIs::left_over;
}

void take_over(PailAdvice& advice, StandingPails& standing, const maths::PailChoice& choice) {
    for (std::size_t i = 0; i < standing.lines.size(); ++i)
        if (standing.lines[i].is != PailIs::set_not_whole)
            standing.lines[i].is = pail_is(choice.places[i]);
    advice.lines = std::move(standing.lines);
    advice.total = choice.mix.total;
    advice.strength = choice.mix.strength();
    advice.old_liquid = choice.old_liquid;
    advice.acid = choice.fresh.acid;
    advice.glycerine = choice.fresh.glycerine;
    advice.proved = choice.proved;
    advice.could_be_more = choice.could_be_more;
    if (advice.lines.empty())
        advice.says = PailAdviceSays::no_pails;
    else
        advice.says = choice.old_liquid.count > 0 ? PailAdviceSays::advised : PailAdviceSays::none_fits;
}

/// What so much of a lot costs; nothing when the lot or its cost is not known.
std::optional<maths::Money> money_for(maths::Mass mass, const std::optional<book::MaterialLot>& lot) {
    if (mass.count == 0)
        return maths::Money{};
    if (!lot || !lot->cost)
        return std::nullopt;
    const auto cost = maths::cost_of(mass, *lot->cost, maths::Mass{lot->amount});
    return cost ? std::optional<maths::Money>(*cost) : std::nullopt;
}

} // namespace

std::vector<PailId> PailAdvice::used() const {
    std::vector<PailId> ids;
    for (const PailAdviceLine& line : lines)
        if (line.is == PailIs::used)
            ids.push_back(line.id);
    return ids;
}

Outcome<PailAdvice> pail_advice(const book::Workbook& workbook, const MixPlan& plan) {
    PailAdvice advice;
    if (plan.from != MixFrom::total && plan.from != MixFrom::strips_wanted) {
        advice.says = PailAdviceSays::not_applicable;
        return advice;
    }
    const auto ground = pail_ground(workbook, plan);
    if (!ground)
        return unexpected(ground.error());
    StandingPails standing = standing_pails(workbook);
    const auto choice = maths::choose_pails(standing.at_hand, ground->wish);
    if (!choice)
        return unexpected(why_no_choice(choice.error(), *ground));
    take_over(advice, standing, *choice);
    const auto alone = maths::amounts_from_total(ground->wish.total, ground->wish.strength, ground->wish.assay);
    if (alone) {
        advice.saves_acid = alone->acid - choice->fresh.acid;
        advice.saves_glycerine = alone->glycerine - choice->fresh.glycerine;
        const auto acid = money_for(advice.saves_acid, ground->acid);
        const auto glycerine = money_for(advice.saves_glycerine, ground->glycerine);
        if (acid && glycerine)
            advice.saves_money = *acid + *glycerine;
    }
    return advice;
}

Outcome<PailAdvice> pails_only_advice(const book::Workbook& workbook, VesselId tank) {
    const auto capacity = tank_holds(workbook, tank);
    if (!capacity)
        return unexpected(capacity.error());
    PailAdvice advice;
    StandingPails standing = standing_pails(workbook);
    const auto choice = maths::choose_pails_only(standing.at_hand, *capacity);
    if (choice) {
        take_over(advice, standing, *choice);
        return advice;
    }
    if (choice.error() != maths::Unanswerable::no_choice_fits)
        return refuse(Why::too_large, QStringLiteral("tank"), {fact(most_mass)});
    for (PailAdviceLine& line : standing.lines)
        if (line.is == PailIs::left_over)
            line.is = PailIs::too_heavy;
    advice.lines = std::move(standing.lines);
    advice.says = advice.lines.empty() ? PailAdviceSays::no_pails : PailAdviceSays::none_fits;
    return advice;
}

} // namespace soakbook::work
