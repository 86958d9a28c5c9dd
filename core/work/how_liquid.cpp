// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/how_liquid.h"

#include "core/book/record_io.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/strip_kind.h"
#include "core/maths/sampling.h"
#include "core/work/facts.h"
#include "core/work/optional_fact.h"

namespace soakbook::work {

namespace {

std::optional<maths::Fraction> assay_of_lot(const book::Workbook& workbook, std::optional<LotId> id) {
    const auto lot = id ? book::fetch(workbook, *id) : std::nullopt;
    return lot ? lot->assay : std::nullopt;
}

} // namespace

How how_mix_amounts(const book::Workbook& workbook, const MixPlan& plan, const MixFigures& figures) {
    return {HowKind::mix_amounts,
            {fact(figures.total), fact(figures.strength), fact_or_none(assay_of_lot(workbook, plan.acid_lot)),
             fact(figures.acid.total), fact(figures.glycerine.total), fact(figures.from_pails),
             fact(figures.strength_anhydrous)}};
}

How how_mix_correction(const MixResult& result) {
    return {HowKind::mix_correction,
            {fact(result.total), fact(result.acid), fact(result.strength), fact(result.wanted),
             fact_or_none(result.assay), fact_or_none(result.add_acid),
             fact_or_none(result.add_glycerine)}};
}

How how_level_mark(const LevelMark& mark) {
    How how{mark.is_estimate ? HowKind::level_mark_estimate : HowKind::level_mark, {}};
    const double density =
        mark.volume.count > 0 ? maths::in_kilograms(mark.mass) / maths::in_litres(mark.volume) * 1000.0 : 0.0;
    how.facts << fact(mark.mass) << fact(mark.at) << (density > 0.0 ? number_fact(density, 2) : QString())
              << fact(mark.volume);
    if (mark.is_estimate)
        how.facts << fact(mark.strength);
    return how;
}

How how_pails_chosen(const PailAdvice& advice) {
    return {HowKind::pails_chosen,
            {fact(advice.used().size()), fact(advice.lines.size()), fact(advice.old_liquid), fact(advice.total),
             fact(advice.strength), fact(advice.acid), fact(advice.glycerine), fact(advice.proved ? 1 : 0),
             fact(advice.could_be_more)}};
}

How how_yield(const MixFigures& figures, maths::Mass uptake) {
    return {HowKind::yield,
            {fact(figures.total), fact(uptake), fact_or_none(figures.strips), fact_or_none(figures.most_left)}};
}

How how_yield(const SoakFigures& figures) {
    const maths::Mass each =
        figures.strips > 0 ? maths::Mass{figures.taken_at_target.count / figures.strips} : maths::Mass{};
    return {HowKind::yield, {fact(figures.liquid), fact(each), fact(figures.strips), fact(figures.most_left)}};
}

std::optional<How> how_yield(const book::Workbook& workbook, const MixPlan& plan, const MixFigures& figures) {
    const auto kind = plan.strip_kind ? book::fetch(workbook, *plan.strip_kind) : std::nullopt;
    if (!kind || !figures.strips)
        return std::nullopt;
    const auto taken = maths::uptake(kind->target, kind->dry);
    return taken ? std::optional(how_yield(figures, *taken)) : std::nullopt;
}

How how_dial(const DialAdvice& advice) {
    const bool advised = advice.says == DialSays::advised;
    const auto told = [advised](maths::Temperature t) { return advised ? fact(t) : QString(); };
    return {advice.by_line ? HowKind::dial_by_line : HowKind::dial_by_range,
            {fact_or_none(advice.wanted), fact(advice.pairs), fact_or_none(advice.offset_low),
             fact_or_none(advice.offset_high), told(advice.dial), told(advice.expected_low), told(advice.expected_high),
             fact_or_none(advice.ceiling), told(advice.highest_dial)}};
}

} // namespace soakbook::work
