// SPDX-License-Identifier: GPL-3.0-or-later
// A flow in a yard, or days when its hives are not to be opened.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/yard.h"

namespace soakbook::book {

enum class YardTimeKind { flow, closed };
template <> struct Names<YardTimeKind> {
    static constexpr const char* all[] = {"flow", "closed"};
};

/// A flow in a yard, or days when its hives are not to be opened.
struct YardTime {
    Id<YardTime> id;
    Id<Yard> yard;
    YardTimeKind kind{};
    QString what;
    maths::Day from{};
    maths::Day to{}; ///< last day
    std::optional<QString> void_reason;

    bool operator==(const YardTime&) const = default;
    static constexpr const char* table = "yard_time";
    static constexpr auto columns() {
        return std::tuple{
            column("yard_id", &YardTime::yard),
            column("kind", &YardTime::kind),
            column("what", &YardTime::what),
            column("from_day", &YardTime::from),
            column("to_day", &YardTime::to),
            column("void_reason", &YardTime::void_reason)};
    }
};

} // namespace soakbook::book
