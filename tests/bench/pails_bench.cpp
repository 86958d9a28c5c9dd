// SPDX-License-Identifier: GPL-3.0-or-later
// The choice of whole pails, in milliseconds; `proved` is the part of the cases in which nothing better exists for
// sure. There is no library to stand beside: a plain sum over all subsets of twenty pails is the measure.
#include "core/maths/pails.h"

#include <benchmark/benchmark.h>
#include <random>
#include <vector>

namespace soakbook::maths {
namespace {

std::vector<PailAtHand> shelf(std::int64_t pails, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_int_distribution<std::int64_t> mass(3'000'000, 14'000'000);
    std::uniform_int_distribution<std::int64_t> strength(360'000, 430'000);
    std::uniform_int_distribution<int> age(0, 300);
    std::vector<PailAtHand> all;
    for (std::int64_t i = 0; i < pails; ++i)
        all.push_back({Mass{mass(random)}, Fraction{strength(random)}, days_after(day(2026, 1, 1), age(random)), {}});
    return all;
}

void choice(benchmark::State& state) {
    const PailWish wish{kilograms(120), percent(40), percent(99.6), kilograms(130), {}, {}};
    std::vector<std::vector<PailAtHand>> cases;
    for (unsigned seed = 1; seed <= 8; ++seed)
        cases.push_back(shelf(state.range(0), seed));
    std::size_t at = 0;
    double proved = 0;
    double all = 0;
    for (auto _ : state) {
        const auto chosen = choose_pails(cases[at++ % cases.size()], wish);
        proved += chosen && chosen->proved ? 1 : 0;
        ++all;
        benchmark::DoNotOptimize(chosen);
    }
    state.counters["proved"] = proved / all;
}
BENCHMARK(choice)->Arg(10)->Arg(20)->Arg(21)->Arg(40)->Arg(60)->Unit(benchmark::kMillisecond);

/// What a proof by hand costs: the mass of every subset of twenty, nothing else.
void every_subset_of_twenty(benchmark::State& state) {
    const auto pails = shelf(20, 1);
    for (auto _ : state) {
        std::int64_t best = 0;
        for (std::uint32_t set = 0; set < (1U << 20U); ++set) {
            std::int64_t mass = 0;
            for (std::uint32_t i = 0; i < 20; ++i)
                mass += (set >> i & 1U) != 0 ? pails[i].mass.count : 0;
            best = mass <= 120'000'000 && mass > best ? mass : best;
        }
        benchmark::DoNotOptimize(best);
    }
}
BENCHMARK(every_subset_of_twenty)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace soakbook::maths
