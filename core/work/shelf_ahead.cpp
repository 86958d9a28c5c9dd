// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/shelf_ahead.h"

#include "core/work/bag_choice.h"

#include <algorithm>

namespace soakbook::work {

ShelfAhead::ShelfAhead(const book::Workbook& workbook, maths::Day today)
    : m_today(today), m_bags(book::bag_stock_on_shelf(workbook)), m_wanted(strips_wanted(workbook)) {}

void ShelfAhead::go_to(maths::Day day) {
    // A round whose day has gone by still wants its strips, today at the earliest.
    for (; m_next < m_wanted.size() && std::max(m_wanted[m_next].on, m_today) <= day; ++m_next)
        take(m_wanted[m_next]);
}

void ShelfAhead::take(const Wanted& wanted) {
    const maths::Day on = std::max(wanted.on, m_today);
    int still = wanted.strips;
    for (book::BagStock& bag : m_bags) {
        if (still == 0)
            break;
        if (bag.bag.strip_kind != wanted.kind || !is_ready(bag, on))
            continue;
        const int taken = std::min(still, bag.left);
        bag.left -= taken;
        still -= taken;
    }
    const auto same =
        std::find_if(m_rounds.begin(), m_rounds.end(), [&](const RoundAhead& r) { return r.round == wanted.round; });
    RoundAhead& round = same != m_rounds.end()
                            ? *same
                            : m_rounds.emplace_back(RoundAhead{wanted.round, wanted.round_name, wanted.on, 0, 0});
    round.wanted += wanted.strips;
    round.short_of += still;
}

int ShelfAhead::in_date(maths::Day day) const {
    int strips = 0;
    for (const book::BagStock& bag : m_bags)
        if (*bag.bag.use_by >= day && *bag.bag.sealed_on <= day)
            strips += bag.left;
    return strips;
}

int ShelfAhead::reach_limit(maths::Day from, maths::Day to) const {
    int strips = 0;
    for (const book::BagStock& bag : m_bags)
        if (*bag.bag.use_by >= from && *bag.bag.use_by <= to)
            strips += bag.left;
    return strips;
}

} // namespace soakbook::work
