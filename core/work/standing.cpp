// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/standing.h"

#include "core/book/queries/hives.h"
#include "core/work/yards_view.h"

#include <algorithm>

namespace soakbook::work {

std::vector<book::Hive> hives_standing(const book::Workbook& workbook, YardId yard, maths::Day on) {
    // The first move after a day tells where the hive stood on it.
    std::map<HiveId, YardId> stood;
    for (const book::HiveMove& move : book::moves_after(workbook, on))
        stood.emplace(move.hive, move.from);
    std::vector<book::Hive> hives = book::hives_of_yard(workbook, stood.empty() ? yard : YardId{});
    for (book::Hive& hive : hives)
        if (const auto before = stood.find(hive.id); before != stood.end())
            hive.yard = before->second;
    if (yard)
        std::erase_if(hives, [yard](const book::Hive& hive) { return hive.yard != yard; });
    sort_as_counted(hives);
    return hives;
}

YardId yard_of_hive(const book::Workbook& workbook, const book::Hive& hive, maths::Day on) {
    for (const book::HiveMove& move : book::moves_of_hive(workbook, hive.id))
        if (move.on > on)
            return move.from;
    return hive.yard;
}

bool lives_on(const book::Hive& hive, maths::Day on) {
    return hive.state == book::HiveState::alive || (hive.state_on && *hive.state_on > on);
}

void sort_as_counted(std::vector<book::Hive>& hives) {
    std::stable_sort(hives.begin(), hives.end(), [](const book::Hive& a, const book::Hive& b) {
        return a.yard != b.yard ? a.yard < b.yard : comes_before(a.name, b.name);
    });
}

} // namespace soakbook::work
