// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/season.h"
#include "tests/maths/answers.h"

#include <chrono>
#include <map>
#include <random>

namespace soakbook::maths {
namespace {

const Day today = day(2026, 3, 2); // a Monday

Workshop workshop() {
    return {{960}, 2, 480, {1, 1, 1, 7}, {true, true, true, true, true, true, true}};
}

SeasonQuestion question(const std::vector<StripNeed>& needs, const std::vector<StockBag>& bags) {
    return {today, needs, bags, workshop(), 12, grams(23), kilograms(31.25), percent(40), percent(100)};
}

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Stock, the_nearest_limit_goes_first_and_only_in_date) {
    const std::vector<StripNeed> needs{{day(2026, 7, 10), 100}, {day(2026, 7, 1), 60}};
    const std::vector<StockBag> bags{{80, day(2026, 1, 1), day(2026, 12, 31)},
                                     {80, day(2026, 1, 1), day(2026, 7, 5)},
                                     {80, day(2026, 7, 8), day(2026, 8, 1)},
                                     {80, day(2026, 7, 11), day(2027, 1, 1)}};
    const auto use = use_stock(needs, bags);
    ASSERT_TRUE(use);
    EXPECT_THAT(use->uses, ElementsAre(BagUse{1, 1, 60}, BagUse{2, 0, 80}, BagUse{0, 0, 20}));
    EXPECT_THAT(use->missing, IsEmpty());
    EXPECT_THAT(use->unused, ElementsAre(60, 20, 0, 80)); // the 20 of bag 1 expire
    EXPECT_FALSE(use_stock({{StripNeed{today, -1}}}, {}).has_value());
    EXPECT_FALSE(use_stock({}, {{StockBag{-1, today, today}}}).has_value());
}

TEST(Queue, a_course_is_counted_back_from_the_day_of_need) {
    const auto queue = WorkshopQueue::in(workshop());
    ASSERT_TRUE(queue);
    EXPECT_EQ(queue->largest_batch(), 960);
    const auto days = queue->latest(960, day(2026, 4, 30), today);
    ASSERT_TRUE(days);
    EXPECT_EQ(days->bag, day(2026, 4, 23));
    EXPECT_EQ(days->flood, day(2026, 4, 22));
    EXPECT_EQ(days->acid_in, day(2026, 4, 21));
    EXPECT_EQ(days->start, day(2026, 4, 20));
    EXPECT_EQ(days->bins, 2);
    EXPECT_FALSE(queue->latest(961, day(2026, 4, 30), today));
}

TEST(Queue, hands_are_there_on_working_days_only) {
    Workshop weekdays = workshop();
    weekdays.works = {true, true, true, true, true, false, false};
    const auto queue = WorkshopQueue::in(weekdays);
    ASSERT_TRUE(queue);
    const auto days = queue->latest(480, day(2026, 5, 3), today); // bagging would fall on Sunday 26 April
    ASSERT_TRUE(days);
    EXPECT_EQ(days->bag, day(2026, 4, 24));
    EXPECT_EQ(days->start, day(2026, 4, 21));
    const auto forward = queue->earliest(480, day(2026, 4, 25));
    ASSERT_TRUE(forward);
    EXPECT_EQ(forward->start, day(2026, 4, 27));
}

TEST(Queue, one_tank_takes_one_batch_and_bins_are_counted) {
    auto queue = WorkshopQueue::in(workshop()).value();
    const auto first = queue.latest(960, day(2026, 4, 30), today);
    ASSERT_TRUE(first);
    queue.book(*first);
    const auto second = queue.latest(960, day(2026, 4, 30), today);
    ASSERT_TRUE(second);
    EXPECT_LE(second->flood, first->start); // the tank is free once its liquid is in the bins
    EXPECT_LE(second->bag, first->flood);   // and so are the bins
    Workshop two_tanks = workshop();
    two_tanks.tanks = {960, 480};
    two_tanks.bins = 3;
    auto wider = WorkshopQueue::in(two_tanks).value();
    const auto large = wider.latest(960, day(2026, 4, 30), today);
    ASSERT_TRUE(large);
    wider.book(*large);
    const auto beside = wider.latest(480, day(2026, 4, 30), today);
    ASSERT_TRUE(beside);
    EXPECT_EQ(beside->tank, 1U);
    EXPECT_EQ(beside->bag, large->bag);
}

TEST(Queue, refuses_workshops_where_nothing_can_be_made) {
    Workshop none = workshop();
    none.tanks.clear();
    EXPECT_FALSE(WorkshopQueue::in(none).has_value());
    none = workshop();
    none.bins = 0;
    EXPECT_FALSE(WorkshopQueue::in(none).has_value());
    none = workshop();
    none.course.soak = -1;
    EXPECT_FALSE(WorkshopQueue::in(none).has_value());
    none = workshop();
    none.works.fill(false);
    EXPECT_FALSE(WorkshopQueue::in(none).has_value());
}

TEST(Season, what_the_stock_covers_makes_no_batch) {
    const std::vector<StripNeed> needs{{day(2026, 7, 1), 100}};
    const std::vector<StockBag> bags{{120, day(2026, 1, 1), day(2026, 12, 31)}};
    const auto plan = plan_season(question(needs, bags));
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->batches.empty());
    EXPECT_TRUE(plan->too_late.empty());
    EXPECT_EQ(plan->material, (Amounts{}));
}

TEST(Season, a_shortage_becomes_a_batch_with_its_last_day_to_start) {
    const std::vector<StripNeed> needs{{day(2026, 7, 1), 900}, {day(2026, 7, 20), 200}};
    const std::vector<StockBag> bags{{240, day(2026, 1, 1), day(2026, 12, 31)}};
    const auto plan = plan_season(question(needs, bags));
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->batches.size(), 1U);
    EXPECT_EQ(plan->batches[0].strips, 860);
    EXPECT_EQ(plan->batches[0].days.start, day(2026, 6, 21));
    EXPECT_EQ(plan->batches[0].liquid, kilograms(62.5));
    EXPECT_EQ(plan->material, (Amounts{kilograms(25), kilograms(37.5)}));
    EXPECT_EQ(plan->dry_strips, 860);
    EXPECT_THAT(containers_to_buy(plan->material.glycerine, Mass{}, kilograms(25)), Is(2));
    EXPECT_THAT(containers_to_buy(plan->material.glycerine, kilograms(20), kilograms(25)), Is(1));
    EXPECT_THAT(containers_to_buy(plan->material.glycerine, kilograms(40), kilograms(25)), Is(0));
    EXPECT_THAT(containers_to_buy(kilograms(1), Mass{}, Mass{}), Refuses(Unanswerable::not_a_quantity));
}

TEST(Season, what_is_too_late_is_said_first) {
    const std::vector<StripNeed> needs{{days_after(today, 5), 100}, {days_after(today, 60), 100}};
    const auto plan = plan_season(question(needs, {}));
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->too_late.size(), 1U);
    EXPECT_EQ(plan->too_late[0].need, 0U);
    EXPECT_EQ(plan->too_late[0].strips, 100);
    EXPECT_EQ(plan->too_late[0].last_start, days_after(today, -5)); // 5 - 7 rest - 1 - 1 - 1
    EXPECT_EQ(plan->too_late[0].ready, days_after(today, 10));
    ASSERT_EQ(plan->batches.size(), 1U);
    EXPECT_TRUE(plan->batches[0].late);
    EXPECT_EQ(plan->batches[0].strips, 200);
}

TEST(Season, one_batch_serves_only_needs_within_its_time) {
    const std::vector<StripNeed> needs{{day(2026, 5, 1), 100}, {day(2027, 5, 20), 100}};
    const auto plan = plan_season(question(needs, {}));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->batches.size(), 2U);
    EXPECT_TRUE(plan->too_late.empty());
}

TEST(Season, refuses_questions_without_an_answer) {
    const std::vector<StripNeed> needs{{day(2026, 7, 1), 100}};
    auto asked = question(needs, {});
    asked.keeps_months = 0;
    EXPECT_FALSE(plan_season(asked).has_value());
    asked = question(needs, {});
    asked.uptake = Mass{};
    EXPECT_FALSE(plan_season(asked).has_value());
    asked = question(needs, {});
    asked.assay = percent(30);
    EXPECT_FALSE(plan_season(asked).has_value());
    asked = question(needs, {});
    asked.today = Day::max();
    EXPECT_FALSE(plan_season(asked).has_value());
    const std::vector<StripNeed> far{{day(2090, 1, 1), 1}};
    EXPECT_FALSE(plan_season(question(far, {})).has_value());
    const std::vector<StripNeed> absurd{{day(2026, 7, 1), INT64_MAX}};
    EXPECT_FALSE(plan_season(question(absurd, {})).has_value());
}

TEST(SeasonProperty, every_strip_wanted_comes_from_somewhere_in_date) {
    std::mt19937_64 random(15'000);
    std::uniform_int_distribution<std::int64_t> strips(1, 700);
    std::uniform_int_distribution<std::int64_t> when(-3, 300);
    std::uniform_int_distribution<std::size_t> how_many(0, 25);
    std::uniform_int_distribution<int> coin(0, 1);
    for (int i = 0; i < 400; ++i) {
        std::vector<StripNeed> needs(how_many(random));
        for (StripNeed& need : needs)
            need = {days_after(today, when(random)), strips(random)};
        std::vector<StockBag> bags(how_many(random));
        for (StockBag& bag : bags) {
            bag = {strips(random) / 8, days_after(today, when(random)), {}};
            bag.use_by = days_after(bag.ready, when(random) + 3);
        }
        auto asked = question(needs, bags);
        asked.keeps_months = 1 + strips(random) % 12;
        for (bool& works : asked.workshop.works)
            works = works && coin(random) == 1;
        asked.workshop.works[2] = true;
        asked.workshop.tanks = {960, 400};
        const auto plan = plan_season(asked);
        ASSERT_TRUE(plan);

        std::vector<std::int64_t> served(needs.size(), 0);
        std::vector<std::int64_t> taken(bags.size(), 0);
        for (const BagUse& use : plan->stock.uses) {
            served[use.need] += use.strips;
            taken[use.bag] += use.strips;
            ASSERT_GE(needs[use.need].day, bags[use.bag].ready);
            ASSERT_LE(needs[use.need].day, bags[use.bag].use_by);
        }
        for (std::size_t b = 0; b < bags.size(); ++b)
            ASSERT_EQ(taken[b] + plan->stock.unused[b], bags[b].strips);
        std::vector<std::int64_t> late(needs.size(), 0);
        std::vector<std::int64_t> without(needs.size(), 0);
        for (const TooLate& one : plan->too_late) {
            late[one.need] += one.strips;
            without[one.need] += one.ready ? 0 : one.strips;
        }
        std::map<Day, std::int64_t> bins;
        std::map<std::pair<std::size_t, Day>, int> tanks;
        for (const PlannedBatch& batch : plan->batches) {
            ASSERT_GE(batch.days.start, today);
            ASSERT_LE(batch.strips, 960);
            for (const Day step : {batch.days.start, batch.days.acid_in, batch.days.flood, batch.days.bag})
                ASSERT_TRUE(asked.workshop.works[std::chrono::weekday{step}.iso_encoding() - 1]);
            std::int64_t sum = 0;
            for (const Missing& need : batch.serves) {
                sum += need.strips;
                served[need.need] += need.strips;
                if (late[need.need] == 0) {
                    ASSERT_LE(batch.days.ready, needs[need.need].day);
                }
            }
            ASSERT_EQ(sum, batch.strips);
            for (Day d = batch.days.flood; d < batch.days.bag; d = days_after(d, 1))
                ASSERT_LE(bins[d] += batch.days.bins, 2);
            for (Day d = batch.days.start; d < batch.days.flood; d = days_after(d, 1))
                ASSERT_EQ((tanks[{batch.days.tank, d}]++), 0);
        }
        for (std::size_t n = 0; n < needs.size(); ++n)
            ASSERT_EQ(served[n] + without[n], needs[n].strips) << i;
    }
}

TEST(SeasonProperty, two_thousand_hives_are_planned_with_nothing_too_late) {
    std::mt19937_64 random(2'000);
    std::vector<StripNeed> needs;
    for (std::int64_t round = 0; round < 6; ++round)
        for (int hive = 0; hive < 2'000; ++hive)
            needs.push_back({days_after(today, 60 + 45 * round + hive / 150), 4 + hive % 3});
    std::vector<StockBag> bags;
    for (int bag = 0; bag < 500; ++bag)
        bags.push_back({80, days_after(today, bag % 30 - 20), days_after(today, 40 + bag % 300)});
    Workshop large = workshop();
    large.tanks = {2'880, 2'880};
    large.bins = 12;
    auto asked = question(needs, bags);
    asked.workshop = large;
    const auto plan = plan_season(asked);
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->too_late.empty());
    EXPECT_GT(plan->batches.size(), 5U);
}

} // namespace
} // namespace soakbook::maths
