// SPDX-License-Identifier: GPL-3.0-or-later
// When a batch can be made: tanks and bins are two queues, and hands are there on the user's working days only. A tank
// is free again on the day its liquid goes to the bins, a bin on the day its strips are bagged. Source: common
// practice, no source.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <vector>

namespace soakbook::maths {

/// Days that each step takes.
struct CourseDays {
    std::int64_t heat = 0;     ///< from switching on to the acid going in
    std::int64_t dissolve = 0; ///< from there to the liquid being clear and poured
    std::int64_t soak = 0;     ///< from there to bagging
    std::int64_t rest = 0;     ///< from there to the first use
};
struct Workshop {
    std::vector<std::int64_t> tanks; ///< for each tank: strips that one filling is good for
    std::int64_t bins = 0;
    std::int64_t strips_per_bin = 0;
    CourseDays course;
    std::array<bool, 7> works{true, true, true, true, true, true, true}; ///< Monday to Sunday
};
/// The days of one batch.
struct BatchDays {
    Day start{};
    Day acid_in{};
    Day flood{};
    Day bag{};
    Day ready{};
    std::size_t tank = 0;
    std::int64_t bins = 0;

    constexpr bool operator==(const BatchDays&) const = default;
};

class WorkshopQueue {
public:
    /// Refuses a workshop without tanks or bins, steps that are negative or over a year, and a week without a working
    /// day.
    static Answer<WorkshopQueue> in(Workshop workshop);

    /// The most strips one batch can have.
    std::int64_t largest_batch() const;
    /// The latest days on which a batch of `strips` can be made so that it is ready by that day, not looking further
    /// back than `back_to` for its start. Nothing when there is no such time, or the batch is larger than the workshop
    /// takes.
    std::optional<BatchDays> latest(std::int64_t strips, Day ready_by, Day back_to) const;
    /// The earliest days from `from` on, within two years.
    std::optional<BatchDays> earliest(std::int64_t strips, Day from) const;
    /// The latest days if nothing else were going on; for saying when it would have had to start.
    BatchDays unhindered(Day ready_by) const;
    /// Takes the tank and the bins for those days.
    void book(const BatchDays& days);

private:
    explicit WorkshopQueue(Workshop workshop) : m_workshop(std::move(workshop)), m_tank_busy(m_workshop.tanks.size()) {}

    bool works_on(Day day) const;
    Day working_day_until(Day day) const;
    Day working_day_from(Day day) const;
    BatchDays backward_from(Day bag) const;
    BatchDays forward_from(Day start) const;
    bool place(BatchDays& days, std::int64_t strips) const;
    static Day tank_free(const BatchDays& days);
    static Day bins_free(const BatchDays& days);

    Workshop m_workshop;
    std::vector<std::map<Day, Day>> m_tank_busy; ///< for each tank: from, until (not included)
    std::map<Day, std::int64_t> m_bins_busy;     ///< bins in use on a day
};

} // namespace soakbook::maths
