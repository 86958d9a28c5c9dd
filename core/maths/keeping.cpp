// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/keeping.h"

namespace soakbook::maths {
namespace {

constexpr Day first_day = day(1, 1, 1);
constexpr Day last_day = day(9999, 12, 31);
constexpr std::int64_t most_days_reckoned = 36'500;

bool in_calendar(Day d) {
    return first_day <= d && d <= last_day;
}

Answer<Day> checked(Day d) {
    if (!in_calendar(d))
        return unexpected(Unanswerable::out_of_range);
    return d;
}

Answer<Day> days_on(Day from, std::int64_t days) {
    if (!in_calendar(from) || days < 0 || days > most_days_reckoned)
        return unexpected(Unanswerable::out_of_range);
    return checked(days_after(from, days));
}

} // namespace

Answer<Day> months_after(Day from, std::int64_t months) {
    if (!in_calendar(from) || months < 0 || months > 1200)
        return unexpected(Unanswerable::out_of_range);
    const std::chrono::year_month_day start{from};
    const auto month = start.year() / start.month() + std::chrono::months{months};
    const std::chrono::year_month_day same_day{month.year(), month.month(), start.day()};
    if (same_day.ok())
        return checked(Day{same_day});
    return checked(Day{month / std::chrono::last});
}

Answer<Day> use_by(Day made, std::int64_t months) {
    return months_after(made, months);
}

Answer<Day> rest_until(Day bagged, std::int64_t days) {
    return days_on(bagged, days);
}

Answer<Window> pull_window(Day placed, std::int64_t least_days, std::int64_t most_days) {
    if (least_days > most_days)
        return unexpected(Unanswerable::out_of_range);
    const auto first = days_on(placed, least_days);
    const auto last = days_on(placed, most_days);
    if (!first || !last)
        return unexpected(Unanswerable::out_of_range);
    return Window{*first, *last};
}

Answer<Day> keep_record_until(Day of_treatment, std::int64_t years) {
    if (years < 0 || years > 100)
        return unexpected(Unanswerable::out_of_range);
    return months_after(of_treatment, 12 * years);
}

} // namespace soakbook::maths
