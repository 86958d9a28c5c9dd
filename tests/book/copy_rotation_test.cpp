// SPDX-License-Identifier: GPL-3.0-or-later
// Which safe copies stay: enough of the newest, one of each day, week, month and year, and never by the clock.
#include "core/book/copy_rotation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace soakbook::tests {

using namespace book;
using maths::days_after;

namespace {

constexpr maths::Day start = maths::day(2026, 3, 2); // a Monday

std::vector<DatedCopy> that_stay(const std::vector<DatedCopy>& copies) {
    const std::vector<bool> stay = which_copies_stay(copies);
    std::vector<DatedCopy> kept;
    for (std::size_t i = 0; i < copies.size(); ++i)
        if (stay[i])
            kept.push_back(copies[i]);
    return kept;
}

std::set<std::int64_t> numbers(const std::vector<DatedCopy>& copies) {
    std::set<std::int64_t> seqs;
    for (const DatedCopy& copy : copies)
        seqs.insert(copy.seq);
    return seqs;
}

/// One copy a day for so many days, each rotated when it was made, as a keeper does.
std::vector<DatedCopy> a_copy_a_day(int days) {
    std::vector<DatedCopy> copies;
    for (int i = 0; i < days; ++i) {
        copies.push_back({i + 1, days_after(start, i), true});
        copies = that_stay(copies);
    }
    return copies;
}

int how_many(const std::vector<DatedCopy>& copies, maths::Day from, maths::Day to) {
    return static_cast<int>(std::count_if(copies.begin(), copies.end(), [&](const DatedCopy& c) { return c.day >= from && c.day < to; }));
}

} // namespace

TEST(CopyRotation, keeps_every_copy_while_there_are_twenty) {
    std::vector<DatedCopy> copies;
    for (int i = 0; i < 20; ++i)
        copies.push_back({i + 1, start, true});
    EXPECT_EQ(that_stay(copies).size(), 20U);
    copies.push_back({21, start, true});
    EXPECT_EQ(numbers(that_stay(copies)).count(1), 0U);
    EXPECT_TRUE(which_copies_stay({}).empty());
}

TEST(CopyRotation, keeps_the_newest_of_each_day_week_month_and_year) {
    // Ten copies a day for a year and a half: the newest twenty are of two days.
    std::vector<DatedCopy> copies;
    const int days = 550;
    for (int i = 0; i < days * 10; ++i)
        copies.push_back({i + 1, days_after(start, i / 10), true});
    const auto kept = that_stay(copies);
    const auto newest_of_day = [](int day) { return std::int64_t{day} * 10 + 10; };
    const auto seqs = numbers(kept);
    for (int day = days - 14; day < days; ++day)
        EXPECT_EQ(seqs.count(newest_of_day(day)), 1U) << day;
    EXPECT_EQ(seqs.count(newest_of_day(days - 15)) + seqs.count(newest_of_day(days - 16)), 0U);
    // 20 newest, 12 days more, and what weeks, months and years add: the last day of each.
    EXPECT_EQ(how_many(kept, start, days_after(start, days - 56)), 16) << "one a month before the eight weeks: March 2026 to June 2027";
    for (const DatedCopy& copy : kept)
        EXPECT_TRUE(copy.seq > days * 10 - 20 || copy.seq % 10 == 0) << copy.seq;
    EXPECT_LE(kept.size(), 20U + 14 + 8 + 24 + 10);
}

TEST(CopyRotation, of_ten_years_a_copy_a_day_leaves_one_a_year_and_two_years_of_months) {
    const int days = 3653;
    const auto kept = a_copy_a_day(days);
    const maths::Day end = days_after(start, days);
    EXPECT_LE(kept.size(), 76U);
    std::set<int> years;
    std::set<std::pair<int, unsigned>> months;
    for (const DatedCopy& copy : kept) {
        const std::chrono::year_month_day date{copy.day};
        years.insert(static_cast<int>(date.year()));
        months.insert({static_cast<int>(date.year()), static_cast<unsigned>(date.month())});
    }
    // 2036 back to 2027; of 2026 the eleventh year is not kept.
    EXPECT_EQ(years.size(), 10U);
    EXPECT_EQ(how_many(kept, days_after(end, -20), end), 20);
    EXPECT_EQ(months.size(), 24U + 7U) << "two years of months, and the last one of each year before";
    // What was kept before is kept again: a second look takes nothing more.
    EXPECT_EQ(that_stay(kept).size(), kept.size());
}

TEST(CopyRotation, goes_by_numbers_while_the_clock_jumps) {
    std::mt19937 chance(4);
    for (int run = 0; run < 20; ++run) {
        std::vector<DatedCopy> copies;
        maths::Day clock = start;
        for (int i = 0; i < 1500; ++i) {
            const auto what = static_cast<int>(chance() % 40);
            clock = what == 0 ? days_after(clock, -3650) : what == 1 ? days_after(clock, 3650) : what == 2 ? start : days_after(clock, what % 4);
            copies.push_back({i + 1, clock, chance() % 10 != 0});
            const std::vector<DatedCopy> before = copies;
            copies = that_stay(before);
            ASSERT_EQ(copies.back().seq, i + 1) << "the newest went";
            // Whatever the days say, the twenty newest verified ones are there.
            std::set<std::int64_t> newest;
            for (auto c = before.rbegin(); c != before.rend() && newest.size() < 20; ++c)
                if (c->verified)
                    newest.insert(c->seq);
            const auto seqs = numbers(copies);
            ASSERT_TRUE(std::includes(seqs.begin(), seqs.end(), newest.begin(), newest.end())) << "copy " << i;
            ASSERT_LE(std::count_if(copies.begin(), copies.end(), [](const DatedCopy& c) { return c.verified; }), 76);
        }
    }
}

TEST(CopyRotation, never_leaves_fewer_than_ten_good_ones_where_there_were_ten) {
    std::mt19937 chance(5);
    for (int run = 0; run < 500; ++run) {
        std::vector<DatedCopy> copies;
        const auto n = chance() % 120;
        for (std::size_t i = 0; i < n; ++i)
            copies.push_back({static_cast<std::int64_t>(chance() % 1000), days_after(start, static_cast<int>(chance() % 9000) - 4500), chance() % 3 != 0});
        const auto good = [](const std::vector<DatedCopy>& c) { return std::count_if(c.begin(), c.end(), [](const DatedCopy& one) { return one.verified; }); };
        ASSERT_GE(good(that_stay(copies)), std::min<std::ptrdiff_t>(10, good(copies)));
    }
}

TEST(CopyRotation, an_unsound_copy_takes_nobodys_place) {
    std::vector<DatedCopy> copies;
    for (int i = 0; i < 40; ++i)
        copies.push_back({i + 1, start, true});
    const auto without = numbers(that_stay(copies));
    for (int i = 0; i < 15; ++i)
        copies.push_back({100 + i, start, false});
    copies.push_back({3, days_after(start, -900), false});
    const auto kept = that_stay(copies);
    auto with = numbers(kept);
    for (int i = 0; i < 15; ++i)
        EXPECT_EQ(with.erase(100 + i), 1U) << "newer than any good one: it may hold what no other does";
    EXPECT_EQ(with, without);
}

TEST(CopyRotation, counts_a_week_from_monday_across_new_year_and_before_1970) {
    // Sunday and Monday of two weeks, far apart from the newest twenty.
    const auto kept_with = [](maths::Day one, maths::Day other) {
        std::vector<DatedCopy> copies{{1, one, true}, {2, other, true}};
        for (int i = 0; i < 20; ++i)
            copies.push_back({10 + i, maths::day(2040, 1, 2), true});
        for (int i = 0; i < 13; ++i) // the days are full
            copies.push_back({5, days_after(maths::day(2040, 1, 2), -i - 1), true});
        return numbers(that_stay(copies)).count(1);
    };
    EXPECT_EQ(kept_with(maths::day(2026, 12, 28), maths::day(2027, 1, 3)), 1U) << "one week, but two months and years";
    EXPECT_EQ(kept_with(maths::day(2026, 3, 2), maths::day(2026, 3, 8)), 0U) << "Monday and Sunday of one week";
    EXPECT_EQ(kept_with(maths::day(2026, 3, 8), maths::day(2026, 3, 9)), 1U) << "Sunday, and the Monday after";
    EXPECT_EQ(kept_with(maths::day(1968, 7, 7), maths::day(1968, 7, 8)), 1U) << "Sunday, and the Monday after";
    EXPECT_EQ(kept_with(maths::day(1968, 7, 8), maths::day(1968, 7, 14)), 0U) << "Monday and Sunday of one week";
}

} // namespace soakbook::tests
