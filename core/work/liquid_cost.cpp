// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/liquid_cost.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/work/leftovers.h"

#include <algorithm>

namespace soakbook::work {

namespace {

void add_missing(std::vector<MissingCost>& missing, const MissingCost& one) {
    const bool is_there = std::any_of(missing.begin(), missing.end(), [&one](const MissingCost& other) {
        return other.lot == one.lot && other.material == one.material &&
               (one.lot || other.batch_code == one.batch_code);
    });
    if (!is_there)
        missing.push_back(one);
}

/// Shares the liquid over bags and pails by mass, and over what an open batch still holds.
void share_over(LiquidAccount& account, const book::Batch& batch, const Balance& balance,
                const std::vector<book::Pail>& pails) {
    const maths::Mass nothing;
    std::vector<maths::Mass> masses;
    for (const book::Pail& pail : pails)
        masses.push_back(pail.mass);
    masses.push_back(batch.closed ? nothing : std::max(balance.unexplained, nothing));
    const auto shares =
        maths::share_liquid(account.cost, std::max(balance.in_strips + balance.free_in_bags, nothing), masses);
    for (std::size_t i = 0; i < pails.size(); ++i) {
        PailCost pail{pails[i].id, pails[i].code, pails[i].mass, std::nullopt};
        if (shares && account.known())
            pail.cost = shares->in_pails[i];
        account.pails.push_back(pail);
    }
    // All of it lost: then nothing is left to bear the cost.
    if (!shares)
        return;
    account.in_bags = shares->in_bags;
    account.in_work = shares->in_pails.back();
}

} // namespace

std::optional<maths::Money> lot_cost(const book::Workbook& workbook, std::optional<LotId> id, qint64 used,
                                     MaterialKind material, const QString& batch_code,
                                     std::vector<MissingCost>& missing) {
    if (used == 0)
        return maths::Money{};
    const auto lot = id ? book::fetch(workbook, *id) : std::nullopt;
    if (lot && lot->cost)
        // Pieces share a price as milligrams do: only the ratio counts.
        if (const auto cost = maths::cost_of(maths::Mass{used}, *lot->cost, maths::Mass{lot->amount}))
            return *cost;
    add_missing(missing, {id, lot ? lot->name : QString(), material, batch_code});
    return std::nullopt;
}

const LiquidAccount& LiquidAccounts::of(const book::Batch& batch) {
    if (const auto known = m_accounts.find(batch.id.value); known != m_accounts.end())
        return known->second;
    m_under_way.insert(batch.id.value);
    LiquidAccount account = reckon(batch);
    m_under_way.erase(batch.id.value);
    return m_accounts.emplace(batch.id.value, std::move(account)).first->second;
}

LiquidAccount LiquidAccounts::reckon(const book::Batch& batch) {
    LiquidAccount account;
    for (const book::BatchInput& input : book::inputs_of(m_workbook, batch.id)) {
        if (!input.mass)
            continue;
        if (input.pail) {
            add_pail(account, *input.pail);
            continue;
        }
        const auto lot = book::fetch(m_workbook, *input.lot);
        const bool is_acid = lot && lot->material == book::Material::acid;
        const auto cost = lot_cost(m_workbook, input.lot, input.mass->count,
                                   is_acid ? MaterialKind::acid : MaterialKind::glycerine, batch.code, account.missing);
        if (cost)
            (is_acid ? account.cost.acid : account.cost.glycerine) += *cost;
        else
            (is_acid ? account.acid_known : account.glycerine_known) = false;
    }
    if (const auto balanced = balance(m_workbook, batch.id))
        share_over(account, batch, *balanced, book::pails_of(m_workbook, batch.id));
    return account;
}

void LiquidAccounts::add_pail(LiquidAccount& account, PailId id) {
    const auto pail = book::fetch(m_workbook, id);
    const auto source = pail ? book::fetch(m_workbook, pail->batch) : std::nullopt;
    if (!source || m_under_way.count(source->id.value) != 0) {
        account.carried_known = false;
        return;
    }
    const LiquidAccount& from = of(*source);
    for (const MissingCost& one : from.missing)
        add_missing(account.missing, one);
    const auto found =
        std::find_if(from.pails.begin(), from.pails.end(), [id](const PailCost& cost) { return cost.pail == id; });
    if (found != from.pails.end() && found->cost)
        account.cost.carried += *found->cost;
    else
        account.carried_known = false;
}

} // namespace soakbook::work
