// SPDX-License-Identifier: GPL-3.0-or-later
// A batch of liquid and all that was soaked in it. What the rules said is copied in.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"

namespace soakbook::book {

/// A batch of liquid and all that was soaked in it. What the rules said is copied in.
struct Batch {
    Id<Batch> id;
    QString code;
    Id<Vessel> tank;
    Id<StripKind> strip_kind;
    maths::Day planned_on{};
    maths::Fraction strength{}; ///< wanted, mass fraction as dihydrate
    maths::Temperature ceiling{}; ///< of the tank
    std::optional<maths::Instant> mixed; ///< weighed together; empty while only planned
    std::optional<maths::Instant> closed;
    std::optional<maths::Mass> taken; ///< liquid in strips and bags when it was closed
    std::optional<maths::Mass> unexplained; ///< with a sign
    std::optional<maths::Fraction> unexplained_limit;
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Batch&) const = default;
    static constexpr const char* table = "batch";
    static constexpr auto columns() {
        return std::tuple{
            column("code", &Batch::code),
            column("tank_id", &Batch::tank),
            column("strip_kind_id", &Batch::strip_kind),
            column("planned_on", &Batch::planned_on),
            column("strength_ppm", &Batch::strength),
            column("ceiling_cc", &Batch::ceiling),
            column("mixed", &Batch::mixed),
            column("closed", &Batch::closed),
            column("taken_mg", &Batch::taken),
            column("unexplained_mg", &Batch::unexplained),
            column("unexplained_limit_ppm", &Batch::unexplained_limit),
            column("note", &Batch::note),
            column("void_reason", &Batch::void_reason)};
    }
};

} // namespace soakbook::book
