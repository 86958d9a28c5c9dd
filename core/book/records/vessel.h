// SPDX-License-Identifier: GPL-3.0-or-later
// A tank or a bin.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

enum class VesselKind { tank, bin };
template <> struct Names<VesselKind> {
    static constexpr const char* all[] = {"tank", "bin"};
};

/// A tank or a bin.
struct Vessel {
    Id<Vessel> id;
    VesselKind kind{};
    QString name;
    std::optional<maths::Mass> capacity; ///< a tank: the most liquid it is filled with
    std::optional<int> strips_held; ///< a bin: dry strips it is packed with
    std::optional<maths::Mass> flood; ///< a bin: liquid that floods it, measured
    bool active = true;

    bool operator==(const Vessel&) const = default;
    static constexpr const char* table = "vessel";
    static constexpr auto columns() {
        return std::tuple{
            column("kind", &Vessel::kind),
            column("name", &Vessel::name),
            column("capacity_mg", &Vessel::capacity),
            column("strips_held", &Vessel::strips_held),
            column("flood_mg", &Vessel::flood),
            column("active", &Vessel::active)};
    }
};

} // namespace soakbook::book
