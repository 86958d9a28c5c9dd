// SPDX-License-Identifier: GPL-3.0-or-later
// The bench's deliveries with what they cost, invented: 3 a kilogram of acid, 2 of glycerine, 0.05 a dry strip, 0.20 a
// bag.
#pragma once

#include "bench.h"

namespace soakbook::tests {

/// Gives each lot its cost; a lot of that id in `without` has none.
inline void give_costs(Bench& bench, work::LotId without = {}) {
    for (work::LotLine line : work::lots(bench.book(), first_day)) {
        if (line.entry.id == without)
            continue;
        switch (line.entry.material) {
        case work::MaterialKind::acid:
            line.entry.cost = maths::Money{3'000'000};
            break;
        case work::MaterialKind::glycerine:
            line.entry.cost = maths::Money{4'000'000};
            break;
        case work::MaterialKind::strips:
            line.entry.cost = maths::Money{2'500'000};
            break;
        case work::MaterialKind::bags:
            line.entry.cost = maths::Money{1'000'000};
            break;
        }
        must(work::save_lot(bench.book(), line.entry, because(QStringLiteral("invoice came"), 9)));
    }
}

} // namespace soakbook::tests
