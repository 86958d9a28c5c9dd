// SPDX-License-Identifier: GPL-3.0-or-later
// A round of treatment over one or more yards; its rule is copied in.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/strip_kind.h"

namespace soakbook::book {

/// A round of treatment over one or more yards; its rule is copied in.
struct Round {
    Id<Round> id;
    QString name;
    Id<StripKind> strip_kind;
    maths::Day planned_on{};
    DoseKind dose_kind{};
    std::optional<int> dose_strips;
    std::optional<int> dose_frames_tenths;
    std::optional<int> dose_least;
    std::optional<int> dose_most;
    int pull_from_days = 0;
    int pull_by_days = 0;
    std::optional<int> withdrawal_days;
    std::optional<maths::Day> closed_on;
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Round&) const = default;
    static constexpr const char* table = "round";
    static constexpr auto columns() {
        return std::tuple{
            column("name", &Round::name),
            column("strip_kind_id", &Round::strip_kind),
            column("planned_on", &Round::planned_on),
            column("dose_kind", &Round::dose_kind),
            column("dose_strips", &Round::dose_strips),
            column("dose_frames_tenths", &Round::dose_frames_tenths),
            column("dose_least", &Round::dose_least),
            column("dose_most", &Round::dose_most),
            column("pull_from_days", &Round::pull_from_days),
            column("pull_by_days", &Round::pull_by_days),
            column("withdrawal_days", &Round::withdrawal_days),
            column("closed_on", &Round::closed_on),
            column("note", &Round::note),
            column("void_reason", &Round::void_reason)};
    }
};

} // namespace soakbook::book
