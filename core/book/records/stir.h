// SPDX-License-Identifier: GPL-3.0-or-later
// A stir of the tank and what was seen.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"

namespace soakbook::book {

/// A stir of the tank and what was seen.
struct Stir {
    Id<Stir> id;
    Id<Batch> batch;
    maths::Instant at{};
    maths::Instant written{};
    std::optional<int> minutes;
    bool clear = false; ///< clear through, no crystal
    std::optional<bool> outlet_poured_back; ///< what stood in the outlet was drawn off and poured back
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Stir&) const = default;
    static constexpr const char* table = "stir";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &Stir::batch),
            column("at", &Stir::at),
            column("written", &Stir::written),
            column("minutes", &Stir::minutes),
            column("clear", &Stir::clear),
            column("outlet_poured_back", &Stir::outlet_poured_back),
            column("note", &Stir::note),
            column("void_reason", &Stir::void_reason)};
    }
};

} // namespace soakbook::book
