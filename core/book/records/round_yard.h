// SPDX-License-Identifier: GPL-3.0-or-later
// A yard that belongs to a round.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/round.h"
#include "core/book/records/yard.h"

namespace soakbook::book {

/// A yard that belongs to a round.
struct RoundYard {
    Id<RoundYard> id;
    Id<Round> round;
    Id<Yard> yard;
    maths::Day planned_on{};
    std::optional<maths::Day> visited_on; ///< strips put in
    std::optional<QString> void_reason;

    bool operator==(const RoundYard&) const = default;
    static constexpr const char* table = "round_yard";
    static constexpr auto columns() {
        return std::tuple{
            column("round_id", &RoundYard::round),
            column("yard_id", &RoundYard::yard),
            column("planned_on", &RoundYard::planned_on),
            column("visited_on", &RoundYard::visited_on),
            column("void_reason", &RoundYard::void_reason)};
    }
};

} // namespace soakbook::book
