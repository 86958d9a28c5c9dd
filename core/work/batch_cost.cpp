// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/batch_cost.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/soaks.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/liquid_cost.h"

namespace soakbook::work {

namespace {

/// Sums that have no answer once one part has none.
class SumOfKnown {
public:
    void add(std::optional<maths::Money> part) {
        m_known = m_known && part;
        m_sum += part.value_or(maths::Money{});
    }
    std::optional<maths::Money> sum() const { return m_known ? std::optional(m_sum) : std::nullopt; }

private:
    maths::Money m_sum;
    bool m_known = true;
};

/// Dry strips: of a closed batch all that were soaked, since what spoilt is borne by the rest; of an open one those in
/// bags.
std::optional<maths::Money> dry_strip_cost(const book::Workbook& workbook, const book::Batch& batch,
                                           std::vector<MissingCost>& missing) {
    const Bagged bagged = bagged_of(workbook, batch.id);
    SumOfKnown cost;
    for (const book::Soak& soak : book::soaks_of(workbook, batch.id))
        cost.add(lot_cost(workbook, soak.lot, batch.closed ? soak.strips : bagged.by_soak.at(soak.id.value),
                          MaterialKind::strips, batch.code, missing));
    return cost.sum();
}

std::optional<maths::Money> cost_of_bags(const book::Workbook& workbook, const book::Batch& batch, BatchCost& whole) {
    std::map<std::optional<LotId>, qint64> by_lot;
    for (const book::Bag& bag : book::bags_of(workbook, batch.id)) {
        if (bag.void_reason || !bag.packed)
            continue;
        whole.strips += *bag.packed;
        ++whole.bags;
        ++by_lot[bag.bag_lot];
    }
    SumOfKnown cost;
    for (const auto& [lot, bags] : by_lot)
        cost.add(lot_cost(workbook, lot, bags, MaterialKind::bags, batch.code, whole.missing));
    return cost.sum();
}

std::optional<maths::Money> if_known(maths::Money money, bool known) {
    return known ? std::optional(money) : std::nullopt;
}

} // namespace

Outcome<BatchCost> batch_cost(const book::Workbook& workbook, BatchId id) {
    const auto batch = batch_there(workbook, id);
    if (!batch)
        return unexpected(batch.error());
    if (!batch->mixed)
        return refuse(Why::batch_not_mixed, {}, {batch->code});
    LiquidAccounts accounts(workbook);
    const LiquidAccount& liquid = accounts.of(*batch);
    BatchCost cost;
    cost.batch = id;
    cost.code = batch->code;
    cost.closed = batch->closed.has_value();
    cost.missing = liquid.missing;
    cost.pails = liquid.pails;
    if (!cost.closed)
        cost.still_in_work = if_known(liquid.in_work, liquid.known());
    cost.acid = if_known(liquid.in_bags.acid, liquid.acid_known);
    cost.glycerine = if_known(liquid.in_bags.glycerine, liquid.glycerine_known);
    cost.carried = if_known(liquid.in_bags.carried, liquid.carried_known);
    cost.dry_strips = dry_strip_cost(workbook, *batch, cost.missing);
    cost.bag_cost = cost_of_bags(workbook, *batch, cost);
    if (cost.strips > 0 && liquid.known() && cost.dry_strips && cost.bag_cost) {
        const maths::StripCost strips{liquid.in_bags, *cost.dry_strips, *cost.bag_cost, {}, cost.strips};
        cost.total = strips.total();
        cost.each = strips.each();
    }
    return cost;
}

} // namespace soakbook::work
