// SPDX-License-Identifier: GPL-3.0-or-later
// Liquid of a batch that went somewhere with a name.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"

namespace soakbook::book {

enum class LossKind { drips, tank_heel, spill, other };
template <> struct Names<LossKind> {
    static constexpr const char* all[] = {"drips", "tank_heel", "spill", "other"};
};

/// Liquid of a batch that went somewhere with a name.
struct BatchLoss {
    Id<BatchLoss> id;
    Id<Batch> batch;
    LossKind kind{};
    maths::Mass mass{};
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const BatchLoss&) const = default;
    static constexpr const char* table = "batch_loss";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &BatchLoss::batch),
            column("kind", &BatchLoss::kind),
            column("mass_mg", &BatchLoss::mass),
            column("note", &BatchLoss::note),
            column("void_reason", &BatchLoss::void_reason)};
    }
};

} // namespace soakbook::book
