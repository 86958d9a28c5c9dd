// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/thermostat.h"

#include "core/maths/line_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace soakbook::maths {
namespace {

constexpr std::size_t pairs_for_a_line = 4;

bool is_sensible(Temperature t) {
    return t >= Temperature{-5'000} && t <= Temperature{20'000};
}

std::optional<Line> line_through(std::span<const DialPair> pairs) {
    if (pairs.size() < pairs_for_a_line)
        return std::nullopt;
    std::vector<Point> points;
    points.reserve(pairs.size());
    for (const DialPair& pair : pairs)
        points.push_back({in_celsius(pair.dial), in_celsius(pair.probe)});
    const auto line = Line::through(points);
    // A tank that grows no warmer with the dial is no line to reckon with.
    if (!line || line->slope() <= 0.0)
        return std::nullopt;
    return *line;
}

/// What to expect of the probe at a dial.
class Expectation {
public:
    Expectation(OffsetRange range, std::optional<Line> line) : m_range(range), m_line(line) {}

    bool by_line() const { return m_line.has_value(); }
    TemperatureRange at(Temperature dial) const {
        if (m_line) {
            const auto interval = m_line->prediction(in_celsius(dial));
            if (interval && std::abs(interval->low) < 1e4 && std::abs(interval->high) < 1e4)
                return {celsius(interval->low), celsius(interval->high)};
        }
        return {dial - m_range.largest, dial - m_range.smallest};
    }
    /// The dial that gives `wanted`; without a line, the one that does not overshoot it at the smallest offset.
    Temperature dial_giving(Temperature wanted) const {
        if (!m_line)
            return wanted + m_range.smallest;
        const double dial = (in_celsius(wanted) - m_line->offset()) / m_line->slope();
        return celsius(std::clamp(dial, -1e4, 1e4));
    }

private:
    OffsetRange m_range;
    std::optional<Line> m_line;
};

} // namespace

Answer<OffsetRange> offsets(std::span<const DialPair> pairs) {
    if (pairs.empty())
        return unexpected(Unanswerable::too_few);
    OffsetRange range;
    for (const DialPair& pair : pairs) {
        if (!is_sensible(pair.dial) || !is_sensible(pair.probe))
            return unexpected(Unanswerable::out_of_range);
        const Temperature offset = pair.dial - pair.probe;
        range.smallest = range.pairs == 0 ? offset : std::min(range.smallest, offset);
        range.largest = range.pairs == 0 ? offset : std::max(range.largest, offset);
        ++range.pairs;
    }
    return range;
}

Answer<DialAdvice> dial_for(std::span<const DialPair> pairs, const DialWish& wish) {
    const auto range = offsets(pairs);
    if (!range)
        return unexpected(range.error());
    if (wish.step.count <= 0 || wish.step > Temperature{2'000} || !is_sensible(wish.wanted) ||
        !is_sensible(wish.ceiling) || wish.wanted > wish.ceiling)
        return unexpected(Unanswerable::out_of_range);
    const auto [lowest_seen, highest_seen] = std::minmax_element(
        pairs.begin(), pairs.end(), [](const DialPair& a, const DialPair& b) { return a.dial < b.dial; });
    const Temperature bottom = lowest_seen->dial - wish.step;
    const Temperature top = highest_seen->dial + wish.step;
    const Expectation expectation(*range, line_through(pairs));

    // Down from the top in tenths of a degree (or finer, for a finer dial) to the first dial that keeps under the
    // ceiling.
    const Temperature stride{std::min<std::int64_t>(10, wish.step.count)};
    Temperature highest = top;
    while (highest >= bottom && expectation.at(highest).high > wish.ceiling)
        highest -= stride;
    if (highest < bottom)
        return unexpected(Unanswerable::no_choice_fits);

    DialAdvice advice;
    advice.by_line = expectation.by_line();
    advice.highest_dial = highest;
    advice.dial = expectation.dial_giving(wish.wanted);
    if (advice.dial > highest) {
        advice.dial = highest;
        advice.limit = highest < top ? DialLimit::ceiling : DialLimit::dials_seen;
    } else if (advice.dial < bottom) {
        advice.dial = bottom;
        advice.limit = DialLimit::dials_seen;
    }
    advice.expected = expectation.at(advice.dial);
    return advice;
}

} // namespace soakbook::maths
