// SPDX-License-Identifier: GPL-3.0-or-later
// Leftover liquid of a batch poured into pails at one time. When it was not warm and clear, or the bin not scraped, its pails go into a mix only together.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"

namespace soakbook::book {

/// Leftover liquid of a batch poured into pails at one time. When it was not warm and clear, or the bin not scraped, its pails go into a mix only together.
struct Pour {
    Id<Pour> id;
    Id<Batch> batch;
    maths::Instant at{};
    bool warm_and_clear = false;
    bool scraped = false; ///< the bin was scraped to the bottom
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Pour&) const = default;
    static constexpr const char* table = "pour";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &Pour::batch),
            column("at", &Pour::at),
            column("warm_and_clear", &Pour::warm_and_clear),
            column("scraped", &Pour::scraped),
            column("note", &Pour::note),
            column("void_reason", &Pour::void_reason)};
    }
};

} // namespace soakbook::book
