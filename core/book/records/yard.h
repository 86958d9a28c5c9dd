// SPDX-License-Identifier: GPL-3.0-or-later
// A place where hives stand.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

/// A place where hives stand.
struct Yard {
    Id<Yard> id;
    QString name;
    QString where_it_is;
    QString note;
    bool active = true;

    bool operator==(const Yard&) const = default;
    static constexpr const char* table = "yard";
    static constexpr auto columns() {
        return std::tuple{
            column("name", &Yard::name),
            column("where_it_is", &Yard::where_it_is),
            column("note", &Yard::note),
            column("active", &Yard::active)};
    }
};

} // namespace soakbook::book
