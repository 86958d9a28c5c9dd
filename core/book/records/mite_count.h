// SPDX-License-Identifier: GPL-3.0-or-later
// A mite count of one hive or group.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/hive.h"
#include "core/book/records/round.h"

namespace soakbook::book {

enum class CountKind { wash, powder, drop };
template <> struct Names<CountKind> {
    static constexpr const char* all[] = {"wash", "powder", "drop"};
};

/// A mite count of one hive or group.
struct MiteCount {
    Id<MiteCount> id;
    Id<Hive> hive;
    std::optional<Id<Round>> round;
    maths::Day on{};
    CountKind kind{};
    int mites = 0;
    std::optional<int> bees; ///< wash and powder
    std::optional<int> days; ///< natural drop: days the board lay
    QString counted_by;
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const MiteCount&) const = default;
    static constexpr const char* table = "mite_count";
    static constexpr auto columns() {
        return std::tuple{
            column("hive_id", &MiteCount::hive),
            column("round_id", &MiteCount::round),
            column("on_day", &MiteCount::on),
            column("kind", &MiteCount::kind),
            column("mites", &MiteCount::mites),
            column("bees", &MiteCount::bees),
            column("days", &MiteCount::days),
            column("counted_by", &MiteCount::counted_by),
            column("note", &MiteCount::note),
            column("void_reason", &MiteCount::void_reason)};
    }
};

} // namespace soakbook::book
