// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/copy_rotation.h"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <set>

namespace soakbook::book {

namespace {

constexpr std::size_t newest_kept = 20;

std::int64_t day_number(maths::Day day) { return day.time_since_epoch().count(); }

std::int64_t floored(std::int64_t number, std::int64_t by) { return number >= 0 ? number / by : -((by - 1 - number) / by); }

// Day 0, the first of January 1970, was a Thursday; weeks begin on Monday.
std::int64_t week_of(maths::Day day) { return floored(day_number(day) + 3, 7); }

std::int64_t month_of(maths::Day day) {
    const std::chrono::year_month_day date{day};
    return std::int64_t{static_cast<int>(date.year())} * 12 + static_cast<unsigned>(date.month());
}

std::int64_t year_of(maths::Day day) { return static_cast<int>(std::chrono::year_month_day{day}.year()); }

/// The newest copy of each of so many days, weeks, months or years.
struct Shelf {
    std::int64_t (*of)(maths::Day);
    std::size_t most;
    std::set<std::int64_t> taken = {};

    bool takes(maths::Day day) { return taken.size() < most && taken.insert(of(day)).second; }
};

} // namespace

std::vector<bool> which_copies_stay(const std::vector<DatedCopy>& copies) {
    std::vector<std::size_t> order(copies.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return copies[a].seq > copies[b].seq; });
    Shelf shelves[] = {{day_number, 14}, {week_of, 8}, {month_of, 24}, {year_of, 10}};
    std::vector<bool> stay(copies.size(), false);
    std::size_t newer = 0;
    for (const std::size_t i : order) {
        bool stays = newer < newest_kept;
        if (copies[i].verified) {
            for (Shelf& shelf : shelves)
                stays = shelf.takes(copies[i].day) || stays;
            ++newer;
        }
        stay[i] = stays;
    }
    return stay;
}

} // namespace soakbook::book
