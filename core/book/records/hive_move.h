// SPDX-License-Identifier: GPL-3.0-or-later
// A hive moved to another yard, with what hangs in it.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/hive.h"

namespace soakbook::book {

/// A hive moved to another yard, with what hangs in it.
struct HiveMove {
    Id<HiveMove> id;
    Id<Hive> hive;
    Id<Yard> from;
    Id<Yard> to;
    maths::Day on{};
    std::optional<QString> void_reason;

    bool operator==(const HiveMove&) const = default;
    static constexpr const char* table = "hive_move";
    static constexpr auto columns() {
        return std::tuple{
            column("hive_id", &HiveMove::hive),
            column("from_yard_id", &HiveMove::from),
            column("to_yard_id", &HiveMove::to),
            column("on_day", &HiveMove::on),
            column("void_reason", &HiveMove::void_reason)};
    }
};

} // namespace soakbook::book
