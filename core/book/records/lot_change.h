// SPDX-License-Identifier: GPL-3.0-or-later
// A lot counted anew or thrown away; `amount` has a sign and the unit of the lot.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/bag_change.h"
#include "core/book/records/material_lot.h"

namespace soakbook::book {

/// A lot counted anew or thrown away; `amount` has a sign and the unit of the lot.
struct LotChange {
    Id<LotChange> id;
    Id<MaterialLot> lot;
    ChangeKind kind{};
    qint64 amount = 0;
    maths::Day on{};
    QString reason;

    bool operator==(const LotChange&) const = default;
    static constexpr const char* table = "lot_change";
    static constexpr auto columns() {
        return std::tuple{
            column("lot_id", &LotChange::lot),
            column("kind", &LotChange::kind),
            column("amount", &LotChange::amount),
            column("on_day", &LotChange::on),
            column("reason", &LotChange::reason)};
    }
};

} // namespace soakbook::book
