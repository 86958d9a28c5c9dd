// SPDX-License-Identifier: GPL-3.0-or-later
// How much of each lot of a material (acid, or glycerine) is in each batch, through any depth of pails.
// Source: conservation of mass: the share of lot x in a batch is the sum over inputs of (material from the input /
// material in the batch) times the share of x in that input.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <cstdint>
#include <span>
#include <vector>

namespace soakbook::maths {

/// Material weighed in from a lot; the number is the caller's.
struct FromLot {
    std::int64_t lot = 0;
    Mass amount;
};
/// Material that came with whole pails of an earlier batch, named by its place in the list given.
struct FromBatch {
    std::size_t batch = 0;
    Mass amount;
};
/// What one batch was made of, for one material.
struct BatchMaterial {
    std::vector<FromLot> lots;
    std::vector<FromBatch> pails;
};
/// One lot's part of a batch.
struct LotPart {
    std::int64_t lot = 0;
    double part = 0.0; ///< 0 to 1

    constexpr bool operator==(const LotPart&) const = default;
};

/// For each batch its lots, by number, with parts that sum to 1; a batch without any of the material has none. Refuses:
/// negative amounts, a pail of a batch that is not in the list (out_of_range), material out of
/// a batch that holds none (zero_below_the_line), circular when a batch would be its own input.
Answer<std::vector<std::vector<LotPart>>> lot_parts(std::span<const BatchMaterial> batches);

/// An amount of a batch's material (in a bag, a hive, a pail, a loss) by lot, exact to the milligram. Refuses parts
/// that are empty or negative.
Answer<std::vector<FromLot>> amounts_by_lot(Mass amount, std::span<const LotPart> parts);

} // namespace soakbook::maths
