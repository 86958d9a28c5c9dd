// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/workshop_queue.h"

#include "core/maths/exact.h"

#include <algorithm>

namespace soakbook::maths {

Answer<WorkshopQueue> WorkshopQueue::in(Workshop workshop) {
    if (workshop.tanks.empty() || workshop.bins < 1 || workshop.strips_per_bin < 1)
        return unexpected(Unanswerable::not_a_quantity);
    if (workshop.bins > 10'000 || workshop.strips_per_bin > 1'000'000)
        return unexpected(Unanswerable::too_large);
    for (const std::int64_t strips : workshop.tanks)
        if (strips < 1)
            return unexpected(Unanswerable::not_a_quantity);
    for (const std::int64_t days :
         {workshop.course.heat, workshop.course.dissolve, workshop.course.soak, workshop.course.rest})
        if (days < 0 || days > 366)
            return unexpected(Unanswerable::out_of_range);
    if (std::none_of(workshop.works.begin(), workshop.works.end(), [](bool works) { return works; }))
        return unexpected(Unanswerable::out_of_range);
    return WorkshopQueue(std::move(workshop));
}

std::int64_t WorkshopQueue::largest_batch() const {
    return std::min(*std::max_element(m_workshop.tanks.begin(), m_workshop.tanks.end()),
                    m_workshop.bins * m_workshop.strips_per_bin);
}

std::optional<BatchDays> WorkshopQueue::latest(std::int64_t strips, Day ready_by, Day back_to) const {
    for (Day bag = days_after(ready_by, -m_workshop.course.rest);; bag = days_after(bag, -1)) {
        BatchDays days = backward_from(bag);
        if (days.start < back_to)
            return std::nullopt;
        if (place(days, strips))
            return days;
        bag = days.bag;
    }
}

std::optional<BatchDays> WorkshopQueue::earliest(std::int64_t strips, Day from) const {
    for (Day start = from; start < days_after(from, 731); start = days_after(start, 1)) {
        BatchDays days = forward_from(start);
        if (place(days, strips))
            return days;
        start = days.start;
    }
    return std::nullopt;
}

BatchDays WorkshopQueue::unhindered(Day ready_by) const {
    return backward_from(days_after(ready_by, -m_workshop.course.rest));
}

void WorkshopQueue::book(const BatchDays& days) {
    m_tank_busy[days.tank][days.start] = tank_free(days);
    for (Day day = days.flood; day < bins_free(days); day = days_after(day, 1))
        m_bins_busy[day] += days.bins;
}

bool WorkshopQueue::works_on(Day day) const {
    const std::chrono::weekday weekday{day};
    return m_workshop.works[weekday.iso_encoding() - 1];
}

Day WorkshopQueue::working_day_until(Day day) const {
    while (!works_on(day))
        day = days_after(day, -1);
    return day;
}

Day WorkshopQueue::working_day_from(Day day) const {
    while (!works_on(day))
        day = days_after(day, 1);
    return day;
}

BatchDays WorkshopQueue::backward_from(Day bag) const {
    BatchDays days;
    days.bag = working_day_until(bag);
    days.flood = working_day_until(days_after(days.bag, -m_workshop.course.soak));
    days.acid_in = working_day_until(days_after(days.flood, -m_workshop.course.dissolve));
    days.start = working_day_until(days_after(days.acid_in, -m_workshop.course.heat));
    days.ready = days_after(days.bag, m_workshop.course.rest);
    return days;
}

BatchDays WorkshopQueue::forward_from(Day start) const {
    BatchDays days;
    days.start = working_day_from(start);
    days.acid_in = working_day_from(days_after(days.start, m_workshop.course.heat));
    days.flood = working_day_from(days_after(days.acid_in, m_workshop.course.dissolve));
    days.bag = working_day_from(days_after(days.flood, m_workshop.course.soak));
    days.ready = days_after(days.bag, m_workshop.course.rest);
    return days;
}

/// A step done within a day still takes that day.
Day WorkshopQueue::tank_free(const BatchDays& days) {
    return std::max(days.flood, days_after(days.start, 1));
}
Day WorkshopQueue::bins_free(const BatchDays& days) {
    return std::max(days.bag, days_after(days.flood, 1));
}

/// Finds a tank and bins that are free on those days: the smallest tank that will do.
bool WorkshopQueue::place(BatchDays& days, std::int64_t strips) const {
    days.bins = rounded_up(strips, m_workshop.strips_per_bin);
    if (days.bins > m_workshop.bins)
        return false;
    for (auto busy = m_bins_busy.lower_bound(days.flood); busy != m_bins_busy.end() && busy->first < bins_free(days);
         ++busy)
        if (busy->second + days.bins > m_workshop.bins)
            return false;
    std::optional<std::size_t> best;
    for (std::size_t tank = 0; tank < m_workshop.tanks.size(); ++tank) {
        if (m_workshop.tanks[tank] < strips || (best && m_workshop.tanks[*best] <= m_workshop.tanks[tank]))
            continue;
        const auto& busy = m_tank_busy[tank];
        auto after = busy.lower_bound(tank_free(days));
        if (after != busy.begin() && std::prev(after)->second > days.start)
            continue;
        best = tank;
    }
    days.tank = best.value_or(0);
    return best.has_value();
}

} // namespace soakbook::maths
