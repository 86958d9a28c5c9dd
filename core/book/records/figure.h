// SPDX-License-Identifier: GPL-3.0-or-later
// A figure of Set-up that the user has said; its keys and units stand in core/work/figures.h.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

/// A figure of Set-up that the user has said; its keys and units stand in core/work/figures.h.
struct Figure {
    Id<Figure> id;
    QString key;
    qint64 value = 0;
    QString source; ///< where the figure comes from

    bool operator==(const Figure&) const = default;
    static constexpr const char* table = "figure";
    static constexpr auto columns() {
        return std::tuple{
            column("key", &Figure::key),
            column("value", &Figure::value),
            column("source", &Figure::source)};
    }
};

} // namespace soakbook::book
