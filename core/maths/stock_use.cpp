// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/stock_use.h"

#include <queue>

#include <algorithm>
#include <numeric>

namespace soakbook::maths {
namespace {

template <class Before> std::vector<std::size_t> sorted_places(std::size_t n, Before before) {
    std::vector<std::size_t> places(n);
    std::iota(places.begin(), places.end(), std::size_t{0});
    std::stable_sort(places.begin(), places.end(), before);
    return places;
}

} // namespace

Answer<StockUse> use_stock(std::span<const StripNeed> needs, std::span<const StockBag> bags) {
    StockUse use;
    for (const StripNeed& need : needs)
        if (need.strips < 0)
            return unexpected(Unanswerable::not_a_quantity);
    for (const StockBag& bag : bags) {
        if (bag.strips < 0)
            return unexpected(Unanswerable::not_a_quantity);
        use.unused.push_back(bag.strips);
    }
    const auto by_day = sorted_places(needs.size(), [&](auto a, auto b) { return needs[a].day < needs[b].day; });
    const auto by_ready = sorted_places(bags.size(), [&](auto a, auto b) { return bags[a].ready < bags[b].ready; });
    const auto later_limit = [&](std::size_t a, std::size_t b) {
        return bags[a].use_by != bags[b].use_by ? bags[a].use_by > bags[b].use_by : a > b;
    };
    std::priority_queue<std::size_t, std::vector<std::size_t>, decltype(later_limit)> open(later_limit);
    std::size_t next = 0;
    for (const std::size_t place : by_day) {
        const StripNeed& need = needs[place];
        for (; next < by_ready.size() && bags[by_ready[next]].ready <= need.day; ++next)
            open.push(by_ready[next]);
        std::int64_t wanted = need.strips;
        while (wanted > 0 && !open.empty()) {
            const std::size_t bag = open.top();
            if (bags[bag].use_by < need.day || use.unused[bag] == 0) {
                open.pop();
                continue;
            }
            const std::int64_t taken = std::min(wanted, use.unused[bag]);
            use.uses.push_back({bag, place, taken});
            use.unused[bag] -= taken;
            wanted -= taken;
        }
        if (wanted > 0)
            use.missing.push_back({place, wanted});
    }
    return use;
}

} // namespace soakbook::maths
