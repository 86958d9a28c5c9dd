// SPDX-License-Identifier: GPL-3.0-or-later
// Whose workbook it is.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

/// Whose workbook it is.
struct Operation {
    Id<Operation> id;
    QString name;
    QString maker; ///< address and telephone for labels
    QString registration; ///< number of the operation with the authority, if there is one

    bool operator==(const Operation&) const = default;
    static constexpr const char* table = "operation";
    static constexpr auto columns() {
        return std::tuple{
            column("name", &Operation::name),
            column("maker", &Operation::maker),
            column("registration", &Operation::registration)};
    }
};

} // namespace soakbook::book
