// SPDX-License-Identifier: GPL-3.0-or-later
// A season of 2,000 hives, six rounds and 500 bags: a need for every hive and round.
#include "core/maths/season.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <random>
#include <stdexcept>
#include <vector>

namespace soakbook::maths {
namespace {

void season(benchmark::State& state) {
    const Day today = day(2026, 2, 1);
    std::mt19937 random(6);
    std::uniform_int_distribution<std::int64_t> strips(2, 6);
    std::vector<StripNeed> needs;
    for (std::int64_t round = 0; round < 6; ++round)
        for (std::int64_t hive = 0; hive < state.range(0); ++hive)
            needs.push_back({days_after(today, 40 + round * 45 + hive / 100), strips(random)});
    std::vector<StockBag> bags;
    std::uniform_int_distribution<int> limit(30, 360);
    for (int bag = 0; bag < 500; ++bag)
        bags.push_back({80, days_after(today, -20), days_after(today, limit(random))});
    SeasonQuestion question;
    question.today = today;
    question.needs = needs;
    question.bags = bags;
    question.workshop.tanks = {2'880, 2'880};
    question.workshop.bins = 12;
    question.workshop.strips_per_bin = 480;
    question.workshop.course = {1, 1, 1, 7};
    question.keeps_months = 12;
    question.uptake = grams(23);
    question.flood = kilograms(31.25);
    question.strength = percent(40);
    question.assay = percent(99.6);
    if (!plan_season(question))
        throw std::runtime_error("the season has no answer");
    for (auto _ : state)
        benchmark::DoNotOptimize(plan_season(question));
    state.counters["batches"] = static_cast<double>(plan_season(question)->batches.size());
    state.counters["needs"] = static_cast<double>(needs.size());
}
BENCHMARK(season)->Arg(200)->Arg(2'000)->Unit(benchmark::kMillisecond);

/// The plain measure: sorting as many needs and bags by day.
void sorting_a_season(benchmark::State& state) {
    std::mt19937 random(6);
    std::vector<std::int64_t> days(static_cast<std::size_t>(state.range(0)) * 6 + 500);
    for (std::int64_t& d : days)
        d = static_cast<std::int64_t>(random() % 400);
    for (auto _ : state) {
        auto sorted = days;
        std::sort(sorted.begin(), sorted.end());
        benchmark::DoNotOptimize(sorted);
    }
}
BENCHMARK(sorting_a_season)->Arg(2'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace soakbook::maths
