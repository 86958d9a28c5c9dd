// SPDX-License-Identifier: GPL-3.0-or-later
// Temperatures read at a tank.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"

namespace soakbook::book {

/// Temperatures read at a tank.
struct Reading {
    Id<Reading> id;
    Id<Batch> batch;
    maths::Instant at{};
    maths::Instant written{};
    std::optional<maths::Temperature> probe;
    std::optional<maths::Temperature> dial;
    std::optional<maths::Temperature> room;
    std::optional<bool> jacket_seen; ///< water seen in the jacket before power
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Reading&) const = default;
    static constexpr const char* table = "reading";
    static constexpr auto columns() {
        return std::tuple{
            column("batch_id", &Reading::batch),
            column("at", &Reading::at),
            column("written", &Reading::written),
            column("probe_cc", &Reading::probe),
            column("dial_cc", &Reading::dial),
            column("room_cc", &Reading::room),
            column("jacket_seen", &Reading::jacket_seen),
            column("note", &Reading::note),
            column("void_reason", &Reading::void_reason)};
    }
};

} // namespace soakbook::book
