// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/mite_change.h"

#include "core/book/queries/counts.h"
#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/maths/mites.h"

#include <cmath>
#include <map>

namespace soakbook::work {

namespace {

/// From the day the first strips went in to the day the last came out; no end while some hang.
struct InToOut {
    maths::Day in{};
    std::optional<maths::Day> out;
};
template <class Key> void widen(std::map<Key, InToOut>& times, Key key, const book::Placement& placement) {
    const auto [at, is_new] = times.try_emplace(key, InToOut{placement.placed_on, placement.pulled_on});
    if (is_new)
        return;
    InToOut& time = at->second;
    time.in = std::min(time.in, placement.placed_on);
    time.out =
        time.out && placement.pulled_on ? std::optional(std::max(*time.out, *placement.pulled_on)) : std::nullopt;
}

/// Mites over bees or days, summed over hives.
struct MiteSum {
    int hives = 0;
    double mites_before = 0;
    double over_before = 0;
    double mites_after = 0;
    double over_after = 0;

    CountedTwice pooled() const {
        return hives > 0 ? CountedTwice{hives, mites_before / over_before, mites_after / over_after} : CountedTwice{};
    }
};

class CountsOfRound {
public:
    CountsOfRound(const book::Workbook& workbook, RoundId round, MiteCountKind kind) {
        for (book::CountRow& row : book::counts_of_round(workbook, round))
            if (static_cast<MiteCountKind>(row.count.kind) == kind)
                m_newest_first.push_back(std::move(row.count));
    }
    /// Adds the hive when it was counted on both sides.
    void add(MiteSum& sum, HiveId hive, const InToOut& time) const {
        if (!time.out)
            return;
        const book::MiteCount* before = nullptr;
        const book::MiteCount* after = nullptr;
        for (const book::MiteCount& count : m_newest_first) {
            if (count.hive != hive)
                continue;
            if (!before && count.on <= time.in)
                before = &count;
            if (!after && count.on >= *time.out)
                after = &count;
        }
        if (!before || !after || before == after)
            return;
        ++sum.hives;
        sum.mites_before += before->mites;
        sum.over_before += before->bees.value_or(before->days.value_or(0));
        sum.mites_after += after->mites;
        sum.over_after += after->bees.value_or(after->days.value_or(0));
    }

private:
    std::vector<book::MiteCount> m_newest_first;
};

} // namespace

MiteChange mite_change(const book::Workbook& workbook, RoundId round, MiteCountKind kind) {
    std::map<HiveId, InToOut> of_hive;
    std::map<YardId, InToOut> of_yard;
    book::PlacementFilter in_round;
    in_round.round = round;
    for (const book::PlacementRow& row : book::placements(workbook, in_round)) {
        widen(of_hive, row.placement.hive, row.placement);
        widen(of_yard, row.placement.yard, row.placement);
    }
    const CountsOfRound counts(workbook, round, kind);
    MiteSum treated;
    for (const auto& [hive, time] : of_hive)
        counts.add(treated, hive, time);
    MiteSum untreated;
    for (const book::Hive& hive : book::hives_of_yard(workbook, {}))
        if (const auto time = of_yard.find(hive.yard);
            hive.untreated && time != of_yard.end() && of_hive.count(hive.id) == 0)
            counts.add(untreated, hive.id, time->second);

    MiteChange change;
    change.kind = kind;
    change.treated = treated.pooled();
    change.untreated = untreated.pooled();
    if (treated.hives == 0)
        return change;
    const maths::BeforeAfter with{change.treated.before, change.treated.after};
    const maths::BeforeAfter without{change.untreated.before, change.untreated.after};
    const bool compared = untreated.hives > 0;
    const auto part = compared ? maths::henderson_tilton(with, without) : maths::fall_without_control(with);
    change.says = !part      ? MiteChangeSays::zero_below_the_line
                  : compared ? MiteChangeSays::against_untreated
                             : MiteChangeSays::without_untreated;
    if (part)
        change.change = maths::ppm(std::llround(*part * 1e6));
    return change;
}

} // namespace soakbook::work
