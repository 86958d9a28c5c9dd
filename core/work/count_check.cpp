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
std::optional<MeanStrip> mean_strip(const book::Workbook& workbook, const CountWish& wish) {
    MeanStrip mean;
    std::set<qint64> lots;
    bool there = !wish.soak;
    for (const book::Soak& soak : book::soaks_of(workbook, wish.batch)) {
        if (wish.soak && soak.id != *wish.soak)
            continue;
        there = true;
        lots.insert(soak.lot ? soak.lot->value : 0);
        std::optional<book::WeighIn> last;
        for (const book::WeighIn& weighing : book::weigh_ins_of(workbook, soak.id))
            if (!wish.sealed || weighing.at.local_day() <= *wish.sealed)
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

Outcome<CountCheck> count_check(const book::Workbook& workbook, const CountWish& wish) {
    const auto batch = batch_there(workbook, wish.batch);
    if (!batch)
        return unexpected(batch.error());
    if (wish.net.count <= 0)
        return refuse(Why::not_positive, QStringLiteral("net"));
    if (wish.packed <= 0)
        return refuse(Why::not_positive, QStringLiteral("packed"));
    if (wish.net > most_mass)
        return refuse(Why::too_large, QStringLiteral("net"), {fact(most_mass)});
    const auto strip = mean_strip(workbook, wish);
    if (!strip)
        return refuse(Why::not_found, QStringLiteral("soak"));
    const auto mean = maths::mean_together(strip->total, strip->strips);
    if (!mean)
        return refuse(Why::no_weigh_in);

    CountCheck check;
    check.packed = wish.packed;
    check.net = wish.net;
    check.mean = *mean;
    check.mean_strips = strip->strips;
    check.spread = known_spread(workbook, batch->strip_kind, strip->lot);
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
