// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/pail_search.h"

#include <algorithm>
#include <array>
#include <limits>
#include <tuple>

namespace soakbook::maths {
namespace {

constexpr std::size_t always_in_full = 21;
constexpr std::size_t most_for_triples = 80; // 82 160 of them
constexpr std::size_t most_for_pairs = 400;

/// What is still to come from one unit on.
struct Rest {
    std::int64_t acid = 0;
    std::int64_t glycerine = 0;
    double acid_per_glycerine = 0.0; ///< greatest of any single unit
    double glycerine_per_acid = 0.0;
    std::int64_t least_acid = std::numeric_limits<std::int64_t>::max(); ///< smallest of any single unit
    std::int64_t least_glycerine = std::numeric_limits<std::int64_t>::max();
};

struct Sum {
    std::int64_t mass = 0;
    std::int64_t acid = 0;
    std::int64_t glycerine = 0;
    std::int64_t pails = 0;
};

/// One, two or three units that may end a set.
struct Tail {
    Sum sum;
    std::array<std::size_t, 3> units{};
    std::size_t size = 0;
};

double ratio(std::int64_t above, std::int64_t below) {
    return below > 0 ? static_cast<double>(above) / static_cast<double>(below)
                     : std::numeric_limits<double>::infinity();
}

class Search {
public:
    Search(std::vector<PailUnit> units, const PailBounds& bounds, std::int64_t trials)
        : m_units(std::move(units)), m_bounds(bounds), m_trials(trials), m_taken(m_units.size(), 0) {
        // Oldest first, so that what is found first is preferred among equals; like units side by side.
        std::stable_sort(m_units.begin(), m_units.end(), [](const PailUnit& a, const PailUnit& b) {
            return std::tuple(a.day, -a.mass, -a.acid, a.pails) < std::tuple(b.day, -b.mass, -b.acid, b.pails);
        });
        m_rest.resize(m_units.size() + 1);
        for (std::size_t i = m_units.size(); i-- > 0;) {
            const PailUnit& unit = m_units[i];
            m_rest[i] = m_rest[i + 1];
            m_rest[i].acid += unit.acid;
            m_rest[i].glycerine += unit.glycerine;
            m_rest[i].acid_per_glycerine = std::max(m_rest[i].acid_per_glycerine, ratio(unit.acid, unit.glycerine));
            m_rest[i].glycerine_per_acid = std::max(m_rest[i].glycerine_per_acid, ratio(unit.glycerine, unit.acid));
            m_rest[i].least_acid = std::min(m_rest[i].least_acid, unit.acid);
            m_rest[i].least_glycerine = std::min(m_rest[i].least_glycerine, unit.glycerine);
        }
        m_tail_size = m_units.size() <= most_for_triples ? 3 : m_units.size() <= most_for_pairs ? 2 : 1;
        add_tails({}, 0);
        std::sort(m_tails.begin(), m_tails.end(), [](const Tail& a, const Tail& b) { return a.sum.mass < b.sum.mass; });
    }

    std::optional<PailSearchResult> run() {
        walk(0, {});
        if (!m_best)
            return std::nullopt;
        PailSearchResult result;
        result.proved = !is_out_of_trials();
        result.could_be_more = result.proved ? 0 : most_reachable(m_rest[0], {}) - m_best->mass;
        for (std::size_t i = 0; i < m_units.size(); ++i)
            if (m_best_taken[i])
                result.taken.push_back(m_units[i]);
        return result;
    }

private:
    bool is_out_of_trials() const { return m_units.size() > always_in_full && m_trials <= 0; }

    static Sum with(const Sum& sum, const PailUnit& unit) {
        return {sum.mass + unit.mass, sum.acid + unit.acid, sum.glycerine + unit.glycerine, sum.pails + unit.pails};
    }
    static Sum with(const Sum& sum, const Sum& more) {
        return {sum.mass + more.mass, sum.acid + more.acid, sum.glycerine + more.glycerine, sum.pails + more.pails};
    }
    bool fits(const Sum& sum) const {
        return sum.acid <= m_bounds.most_acid && sum.glycerine <= m_bounds.most_glycerine;
    }

    void add_tails(const Tail& tail, std::size_t from) {
        if (tail.size == m_tail_size)
            return;
        for (std::size_t i = from; i < m_units.size(); ++i) {
            Tail longer = tail;
            longer.sum = with(tail.sum, m_units[i]);
            longer.units[longer.size++] = i;
            if (!fits(longer.sum))
                continue;
            m_tails.push_back(longer);
            add_tails(longer, i + 1);
        }
    }

    /// Takes or leaves unit `i` and those after it, everything before being decided.
    void walk(std::size_t i, const Sum& sum) {
        if (is_out_of_trials())
            return;
        --m_trials;
        consider(sum);
        for (; i < m_units.size(); ++i) {
            if (is_hopeless(i, sum))
                return;
            if (only_a_tail_fits(m_rest[i], sum)) {
                end_with_a_tail(i, sum);
                return;
            }
            // Of units all alike the first ones are taken: the others would only repeat the same sums.
            const bool repeats = i > 0 && !m_taken[i - 1] && alike(m_units[i - 1], m_units[i]);
            const Sum more = with(sum, m_units[i]);
            if (repeats || !fits(more))
                continue;
            m_taken[i] = 1;
            walk(i + 1, more);
            m_taken[i] = 0;
        }
    }

    /// No more units than a tail has can still be added.
    bool only_a_tail_fits(const Rest& rest, const Sum& sum) const {
        const auto more = static_cast<std::int64_t>(m_tail_size) + 1;
        return rest.least_acid > (m_bounds.most_acid - sum.acid) / more ||
               rest.least_glycerine > (m_bounds.most_glycerine - sum.glycerine) / more;
    }

    /// Tries the tails of units from `i` on, heaviest first, down to where they could no longer better the best.
    void end_with_a_tail(std::size_t i, const Sum& sum) {
        const std::int64_t most = most_reachable(m_rest[i], sum) - sum.mass;
        auto tail = std::upper_bound(m_tails.begin(), m_tails.end(), most,
                                     [](std::int64_t mass, const Tail& t) { return mass < t.sum.mass; });
        while (tail != m_tails.begin()) {
            --tail;
            const Sum whole = with(sum, tail->sum);
            if (m_best && whole.mass < m_best->mass)
                return;
            if (is_out_of_trials())
                return;
            m_tail_steps += 1;
            m_trials -= m_tail_steps % 16 == 0 ? 1 : 0;
            if (tail->units[0] < i || !fits(whole))
                continue;
            for (std::size_t n = 0; n < tail->size; ++n)
                m_taken[tail->units[n]] = 1;
            consider(whole);
            for (std::size_t n = 0; n < tail->size; ++n)
                m_taken[tail->units[n]] = 0;
        }
    }

    static bool alike(const PailUnit& a, const PailUnit& b) {
        return a.mass == b.mass && a.acid == b.acid && a.day == b.day && a.pails == b.pails;
    }

    bool is_hopeless(std::size_t i, const Sum& sum) const {
        const Rest& rest = m_rest[i];
        if (rest.least_acid > m_bounds.most_acid - sum.acid ||
            rest.least_glycerine > m_bounds.most_glycerine - sum.glycerine)
            return true;
        if (sum.acid + rest.acid < m_bounds.least_acid || sum.glycerine + rest.glycerine < m_bounds.least_glycerine)
            return true;
        if (!m_best)
            return false;
        const std::int64_t most = most_reachable(rest, sum);
        return most < m_best->mass || (most == m_best->mass && !may_be_older(i));
    }

    /// No set of what is left brings the mass beyond this.
    std::int64_t most_reachable(const Rest& rest, const Sum& sum) const {
        const std::int64_t acid = std::min(rest.acid, m_bounds.most_acid - sum.acid);
        const std::int64_t glycerine = std::min(rest.glycerine, m_bounds.most_glycerine - sum.glycerine);
        // Acid comes with glycerine and the other way round, at best in the ratio of the strongest or weakest pail
        // left.
        const double acid_by_glycerine = rest.acid_per_glycerine * static_cast<double>(glycerine);
        const double glycerine_by_acid = rest.glycerine_per_acid * static_cast<double>(acid);
        const double slack = 1.0 + 1e-12;
        const double more_acid = std::min(static_cast<double>(acid), acid_by_glycerine * slack + 1.0);
        const double more_glycerine = std::min(static_cast<double>(glycerine), glycerine_by_acid * slack + 1.0);
        const auto whole = [](double x, std::int64_t cap) {
            return x >= static_cast<double>(cap) ? cap : static_cast<std::int64_t>(x) + 1;
        };
        return sum.mass + (whole(more_acid, acid) + whole(more_glycerine, glycerine)) / m_bounds.scale;
    }

    /// With equal mass: whether what is decided so far still can beat the best in the order of age and number.
    bool may_be_older(std::size_t i) const {
        std::size_t from = 0;
        while (from < m_units.size()) {
            const Day day = m_units[from].day;
            std::int64_t mine = 0;
            std::int64_t best = 0;
            std::int64_t open = 0;
            std::size_t to = from;
            for (; to < m_units.size() && m_units[to].day == day; ++to) {
                best += m_best_taken[to] ? m_units[to].mass : 0;
                if (to >= i)
                    open += m_units[to].mass;
                else
                    mine += m_taken[to] ? m_units[to].mass : 0;
            }
            if (to > i)
                return mine + open >= best;
            if (mine != best)
                return mine > best;
            from = to;
        }
        return true;
    }

    void consider(const Sum& sum) {
        if (sum.acid < m_bounds.least_acid || sum.glycerine < m_bounds.least_glycerine)
            return;
        if (m_best && (sum.mass < m_best->mass || (sum.mass == m_best->mass && !is_preferred(sum))))
            return;
        m_best = sum;
        m_best_taken = m_taken;
    }

    /// Of two sets of the same mass: more of the oldest liquid, then fewer pails.
    bool is_preferred(const Sum& sum) const {
        for (std::size_t i = 0; i < m_units.size();) {
            const Day day = m_units[i].day;
            std::int64_t more = 0;
            for (; i < m_units.size() && m_units[i].day == day; ++i)
                more += (m_taken[i] ? m_units[i].mass : 0) - (m_best_taken[i] ? m_units[i].mass : 0);
            if (more != 0)
                return more > 0;
        }
        return sum.pails < m_best->pails;
    }

    std::vector<PailUnit> m_units;
    PailBounds m_bounds;
    std::int64_t m_trials;
    std::vector<char> m_taken;
    std::vector<Rest> m_rest;
    std::size_t m_tail_size = 1;
    std::vector<Tail> m_tails; ///< by mass
    std::int64_t m_tail_steps = 0;
    std::optional<Sum> m_best;
    std::vector<char> m_best_taken;
};

} // namespace

std::optional<PailSearchResult> search_pails(std::vector<PailUnit> units, const PailBounds& bounds,
                                             std::int64_t trials) {
    return Search(std::move(units), bounds, trials).run();
}

} // namespace soakbook::maths
