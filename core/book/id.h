// SPDX-License-Identifier: GPL-3.0-or-later
// The key of a record, a type of its own for each table.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace soakbook::book {

/// The key of one `Record`; 0 is no record.
template <class Record> struct Id {
    std::int64_t value = 0;
    constexpr auto operator<=>(const Id&) const = default;
    constexpr explicit operator bool() const { return value != 0; }
};

} // namespace soakbook::book

template <class Record> struct std::hash<soakbook::book::Id<Record>> {
    std::size_t operator()(const soakbook::book::Id<Record>& id) const noexcept { return std::hash<std::int64_t>{}(id.value); }
};
