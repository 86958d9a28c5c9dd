// SPDX-License-Identifier: GPL-3.0-or-later
// A bag of strips, or a label reserved for one that is not filled yet.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/batch.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/soak.h"
#include "core/book/records/strip_kind.h"

namespace soakbook::book {

enum class LabelState { none, printed, stale };
template <> struct Names<LabelState> {
    static constexpr const char* all[] = {"none", "printed", "stale"};
};

/// A bag of strips, or a label reserved for one that is not filled yet.
struct Bag {
    Id<Bag> id;
    QString code;
    Id<Batch> batch;
    std::optional<Id<Soak>> soak;
    Id<StripKind> strip_kind;
    std::optional<Id<MaterialLot>> bag_lot;
    maths::Day reserved_on{};
    std::optional<int> packed; ///< strips put in
    std::optional<maths::Mass> net; ///< contents without the bag, weighed
    std::optional<maths::Mass> dry; ///< of one strip, copied
    std::optional<maths::Mass> strip; ///< mean of one soaked strip at the last weighing, copied
    std::optional<maths::Mass> acid_per_strip; ///< dihydrate, copied
    std::optional<maths::Fraction> strength; ///< copied
    std::optional<maths::Day> sealed_on;
    std::optional<int> rest_days; ///< copied
    std::optional<maths::Day> rest_until;
    std::optional<int> use_months; ///< copied
    std::optional<maths::Day> use_by;
    std::optional<maths::Day> opened_on;
    std::optional<maths::Day> resealed_on;
    QString stands; ///< where it stands
    LabelState label{};
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Bag&) const = default;
    static constexpr const char* table = "bag";
    static constexpr auto columns() {
        return std::tuple{
            column("code", &Bag::code),
            column("batch_id", &Bag::batch),
            column("soak_id", &Bag::soak),
            column("strip_kind_id", &Bag::strip_kind),
            column("bag_lot_id", &Bag::bag_lot),
            column("reserved_on", &Bag::reserved_on),
            column("packed", &Bag::packed),
            column("net_mg", &Bag::net),
            column("dry_mg", &Bag::dry),
            column("strip_mg", &Bag::strip),
            column("acid_per_strip_mg", &Bag::acid_per_strip),
            column("strength_ppm", &Bag::strength),
            column("sealed_on", &Bag::sealed_on),
            column("rest_days", &Bag::rest_days),
            column("rest_until", &Bag::rest_until),
            column("use_months", &Bag::use_months),
            column("use_by", &Bag::use_by),
            column("opened_on", &Bag::opened_on),
            column("resealed_on", &Bag::resealed_on),
            column("stands", &Bag::stands),
            column("label", &Bag::label),
            column("note", &Bag::note),
            column("void_reason", &Bag::void_reason)};
    }
};

} // namespace soakbook::book
