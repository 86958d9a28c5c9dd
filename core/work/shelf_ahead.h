// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf as the rounds ahead will empty it: nearest limit used first, each round on its day. For core/work's own
// use.
#pragma once

#include "core/book/queries/bags.h"
#include "core/work/round_rule.h"

namespace soakbook::work {

/// One round: what its yards want together and what the shelf will lack.
struct RoundAhead {
    RoundId round;
    QString name;
    maths::Day on{};
    int wanted = 0;
    int short_of = 0;
};

class ShelfAhead {
public:
    ShelfAhead(const book::Workbook& workbook, maths::Day today);
    /// Takes what rounds want up to and with that day.
    void go_to(maths::Day day);
    /// Strips left that are in date on that day.
    int in_date(maths::Day day) const;
    /// Strips left whose use-by day lies between the two, both included.
    int reach_limit(maths::Day from, maths::Day to) const;
    /// What the yards of open rounds want, in order of their day.
    const std::vector<Wanted>& wanted() const { return m_wanted; }
    /// Rounds gone through so far, in order of their day.
    const std::vector<RoundAhead>& rounds() const { return m_rounds; }

private:
    void take(const Wanted& wanted);

    maths::Day m_today;
    std::vector<book::BagStock> m_bags;
    std::vector<Wanted> m_wanted;
    std::size_t m_next = 0;
    std::vector<RoundAhead> m_rounds;
};

} // namespace soakbook::work
