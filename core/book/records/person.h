// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who makes entries.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

/// Somebody who makes entries.
struct Person {
    Id<Person> id;
    QString name;
    bool active = true;

    bool operator==(const Person&) const = default;
    static constexpr const char* table = "person";
    static constexpr auto columns() {
        return std::tuple{
            column("name", &Person::name),
            column("active", &Person::active)};
    }
};

} // namespace soakbook::book
