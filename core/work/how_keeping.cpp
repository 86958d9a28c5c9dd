// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/how_keeping.h"

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/maths/mixing.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/label_hazard.h"
#include "core/work/optional_fact.h"

namespace soakbook::work {

namespace {

QString estimate_fact(const std::optional<double>& estimate) {
    return estimate ? number_fact(*estimate, 1) : QString();
}

How acid_of(maths::Mass strip, maths::Mass dry, maths::Fraction strength, maths::Mass acid) {
    const auto anhydrous = maths::anhydrous_from_dihydrate(acid);
    return {HowKind::acid_in_strip,
            {fact(strip), fact(dry), fact(strength), fact(acid), anhydrous ? fact(*anhydrous) : QString()}};
}

} // namespace

std::optional<How> how_use_by(const book::Workbook& workbook, BagId id) {
    const auto bag = book::fetch(workbook, id);
    if (!bag || !bag->sealed_on || !bag->use_months || !bag->use_by)
        return std::nullopt;
    return How{HowKind::use_by, {fact(*bag->sealed_on), fact(*bag->use_months), fact(*bag->use_by)}};
}

std::optional<How> how_rest(const book::Workbook& workbook, BagId id) {
    const auto bag = book::fetch(workbook, id);
    if (!bag || !bag->sealed_on || !bag->rest_days || !bag->rest_until)
        return std::nullopt;
    return How{HowKind::rest, {fact(*bag->sealed_on), fact(*bag->rest_days), fact(*bag->rest_until)}};
}

std::optional<How> how_acid_in_strip(const book::Workbook& workbook, BagId id) {
    const auto bag = book::fetch(workbook, id);
    if (!bag || !bag->strip || !bag->dry || !bag->strength || !bag->acid_per_strip)
        return std::nullopt;
    return acid_of(*bag->strip, *bag->dry, *bag->strength, *bag->acid_per_strip);
}

std::optional<How> how_acid_in_strip(const BagFigures& figures) {
    if (!figures.strip || !figures.acid_per_strip)
        return std::nullopt;
    return acid_of(*figures.strip, figures.dry, figures.strength, *figures.acid_per_strip);
}

std::vector<How> how_bag_days(const book::Workbook& workbook, maths::Day sealed, const BagFigures& figures) {
    std::vector<How> hows;
    if (const auto days = figure(workbook, Figure::rest_days); days && figures.rest_until)
        hows.push_back({HowKind::rest, {fact(sealed), fact(*days), fact(*figures.rest_until)}});
    if (const auto months = figure(workbook, Figure::use_within_months))
        hows.push_back({HowKind::use_by, {fact(sealed), fact(*months), fact(figures.use_by)}});
    return hows;
}

How how_balance(const Balance& balance) {
    return {HowKind::balance,
            {fact(balance.in), fact(balance.in_strips), fact(balance.free_in_bags), fact(balance.in_pails),
             fact(balance.named_losses), fact(balance.unexplained), fact_or_none(balance.limit)}};
}

How how_strip_cost(const BatchCost& cost) {
    return {HowKind::strip_cost,
            {fact_or_none(cost.acid), fact_or_none(cost.glycerine), fact_or_none(cost.carried),
             fact_or_none(cost.dry_strips), fact_or_none(cost.bag_cost), fact(cost.strips), fact_or_none(cost.each)}};
}

std::optional<How> how_batch_limits(const BatchChart& chart) {
    if (!chart.limits)
        return std::nullopt;
    const auto told = [&chart](qint64 value) {
        return chart.measure == BatchMeasure::unexplained ? fact(maths::Fraction{value}) : fact(maths::Mass{value});
    };
    return How{HowKind::batch_limits,
               {told(chart.limits->mean), told(chart.limits->mean_range), told(chart.limits->lower),
                told(chart.limits->upper), fact(chart.points.size())}};
}

How how_hazard_class(maths::Fraction strength) {
    // Classes are the same in both editions; only their words differ.
    const LabelHazard hazard = label_hazard(strength);
    return {HowKind::hazard_class,
            {fact(strength), estimate_fact(hazard.up_to_rev_8.oral_estimate),
             estimate_fact(hazard.up_to_rev_8.dermal_estimate)}};
}

} // namespace soakbook::work
