// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/season.h"

#include "core/maths/exact.h"
#include "core/maths/keeping.h"
#include "core/maths/yield.h"

#include <algorithm>

namespace soakbook::maths {
namespace {

constexpr std::int64_t most_strips = 10'000'000;
constexpr std::int64_t twenty_years = 7305;

std::optional<Unanswerable> unfit(const SeasonQuestion& question) {
    if (!use_by(question.today, 240))
        return Unanswerable::out_of_range;
    if (question.keeps_months < 1)
        return Unanswerable::not_a_quantity;
    if (question.keeps_months > 1200)
        return Unanswerable::out_of_range;
    if (!is_amount(question.uptake) || (question.flood && !is_amount(*question.flood)))
        return Unanswerable::not_a_quantity;
    const auto materials = amounts_from_total(kilograms(1), question.strength, question.assay);
    if (!materials)
        return materials.error();
    Wide strips = 0;
    for (const StripNeed& need : question.needs) {
        if (std::abs(days_between(question.today, need.day)) > twenty_years)
            return Unanswerable::out_of_range;
        strips += need.strips;
    }
    if (strips > most_strips)
        return Unanswerable::too_large;
    return std::nullopt;
}

/// Makes batches for what the stock does not cover, from the last need back.
class Planner {
public:
    Planner(const SeasonQuestion& question, WorkshopQueue queue, std::vector<Missing> missing)
        : m_question(question), m_queue(std::move(queue)), m_missing(std::move(missing)) {}

    std::optional<Unanswerable> run(SeasonPlan& plan) {
        while (!m_missing.empty()) {
            std::vector<Missing> group = last_group();
            auto days = m_queue.latest(strips_of(group), day_of(group.front()), m_question.today);
            // Started so early that its last strips would be out of date: the earlier needs get a batch of their own.
            while (days && !keeps_until(days->bag, day_of(group.back())) &&
                   day_of(group.front()) < day_of(group.back())) {
                group.erase(group.begin(), std::find_if(group.begin(), group.end(), [&](const Missing& need) {
                                return day_of(need) > day_of(group.front());
                            }));
                days = m_queue.latest(strips_of(group), day_of(group.front()), m_question.today);
            }
            if (days && !keeps_until(days->bag, day_of(group.back())))
                days = std::nullopt;
            take_off(group);
            if (const auto why = days ? add(plan, *days, std::move(group), false) : add_late(plan, std::move(group)))
                return why;
        }
        return std::nullopt;
    }

private:
    Day day_of(const Missing& missing) const { return m_question.needs[missing.need].day; }
    static std::int64_t strips_of(const std::vector<Missing>& group) {
        std::int64_t strips = 0;
        for (const Missing& need : group)
            strips += need.strips;
        return strips;
    }
    bool keeps_until(Day bagged, Day needed) const {
        const auto limit = use_by(bagged, m_question.keeps_months);
        return limit && *limit >= needed;
    }

    /// The last needs, as many as a batch serves and as one batch may be in date for; by day.
    std::vector<Missing> last_group() const {
        std::vector<Missing> group;
        std::int64_t room = m_queue.largest_batch();
        const Day last = day_of(m_missing.back());
        for (std::size_t i = m_missing.size(); i-- > 0 && room > 0;) {
            const Day bagged = days_after(day_of(m_missing[i]), -m_question.workshop.course.rest);
            if (day_of(m_missing[i]) < last && !keeps_until(bagged, last))
                break;
            group.push_back({m_missing[i].need, std::min(room, m_missing[i].strips)});
            room -= group.back().strips;
        }
        std::reverse(group.begin(), group.end());
        return group;
    }

    /// Takes what the group serves off the end of the missing.
    void take_off(const std::vector<Missing>& group) {
        for (std::size_t i = group.size(); i-- > 0;) {
            m_missing.back().strips -= group[i].strips;
            if (m_missing.back().strips == 0)
                m_missing.pop_back();
        }
    }

    std::optional<Unanswerable> add(SeasonPlan& plan, const BatchDays& days, std::vector<Missing> group, bool late) {
        PlannedBatch batch{days, strips_of(group), {}, std::move(group), late};
        const auto liquid = m_question.flood ? liquid_for_strips(days.bins, *m_question.flood)
                                             : liquid_for_strips(batch.strips, m_question.uptake);
        if (!liquid)
            return liquid.error();
        batch.liquid = *liquid;
        const auto amounts = amounts_from_total(batch.liquid, m_question.strength, m_question.assay);
        if (!amounts)
            return amounts.error();
        plan.material.acid += amounts->acid;
        plan.material.glycerine += amounts->glycerine;
        plan.dry_strips += batch.strips;
        m_queue.book(days);
        plan.batches.push_back(std::move(batch));
        return std::nullopt;
    }

    std::optional<Unanswerable> add_late(SeasonPlan& plan, std::vector<Missing> group) {
        auto days = m_queue.earliest(strips_of(group), m_question.today);
        // A batch that would be out of date before its first need is of no use.
        if (days && !keeps_until(days->bag, day_of(group.front())))
            days = std::nullopt;
        bool late = false;
        for (const Missing& need : group) {
            if (days && days->ready <= day_of(need) && keeps_until(days->bag, day_of(need)))
                continue;
            late = true;
            const auto in_time = m_queue.latest(need.strips, day_of(need), days_after(m_question.today, -366));
            const Day last_start = in_time ? in_time->start : m_queue.unhindered(day_of(need)).start;
            plan.too_late.push_back(
                {need.need, need.strips, last_start, days ? std::optional<Day>(days->ready) : std::nullopt});
        }
        return days ? add(plan, *days, std::move(group), late) : std::nullopt;
    }

    const SeasonQuestion& m_question;
    WorkshopQueue m_queue;
    std::vector<Missing> m_missing;
};

} // namespace

Answer<SeasonPlan> plan_season(const SeasonQuestion& question) {
    if (const auto why = unfit(question))
        return unexpected(*why);
    auto queue = WorkshopQueue::in(question.workshop);
    if (!queue)
        return unexpected(queue.error());
    auto stock = use_stock(question.needs, question.bags);
    if (!stock)
        return unexpected(stock.error());
    SeasonPlan plan;
    plan.stock = std::move(*stock);
    Planner planner(question, std::move(*queue), plan.stock.missing);
    if (const auto why = planner.run(plan))
        return unexpected(*why);
    const auto day_of = [&question](std::size_t need) { return question.needs[need].day; };
    std::stable_sort(plan.too_late.begin(), plan.too_late.end(),
                     [&](const TooLate& a, const TooLate& b) { return day_of(a.need) < day_of(b.need); });
    std::stable_sort(plan.batches.begin(), plan.batches.end(),
                     [](const PlannedBatch& a, const PlannedBatch& b) { return a.days.start < b.days.start; });
    return plan;
}

Answer<std::int64_t> containers_to_buy(Mass needed, Mass at_hand, Mass each) {
    if (needed.count < 0 || at_hand.count < 0)
        return unexpected(Unanswerable::not_a_quantity);
    const auto containers = containers_for(std::max(needed - at_hand, Mass{}), each);
    if (!containers)
        return unexpected(containers.error());
    return containers->to_have();
}

} // namespace soakbook::maths
