// SPDX-License-Identifier: GPL-3.0-or-later
// The twelve months from today's: strips by their limit, what rounds want, what stays in date.
#include "core/work/due.h"
#include "core/work/shelf_ahead.h"
#include "core/work/store_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

constexpr int months_shown = 12;

struct Month {
    std::chrono::year_month of;
    maths::Day first() const { return maths::Day{of / 1}; }
    maths::Day last() const { return maths::Day{of / std::chrono::last}; }
};

std::vector<Month> months_from(maths::Day today) {
    const std::chrono::year_month_day day{today};
    std::vector<Month> months;
    for (int i = 0; i < months_shown; ++i)
        months.push_back({std::chrono::year_month{day.year(), day.month()} + std::chrono::months{i}});
    return months;
}

/// The months of a shelf from which no round has taken anything yet.
std::vector<StockMonth> months_of(const ShelfAhead& untouched, maths::Day today) {
    std::vector<StockMonth> months;
    for (const Month& month : months_from(today)) {
        StockMonth m;
        m.year = static_cast<int>(month.of.year());
        m.month = static_cast<unsigned>(month.of.month());
        m.strips = untouched.reach_limit(month.first(), month.last());
        m.in_date = untouched.in_date(month.last());
        for (const Wanted& w : untouched.wanted()) {
            const maths::Day on = std::max(w.on, today);
            if (on >= month.first() && on <= month.last())
                m.wanted += w.strips;
        }
        months.push_back(m);
    }
    return months;
}

} // namespace

std::vector<StockMonth> stock_by_month(const book::Workbook& workbook, maths::Day today) {
    return months_of(ShelfAhead(workbook, today), today);
}

YearAhead year_ahead(const book::Workbook& workbook, maths::Day today) {
    YearAhead year;
    ShelfAhead shelf(workbook, today);
    year.months = months_of(shelf, today);
    for (const Month& month : months_from(today)) {
        shelf.go_to(month.last());
        year.in_date_after_rounds.push_back(shelf.in_date(month.last()));
        // Later rounds cannot take what has passed its limit, so what is left of the month is unused for good.
        year.reach_limit.push_back(shelf.reach_limit(std::max(month.first(), today), month.last()));
    }
    for (const RoundAhead& round : shelf.rounds())
        year.rounds.push_back({round.name, round.on, round.wanted, round.short_of});
    return year;
}

} // namespace soakbook::work
