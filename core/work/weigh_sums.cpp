// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/weigh_sums.h"

#include "core/book/queries/soaks.h"
#include "core/maths/sampling.h"
#include "core/work/batch_checks.h"

namespace soakbook::work {

WeighBasis basis_of(const book::Soak& soak, maths::Fraction strength) {
    return {soak.dry, soak.target, soak.tolerance, strength, false};
}

std::vector<maths::Mass> single_masses(const book::Workbook& workbook, book::Id<book::WeighIn> weigh_in) {
    std::vector<maths::Mass> masses;
    for (const book::WeighSingle& single : book::singles_of(workbook, weigh_in))
        masses.push_back(single.mass);
    return masses;
}

Outcome<WeighFigures> weigh_sum(const WeighBasis& basis, int strips, maths::Mass total,
                                std::span<const maths::Mass> singles) {
    const QString field = QStringLiteral("total");
    WeighFigures figures;
    figures.strips = strips;
    figures.dry = basis.dry;
    figures.target = basis.target;
    figures.tolerance = basis.tolerance;
    const auto mean = maths::mean_together(total, strips);
    if (!mean)
        return refuse(Why::not_positive, field);
    figures.mean = *mean;
    figures.off_target = figures.mean - basis.target;
    figures.uptake = figures.mean - basis.dry;
    if (figures.uptake.count <= 0 && !basis.pulled)
        return refuse(Why::lighter_than_dry, singles.empty() ? field : QStringLiteral("singles/0"),
                      {fact(figures.mean), fact(basis.dry)});
    if (const auto acid = maths::acid_per_strip(figures.mean, basis.dry, basis.strength)) {
        figures.acid_per_strip = *acid;
        figures.acid_per_strip_anhydrous = maths::anhydrous_from_dihydrate(*acid).value_or(maths::Mass{});
    }
    const maths::Target target{basis.target, basis.tolerance};
    if (singles.size() > 1) {
        if (const auto judged = maths::judge_one_by_one(singles, target)) {
            figures.low = maths::grams(judged->spread.interval.low);
            figures.high = maths::grams(judged->spread.interval.high);
            figures.verdict = static_cast<WeighVerdict>(judged->verdict);
        }
    } else if (const auto verdict = maths::verdict_together(figures.mean, target)) {
        figures.verdict = static_cast<WeighVerdict>(*verdict);
    }
    if (basis.pulled)
        figures.verdict.reset();
    return figures;
}

StripWeights strip_weights(const book::Workbook& workbook, const book::Batch& batch,
                           std::optional<book::Id<book::Soak>> soak, maths::Day sealed) {
    StripWeights weights;
    weights.strength = liquid_of(workbook, batch.id).strength();
    maths::Mass dry_of_all;
    int strips_of_all = 0;
    maths::Mass wet;
    int weighed = 0;
    for (const book::Soak& one : book::soaks_of(workbook, batch.id)) {
        if ((soak && one.id != *soak) || one.started.local_day() > sealed)
            continue;
        dry_of_all += one.dry * one.strips;
        strips_of_all += one.strips;
        weights.least = one.target - one.tolerance;
        std::optional<book::WeighIn> last;
        for (const book::WeighIn& weigh_in : book::weigh_ins_of(workbook, one.id))
            if (weigh_in.at.local_day() <= sealed)
                last = weigh_in;
        if (!last)
            continue;
        wet += last->total;
        weighed += last->strips;
        const auto singles = single_masses(workbook, last->id);
        const auto figures = weigh_sum(basis_of(one, weights.strength), last->strips, last->total, singles);
        // One bin that is light makes the whole lot light.
        if (figures &&
            (!weights.verdict || weights.verdict == WeighVerdict::on_target || figures->verdict == WeighVerdict::light))
            weights.verdict = figures->verdict;
    }
    if (const auto dry = maths::mean_together(dry_of_all, strips_of_all))
        weights.dry = *dry;
    if (const auto strip = maths::mean_together(wet, weighed)) {
        weights.strip = *strip;
        if (const auto acid = maths::acid_per_strip(*strip, weights.dry, weights.strength); acid && acid->count > 0)
            weights.acid = *acid;
    }
    return weights;
}

} // namespace soakbook::work
