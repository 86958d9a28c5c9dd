// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/lot_share.h"

#include "core/maths/exact.h"
#include "core/maths/sharing.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace soakbook::maths {
namespace {

std::optional<Unanswerable> unfit(std::span<const BatchMaterial> batches) {
    for (const BatchMaterial& batch : batches) {
        for (const FromLot& input : batch.lots)
            if (!is_amount_or_none(input.amount))
                return Unanswerable::not_a_quantity;
        for (const FromBatch& input : batch.pails) {
            if (!is_amount_or_none(input.amount))
                return Unanswerable::not_a_quantity;
            if (input.batch >= batches.size())
                return Unanswerable::out_of_range;
        }
    }
    return std::nullopt;
}

/// The batches so that each comes after those it took pails from; shorter than the list when some go in circles.
std::vector<std::size_t> in_order(std::span<const BatchMaterial> batches) {
    std::vector<std::vector<std::size_t>> takers(batches.size());
    std::vector<std::size_t> waiting_for(batches.size(), 0);
    for (std::size_t i = 0; i < batches.size(); ++i) {
        for (const FromBatch& input : batches[i].pails)
            takers[input.batch].push_back(i);
        waiting_for[i] = batches[i].pails.size();
    }
    std::vector<std::size_t> order;
    order.reserve(batches.size());
    for (std::size_t i = 0; i < batches.size(); ++i)
        if (waiting_for[i] == 0)
            order.push_back(i);
    for (std::size_t done = 0; done < order.size(); ++done)
        for (const std::size_t taker : takers[order[done]])
            if (--waiting_for[taker] == 0)
                order.push_back(taker);
    return order;
}

/// Parts of the same lot as one, by number, summing to 1 to the last digit.
std::vector<LotPart> gathered(std::vector<LotPart> parts, double whole) {
    std::sort(parts.begin(), parts.end(), [](const LotPart& a, const LotPart& b) { return a.lot < b.lot; });
    std::vector<LotPart> result;
    for (const LotPart& part : parts) {
        if (part.part <= 0.0)
            continue;
        if (!result.empty() && result.back().lot == part.lot)
            result.back().part += part.part / whole;
        else
            result.push_back({part.lot, part.part / whole});
    }
    return result;
}

} // namespace

Answer<std::vector<std::vector<LotPart>>> lot_parts(std::span<const BatchMaterial> batches) {
    if (const auto why = unfit(batches))
        return unexpected(*why);
    const std::vector<std::size_t> order = in_order(batches);
    if (order.size() < batches.size())
        return unexpected(Unanswerable::circular);
    std::vector<std::vector<LotPart>> all(batches.size());
    for (const std::size_t place : order) {
        std::vector<LotPart> parts;
        double whole = 0.0;
        const auto add = [&parts, &whole](std::int64_t lot, double amount) {
            parts.push_back({lot, amount});
            whole += amount;
        };
        for (const FromLot& input : batches[place].lots)
            add(input.lot, static_cast<double>(input.amount.count));
        for (const FromBatch& input : batches[place].pails) {
            if (input.amount.count > 0 && all[input.batch].empty())
                return unexpected(Unanswerable::zero_below_the_line);
            for (const LotPart& part : all[input.batch])
                add(part.lot, static_cast<double>(input.amount.count) * part.part);
        }
        if (whole > 0.0)
            all[place] = gathered(std::move(parts), whole);
    }
    return all;
}

Answer<std::vector<FromLot>> amounts_by_lot(Mass amount, std::span<const LotPart> parts) {
    if (!is_amount_or_none(amount))
        return unexpected(Unanswerable::not_a_quantity);
    std::vector<std::int64_t> weights;
    weights.reserve(parts.size());
    for (const LotPart& part : parts) {
        if (!(part.part >= 0.0) || part.part > 1.0 + 1e-9)
            return unexpected(Unanswerable::out_of_range);
        weights.push_back(std::llround(part.part * 1e15));
    }
    const auto shares = share_out(amount, std::span<const std::int64_t>(weights));
    if (!shares)
        return unexpected(shares.error());
    std::vector<FromLot> result;
    result.reserve(parts.size());
    for (std::size_t i = 0; i < parts.size(); ++i)
        result.push_back({parts[i].lot, (*shares)[i]});
    return result;
}

} // namespace soakbook::maths
