// SPDX-License-Identifier: GPL-3.0-or-later
// Strips on the scale: of a soak, of a bag, or pulled ones.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/bag.h"
#include "core/book/records/placement.h"
#include "core/book/records/soak.h"

namespace soakbook::book {

/// Strips on the scale: of a soak, of a bag, or pulled ones.
struct WeighIn {
    Id<WeighIn> id;
    std::optional<Id<Soak>> soak;
    std::optional<Id<Bag>> bag;
    std::optional<Id<Placement>> placement;
    maths::Instant at{};
    maths::Instant written{};
    int strips = 0;
    maths::Mass total{}; ///< of all of them
    std::optional<int> drip_minutes; ///< they dripped before
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const WeighIn&) const = default;
    static constexpr const char* table = "weigh_in";
    static constexpr auto columns() {
        return std::tuple{
            column("soak_id", &WeighIn::soak),
            column("bag_id", &WeighIn::bag),
            column("placement_id", &WeighIn::placement),
            column("at", &WeighIn::at),
            column("written", &WeighIn::written),
            column("strips", &WeighIn::strips),
            column("total_mg", &WeighIn::total),
            column("drip_minutes", &WeighIn::drip_minutes),
            column("note", &WeighIn::note),
            column("void_reason", &WeighIn::void_reason)};
    }
};

} // namespace soakbook::book
