// SPDX-License-Identifier: GPL-3.0-or-later
// One bin of strips in a batch.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/vessel.h"

namespace soakbook::book {

/// One bin of strips in a batch.
struct Soak {
    Id<Soak> id;
    Id<Batch> batch;
    Id<Vessel> bin;
    std::optional<Id<MaterialLot>> lot; ///< dry strips
    int strips = 0;
    maths::Mass dry{}; ///< copied from the lot or the kind
    maths::Mass target{};
    maths::Mass tolerance{};
    std::optional<maths::Mass> flood; ///< liquid let in, if it was measured
    std::optional<maths::Temperature> room;
    maths::Instant started{};
    maths::Instant written{};
    std::optional<maths::Instant> ended; ///< strips taken out
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Soak&) const = default;
    static constexpr const char* table = "soak";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &Soak::batch),
            column("bin_id", &Soak::bin),
            column("lot_id", &Soak::lot),
            column("strips", &Soak::strips),
            column("dry_mg", &Soak::dry),
            column("target_mg", &Soak::target),
            column("tolerance_mg", &Soak::tolerance),
            column("flood_mg", &Soak::flood),
            column("room_cc", &Soak::room),
            column("started", &Soak::started),
            column("written", &Soak::written),
            column("ended", &Soak::ended),
            column("note", &Soak::note),
            column("void_reason", &Soak::void_reason)};
    }
};

} // namespace soakbook::book
