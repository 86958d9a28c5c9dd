// SPDX-License-Identifier: GPL-3.0-or-later
// Where a lot went: forty batches, each made of pails of the ones before, and the acid of ten thousand bags by lot.
#include "core/maths/lot_share.h"

#include <benchmark/benchmark.h>
#include <stdexcept>
#include <vector>

namespace soakbook::maths {
namespace {

std::vector<BatchMaterial> generations(std::size_t deep) {
    std::vector<BatchMaterial> batches(deep);
    for (std::size_t i = 0; i < deep; ++i) {
        batches[i].lots = {{static_cast<std::int64_t>(i), kilograms(20)},
                           {static_cast<std::int64_t>(i + 1), kilograms(2.5)}};
        for (std::size_t back = 1; back <= 3 && back <= i; ++back)
            batches[i].pails.push_back({i - back, kilograms(1.5)});
    }
    return batches;
}

void shares(benchmark::State& state) {
    const auto batches = generations(40);
    const auto bags = static_cast<std::size_t>(state.range(0));
    for (auto _ : state) {
        const auto parts = lot_parts(batches);
        if (!parts)
            throw std::runtime_error("the shares have no answer");
        for (std::size_t bag = 0; bag < bags; ++bag)
            benchmark::DoNotOptimize(amounts_by_lot(grams(736), (*parts)[bag % parts->size()]));
    }
}
BENCHMARK(shares)->Arg(1)->Arg(10'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace soakbook::maths
