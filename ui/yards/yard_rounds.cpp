// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yard_rounds.h"

#include <algorithm>

namespace soakbook::ui {

bool is_visited(const work::RoundLine& round, work::YardId yard) {
    return std::any_of(round.yards.begin(), round.yards.end(), [yard](const auto& one) { return one.first == yard && one.second; });
}

std::vector<work::RoundLine> open_rounds(const book::Workbook& workbook, work::YardId yard) {
    std::vector<work::RoundLine> found;
    for (const work::RoundLine& round : work::rounds(workbook, false)) {
        if (std::any_of(round.yards.begin(), round.yards.end(), [yard](const auto& one) { return one.first == yard; })) {
            found.push_back(round);
        }
    }
    std::stable_sort(found.begin(), found.end(), [yard](const work::RoundLine& a, const work::RoundLine& b) {
        const bool a_done = is_visited(a, yard);
        const bool b_done = is_visited(b, yard);
        return a_done != b_done ? b_done : a.planned_on < b.planned_on;
    });
    return found;
}

} // namespace soakbook::ui
