// SPDX-License-Identifier: GPL-3.0-or-later
// Strips of a bag thrown away, or its count put right; `strips` has a sign.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/bag.h"

namespace soakbook::book {

enum class ChangeKind { recount, discard };
template <> struct Names<ChangeKind> {
    static constexpr const char* all[] = {"recount", "discard"};
};

/// Strips of a bag thrown away, or its count put right; `strips` has a sign.
struct BagChange {
    Id<BagChange> id;
    Id<Bag> bag;
    ChangeKind kind{};
    int strips = 0;
    maths::Day on{};
    QString reason;
    std::optional<QString> void_reason;

    bool operator==(const BagChange&) const = default;
    static constexpr const char* table = "bag_change";
    static constexpr auto columns() {
        return std::tuple{
            column("bag_id", &BagChange::bag),
            column("kind", &BagChange::kind),
            column("strips", &BagChange::strips),
            column("on_day", &BagChange::on),
            column("reason", &BagChange::reason),
            column("void_reason", &BagChange::void_reason)};
    }
};

} // namespace soakbook::book
