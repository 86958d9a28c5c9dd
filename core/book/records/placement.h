// SPDX-License-Identifier: GPL-3.0-or-later
// Strips of one bag hung in one hive or group, and when they came out.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/bag.h"
#include "core/book/records/hive.h"
#include "core/book/records/round.h"

namespace soakbook::book {

/// Strips of one bag hung in one hive or group, and when they came out.
struct Placement {
    Id<Placement> id;
    std::optional<Id<Round>> round;
    Id<Hive> hive;
    Id<Yard> yard; ///< where the hive stood that day
    Id<Bag> bag;
    int strips = 0;
    std::optional<maths::Mass> acid_per_strip; ///< dihydrate, copied
    maths::Day placed_on{};
    QString placed_by;
    maths::Instant written{};
    std::optional<maths::Day> pull_from;
    std::optional<maths::Day> pull_by;
    std::optional<int> withdrawal_days;
    std::optional<bool> supers_on;
    QString asked; ///< what was asked and answered with yes, as keys of Why
    std::optional<QString> past_limit_reason;
    std::optional<maths::Day> pulled_on;
    std::optional<int> pulled;
    std::optional<int> missing;
    QString pulled_by;
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Placement&) const = default;
    static constexpr const char* table = "placement";
    static constexpr auto columns() {
        return std::tuple{
            column("round_id", &Placement::round),
            column("hive_id", &Placement::hive),
            column("yard_id", &Placement::yard),
            column("bag_id", &Placement::bag),
            column("strips", &Placement::strips),
            column("acid_per_strip_mg", &Placement::acid_per_strip),
            column("placed_on", &Placement::placed_on),
            column("placed_by", &Placement::placed_by),
            column("written", &Placement::written),
            column("pull_from", &Placement::pull_from),
            column("pull_by", &Placement::pull_by),
            column("withdrawal_days", &Placement::withdrawal_days),
            column("supers_on", &Placement::supers_on),
            column("asked", &Placement::asked),
            column("past_limit_reason", &Placement::past_limit_reason),
            column("pulled_on", &Placement::pulled_on),
            column("pulled", &Placement::pulled),
            column("missing", &Placement::missing),
            column("pulled_by", &Placement::pulled_by),
            column("note", &Placement::note),
            column("void_reason", &Placement::void_reason)};
    }
};

} // namespace soakbook::book
