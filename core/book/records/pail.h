// SPDX-License-Identifier: GPL-3.0-or-later
// A pail of leftover liquid.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/bag.h"
#include "core/book/records/pour.h"

namespace soakbook::book {

/// A pail of leftover liquid.
struct Pail {
    Id<Pail> id;
    QString code;
    Id<Pour> pour;
    Id<Batch> batch; ///< where it came from
    maths::Mass mass{};
    std::optional<maths::Fraction> strength; ///< empty: unknown, it goes into no mix
    maths::Day sealed_on{};
    maths::Day oldest_on{}; ///< day of its oldest liquid
    int times_warmed = 1;
    std::optional<maths::Day> used_in_part_on;
    std::optional<maths::Day> discarded_on;
    std::optional<QString> discard_reason;
    QString stands; ///< where it stands
    LabelState label{};
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Pail&) const = default;
    static constexpr const char* table = "pail";
    static constexpr auto columns() {
        return std::tuple{
            column("code", &Pail::code),
            column("pour_id", &Pail::pour),
            column("batch_id", &Pail::batch),
            column("mass_mg", &Pail::mass),
            column("strength_ppm", &Pail::strength),
            column("sealed_on", &Pail::sealed_on),
            column("oldest_on", &Pail::oldest_on),
            column("times_warmed", &Pail::times_warmed),
            column("used_in_part_on", &Pail::used_in_part_on),
            column("discarded_on", &Pail::discarded_on),
            column("discard_reason", &Pail::discard_reason),
            column("stands", &Pail::stands),
            column("label", &Pail::label),
            column("note", &Pail::note),
            column("void_reason", &Pail::void_reason)};
    }
};

} // namespace soakbook::book
