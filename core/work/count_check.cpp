// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/count_check.h"

#include "core/book/queries/soaks.h"
#include "core/book/records/bag.h"
#include "core/maths/count_by_weight.h"
#include "core/work/batch_checks.h"

#include <set>

namespace soakbook::work {

namespace {

/// The mean strip of the soaks by the last weighing of each, and the lot when they share one.
struct MeanStrip {
    maths::Mass total{};
    int strips = 0;
    std::optional<LotId> lot;
};
std::optional<MeanStrip> mean_strip(const book::Workbook& workbook, BatchId batch, std::optional<SoakId> only,
                                    std::optional<maths::Day> sealed) {
    MeanStrip mean;
    std::set<qint64> lots;
    bool there = !only;
    for (const book::Soak& soak : book::soaks_of(workbook, batch)) {
        if (only && soak.id != *only)
            continue;
        there = true;
        lots.insert(soak.lot ? soak.lot->value : 0);
        std::optional<book::WeighIn> last;
        for (const book::WeighIn& weighing : book::weigh_ins_of(workbook, soak.id))
            if (!sealed || weighing.at.local_day() <= *sealed)
                last = weighing;
        if (last) {
            mean.total += last->total;
            mean.strips += last->strips;
        }
    }
    if (lots.size() == 1 && *lots.begin() != 0)
        mean.lot = LotId{*lots.begin()};
    return there ? std::optional(mean) : std::nullopt;
}

} // namespace

Outcome<CountBasis> count_basis(const book::Workbook& workbook, BatchId id, std::optional<SoakId> soak,
                                std::optional<maths::Day> sealed) {
    const auto batch = batch_there(workbook, id);
    if (!batch)
        return unexpected(batch.error());
    const auto strip = mean_strip(workbook, id, soak, sealed);
    if (!strip)
        return refuse(Why::not_found, QStringLiteral("soak"));
    const auto mean = maths::mean_together(strip->total, strip->strips);
    if (!mean)
        return refuse(Why::no_weigh_in);
    return CountBasis{*mean, strip->strips, known_spread(workbook, batch->strip_kind, strip->lot)};
}

Outcome<CountCheck> count_check(const CountBasis& basis, maths::Mass net, int packed) {
    if (net.count <= 0)
        return refuse(Why::not_positive, QStringLiteral("net"));
    if (packed <= 0)
        return refuse(Why::not_positive, QStringLiteral("packed"));
    if (net > most_mass)
        return refuse(Why::too_large, QStringLiteral("net"), {fact(most_mass)});

    CountCheck check;
    check.packed = packed;
    check.net = net;
    check.mean = basis.mean;
    check.mean_strips = basis.mean_strips;
    check.spread = basis.spread;
    if (!check.spread)
        return check;
    const maths::KnownMean known_mean{check.mean, check.mean_strips};
    const maths::KnownSpread spread{check.spread->deviation, check.spread->degrees};
    const auto estimate = maths::count_by_weight(check.net, known_mean, spread);
    const auto verdict = maths::count_verdict(check.net, check.packed, known_mean, spread);
    if (!estimate || !verdict)
        return refuse(Why::too_large, QStringLiteral("net"), {fact(most_mass)});
    check.says = static_cast<CountSays>(*verdict);
    check.likeliest = static_cast<int>(estimate->likeliest);
    check.sureness = estimate->sureness;
    check.least = static_cast<int>(estimate->least);
    check.most = static_cast<int>(estimate->most);
    return check;
}

Outcome<CountCheck> count_check(const book::Workbook& workbook, const CountWish& wish) {
    const auto basis = count_basis(workbook, wish.batch, wish.soak, wish.sealed);
    return basis ? count_check(*basis, wish.net, wish.packed) : unexpected(basis.error());
}

Outcome<CountCheck> count_check(const book::Workbook& workbook, BagId id) {
    const auto bag = book::fetch(workbook, id);
    if (!bag || bag->void_reason)
        return refuse(Why::not_found);
    if (!bag->packed)
        return refuse(Why::not_filled, {}, {bag->code});
    if (!bag->net)
        return refuse(Why::missing, QStringLiteral("net"));
    return count_check(workbook, {bag->batch, bag->soak, *bag->net, *bag->packed, bag->sealed_on});
}

} // namespace soakbook::work
