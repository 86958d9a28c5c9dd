// SPDX-License-Identifier: GPL-3.0-or-later
// A delivery of acid, glycerine, dry strips or bags. `amount` and `container_amount` are milligrams for acid and glycerine, pieces for strips and bags.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/strip_kind.h"

namespace soakbook::book {

enum class Material { acid, glycerine, strips, bags };
template <> struct Names<Material> {
    static constexpr const char* all[] = {"acid", "glycerine", "strips", "bags"};
};

enum class AcidForm { dihydrate, anhydrous };
template <> struct Names<AcidForm> {
    static constexpr const char* all[] = {"dihydrate", "anhydrous"};
};

/// A delivery of acid, glycerine, dry strips or bags. `amount` and `container_amount` are milligrams for acid and glycerine, pieces for strips and bags.
struct MaterialLot {
    Id<MaterialLot> id;
    Material material{};
    QString name; ///< the lot as its label says it
    QString supplier;
    maths::Day received_on{};
    qint64 amount = 0;
    std::optional<qint64> container_amount; ///< what one can, sack or box holds
    std::optional<AcidForm> acid_form;
    std::optional<maths::Fraction> assay; ///< as oxalic acid dihydrate; up to 140.02 % for anhydrous powder
    std::optional<Id<StripKind>> strip_kind;
    std::optional<maths::Mass> dry; ///< one dry strip of this lot, weighed
    std::optional<maths::Day> best_before;
    std::optional<maths::Money> cost; ///< of the whole lot
    std::optional<maths::Day> finished_on;
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const MaterialLot&) const = default;
    static constexpr const char* table = "material_lot";
    static constexpr auto columns() {
        return std::tuple{
            column("material", &MaterialLot::material),
            column("name", &MaterialLot::name),
            column("supplier", &MaterialLot::supplier),
            column("received_on", &MaterialLot::received_on),
            column("amount", &MaterialLot::amount),
            column("container_amount", &MaterialLot::container_amount),
            column("acid_form", &MaterialLot::acid_form),
            column("assay_ppm", &MaterialLot::assay),
            column("strip_kind_id", &MaterialLot::strip_kind),
            column("dry_mg", &MaterialLot::dry),
            column("best_before", &MaterialLot::best_before),
            column("cost", &MaterialLot::cost),
            column("finished_on", &MaterialLot::finished_on),
            column("note", &MaterialLot::note),
            column("void_reason", &MaterialLot::void_reason)};
    }
};

} // namespace soakbook::book
