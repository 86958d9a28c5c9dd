// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/dial_advice.h"

#include "core/book/queries/batches.h"
#include "core/maths/thermostat.h"
#include "core/work/figures.h"

namespace soakbook::work {

namespace {

std::vector<maths::DialPair> settled_pairs(const book::Workbook& workbook, VesselId tank) {
    const auto warm = figure(workbook, Figure::heat_low);
    std::vector<maths::DialPair> pairs;
    for (const book::Reading& reading : book::dial_readings_of_tank(workbook, tank))
        if (!warm || reading.probe->count >= *warm)
            pairs.push_back({*reading.dial, *reading.probe});
    return pairs;
}

/// The middle of the temperatures of Set-up, or the one that was said.
std::optional<maths::Temperature> usually_wanted(const book::Workbook& workbook) {
    const auto low = figure(workbook, Figure::heat_low);
    const auto high = figure(workbook, Figure::heat_high);
    if (!low && !high)
        return std::nullopt;
    return maths::Temperature{(low.value_or(high.value_or(0)) + high.value_or(low.value_or(0))) / 2};
}

} // namespace

DialAdvice dial_advice(const book::Workbook& workbook, VesselId tank, std::optional<maths::Temperature> wanted) {
    DialAdvice advice;
    const std::vector<maths::DialPair> pairs = settled_pairs(workbook, tank);
    advice.pairs = static_cast<int>(pairs.size());
    if (const auto range = maths::offsets(pairs)) {
        advice.offset_low = range->smallest;
        advice.offset_high = range->largest;
    }
    advice.wanted = wanted ? wanted : usually_wanted(workbook);
    if (const auto ceiling = figure(workbook, Figure::tank_ceiling))
        advice.ceiling = maths::Temperature{*ceiling};
    if (pairs.empty())
        return advice;
    if (!advice.wanted || !advice.ceiling) {
        advice.says = DialSays::nothing_wanted;
        return advice;
    }
    if (*advice.wanted > *advice.ceiling) {
        advice.says = DialSays::above_ceiling;
        return advice;
    }
    maths::DialWish wish;
    wish.wanted = *advice.wanted;
    wish.ceiling = *advice.ceiling;
    const auto dial = maths::dial_for(pairs, wish);
    if (!dial) {
        advice.says =
            dial.error() == maths::Unanswerable::no_choice_fits ? DialSays::nothing_safe : DialSays::odd_figures;
        return advice;
    }
    advice.says = DialSays::advised;
    advice.dial = dial->dial;
    advice.highest_dial = dial->highest_dial;
    advice.held_by = static_cast<DialHeldBy>(dial->limit);
    advice.by_line = dial->by_line;
    advice.expected_low = dial->expected.low;
    advice.expected_high = dial->expected.high;
    return advice;
}

} // namespace soakbook::work
