// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into a batch: a part of a lot or a pail; planned first, weighed in later.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/pail.h"

namespace soakbook::book {

/// What goes into a batch: a part of a lot or a pail; planned first, weighed in later.
struct BatchInput {
    Id<BatchInput> id;
    Id<Batch> batch;
    std::optional<Id<MaterialLot>> lot;
    std::optional<Id<Pail>> pail;
    maths::Mass planned{};
    std::optional<maths::Mass> mass; ///< as weighed
    std::optional<maths::Mass> acid; ///< oxalic acid dihydrate in it
    std::optional<QString> void_reason;

    bool operator==(const BatchInput&) const = default;
    static constexpr const char* table = "batch_input";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &BatchInput::batch),
            column("lot_id", &BatchInput::lot),
            column("pail_id", &BatchInput::pail),
            column("planned_mg", &BatchInput::planned),
            column("mass_mg", &BatchInput::mass),
            column("acid_mg", &BatchInput::acid),
            column("void_reason", &BatchInput::void_reason)};
    }
};

} // namespace soakbook::book
