// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strip_spread.h"

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/batch.h"
#include "core/book/records/soak.h"
#include "core/book/records/weigh_in.h"
#include "core/book/records/weigh_single.h"
#include "core/maths/count_by_weight.h"

#include <map>
#include <set>
#include <vector>

namespace soakbook::work {

namespace {

/// Soaks and bags whose strips are of the kind and lot.
struct OfKindAndLot {
    std::set<qint64> soaks;
    std::set<qint64> bags;
};
OfKindAndLot of_kind_and_lot(const book::Workbook& workbook, StripKindId kind, std::optional<LotId> lot) {
    OfKindAndLot found;
    std::set<qint64> batches;
    for (const book::Batch& batch : book::fetch_all<book::Batch>(workbook))
        if (!batch.void_reason && batch.strip_kind == kind)
            batches.insert(batch.id.value);
    for (const book::Soak& soak : book::fetch_all<book::Soak>(workbook))
        if (!soak.void_reason && batches.count(soak.batch.value) != 0 && (!lot || soak.lot == *lot))
            found.soaks.insert(soak.id.value);
    for (const book::Bag& bag : book::fetch_all<book::Bag>(workbook)) {
        const bool of_lot = !lot || (bag.soak && found.soaks.count(bag.soak->value) != 0);
        if (!bag.void_reason && bag.strip_kind == kind && of_lot)
            found.bags.insert(bag.id.value);
    }
    return found;
}

} // namespace

std::optional<StripSpread> known_spread(const book::Workbook& workbook, StripKindId kind, std::optional<LotId> lot) {
    const OfKindAndLot wanted = of_kind_and_lot(workbook, kind, lot);
    std::map<qint64, std::vector<maths::Mass>> masses;
    for (const book::WeighIn& weighing : book::fetch_all<book::WeighIn>(workbook)) {
        const bool counts = (weighing.soak && wanted.soaks.count(weighing.soak->value) != 0) ||
                            (weighing.bag && wanted.bags.count(weighing.bag->value) != 0);
        if (!weighing.void_reason && counts)
            masses[weighing.id.value] = {};
    }
    for (const book::WeighSingle& single : book::fetch_all<book::WeighSingle>(workbook))
        if (const auto at = masses.find(single.weigh_in.value); at != masses.end())
            at->second.push_back(single.mass);

    StripSpread known;
    std::vector<maths::Spread> samples;
    for (const auto& [id, one_by_one] : masses)
        if (const auto spread = maths::spread_of(one_by_one)) {
            samples.push_back(*spread);
            known.strips += static_cast<int>(spread->strips);
        }
    const auto pooled = maths::pooled_spread(samples);
    if (!pooled)
        return std::nullopt;
    known.deviation = pooled->deviation;
    known.degrees = static_cast<int>(pooled->degrees);
    known.weighings = static_cast<int>(samples.size());
    return known;
}

} // namespace soakbook::work
