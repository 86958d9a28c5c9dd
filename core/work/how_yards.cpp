// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/how_yards.h"

#include "core/book/record_io.h"
#include "core/book/records/placement.h"
#include "core/work/optional_fact.h"

#include <cmath>

namespace soakbook::work {

namespace {

/// A limit of one hive, for all hives of a group.
QString limit_fact(std::optional<int> limit, int hives) {
    return limit ? fact(*limit * hives) : QString();
}

} // namespace

std::optional<How> how_dose(const RoundEntry& round, const VisitLine& line) {
    if (!round.dose_rule || line.untreated)
        return std::nullopt;
    const QStringList ends{limit_fact(round.dose_least, line.hives), limit_fact(round.dose_most, line.hives),
                           fact_or_none(line.planned)};
    switch (*round.dose_rule) {
    case DoseRule::fixed:
        return How{HowKind::dose_fixed, QStringList{fact_or_none(round.dose_strips), fact(line.hives)} + ends};
    case DoseRule::brood_boxes:
        return How{HowKind::dose_boxes,
                   QStringList{fact_or_none(round.dose_strips), fact_or_none(line.brood_boxes), fact(line.hives)} +
                       ends};
    case DoseRule::frames_of_bees:
        break;
    }
    const QString frames = round.dose_frames_tenths ? number_fact(*round.dose_frames_tenths / 10.0, 1) : QString();
    return How{HowKind::dose_frames, QStringList{frames, fact_or_none(line.frames_of_bees), fact(line.hives)} + ends};
}

std::vector<How> how_dose(const RoundEntry& round, const RoundFigures& figures) {
    constexpr std::size_t most = 12;
    std::vector<How> hows;
    for (const DoseOfAlike& alike : figures.doses) {
        VisitLine line;
        line.hives = alike.hives;
        line.brood_boxes = alike.brood_boxes;
        line.frames_of_bees = alike.frames_of_bees;
        line.planned = alike.strips;
        if (const auto how = how_dose(round, line); how && hows.size() < most)
            hows.push_back(*how);
    }
    return hows;
}

How how_mite_rate(const CountLine& count) {
    if (count.kind == MiteCountKind::drop)
        return {HowKind::mite_drop,
                {fact(count.mites), fact_or_none(count.days),
                 count.figures.per_day ? number_fact(*count.figures.per_day, 1) : QString()}};
    How how{HowKind::mite_rate,
            {fact(count.mites), fact_or_none(count.bees), fact_or_none(count.figures.rate),
             fact_or_none(count.figures.low), fact_or_none(count.figures.high)}};
    if (count.figures.threshold)
        how.facts << fact(*count.figures.threshold);
    return how;
}

How how_mite_change(const MiteChange& change) {
    const auto told = [&change](double mites) {
        return change.kind == MiteCountKind::drop ? number_fact(mites, 1) : fact(maths::ppm(std::llround(mites * 1e6)));
    };
    const bool compared = change.untreated.hives > 0;
    How how{compared ? HowKind::mite_change : HowKind::mite_fall, {}};
    how.facts << told(change.treated.before) << told(change.treated.after);
    if (compared)
        how.facts << told(change.untreated.before) << told(change.untreated.after);
    how.facts << fact_or_none(change.change);
    return how;
}

How how_pull_window(maths::Day on, maths::Day first, maths::Day last) {
    return {HowKind::pull_window,
            {fact(on), fact(maths::days_between(on, first)), fact(maths::days_between(on, last)), fact(first),
             fact(last)}};
}

std::optional<How> how_pull_window(const book::Workbook& workbook, PlacementId id) {
    const auto placement = book::fetch(workbook, id);
    if (!placement || placement->void_reason || !placement->pull_from || !placement->pull_by)
        return std::nullopt;
    return how_pull_window(placement->placed_on, *placement->pull_from, *placement->pull_by);
}

} // namespace soakbook::work
