// SPDX-License-Identifier: GPL-3.0-or-later
// One strip of a weighing that was done one by one.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/weigh_in.h"

namespace soakbook::book {

/// One strip of a weighing that was done one by one.
struct WeighSingle {
    Id<WeighSingle> id;
    Id<WeighIn> weigh_in;
    int place = 0; ///< 1, 2, 3 ...
    maths::Mass mass{};

    bool operator==(const WeighSingle&) const = default;
    static constexpr const char* table = "weigh_single";
    static constexpr auto columns() {
        return std::tuple{
            column("weigh_in_id", &WeighSingle::weigh_in),
            column("place", &WeighSingle::place),
            column("mass_mg", &WeighSingle::mass)};
    }
};

} // namespace soakbook::book
