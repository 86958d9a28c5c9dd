// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/round_rule.h"

#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/book/queries/rounds.h"

#include <algorithm>

namespace soakbook::work {

maths::DoseRule rule_of(const book::Round& round) {
    maths::DoseRule rule;
    rule.kind = static_cast<maths::DoseKind>(round.dose_kind);
    rule.strips = round.dose_strips.value_or(0);
    rule.frames_tenths = round.dose_frames_tenths.value_or(0);
    rule.least = round.dose_least;
    rule.most = round.dose_most;
    return rule;
}

std::optional<int> strips_by_rule(const maths::DoseRule& rule, const book::Hive& hive) {
    if (hive.untreated)
        return 0;
    const std::int64_t n = hive.hives;
    maths::DoseRule each = rule;
    maths::Colony colony;
    if (rule.kind == maths::DoseKind::per_brood_box) {
        // Boxes of an average hive need not be whole: the group is one colony with its boxes and n times the limits.
        colony.brood_boxes = hive.brood_boxes;
        if (each.least)
            *each.least *= n;
        if (each.most)
            *each.most *= n;
        const auto strips = maths::strips_for(each, colony);
        return strips ? std::optional(static_cast<int>(*strips)) : std::nullopt;
    }
    if (hive.frames_of_bees)
        colony.frames_tenths = (std::int64_t{*hive.frames_of_bees} * 10 + n - 1) / n;
    const auto strips = maths::strips_for(each, colony);
    return strips ? std::optional(static_cast<int>(*strips * n)) : std::nullopt;
}

std::vector<Wanted> strips_wanted(const book::Workbook& workbook) {
    std::map<RoundId, std::vector<book::RoundYard>> yards;
    for (book::RoundYard& y : book::yards_to_visit(workbook))
        yards[y.round].push_back(std::move(y));
    std::vector<Wanted> wanted;
    if (yards.empty())
        return wanted;
    std::map<YardId, std::vector<book::Hive>> by_yard;
    for (book::Hive& hive : book::hives_of_yard(workbook, {}))
        if (hive.state == book::HiveState::alive)
            by_yard[hive.yard].push_back(std::move(hive));
    std::map<YardId, QString> names;
    for (const book::Yard& yard : book::yards_by_name(workbook))
        names[yard.id] = yard.name;
    for (const book::Round& round : book::rounds_newest_first(workbook)) {
        if (yards.find(round.id) == yards.end())
            continue;
        const std::set<HiveId> hung = book::hung_in_round(workbook, round.id);
        const maths::DoseRule rule = rule_of(round);
        for (const book::RoundYard& y : yards[round.id]) {
            Wanted w{round.id, round.name, round.strip_kind, y.yard, names[y.yard], y.planned_on, 0, 0, 0};
            for (const book::Hive& hive : by_yard[y.yard]) {
                if (hive.untreated || hung.count(hive.id))
                    continue;
                w.hives += hive.hives;
                if (const auto strips = strips_by_rule(rule, hive))
                    w.strips += *strips;
                else
                    w.without_figure += hive.hives;
            }
            wanted.push_back(std::move(w));
        }
    }
    std::stable_sort(wanted.begin(), wanted.end(), [](const Wanted& a, const Wanted& b) {
        return std::tie(a.on, a.round) < std::tie(b.on, b.round);
    });
    return wanted;
}

std::vector<YardTimeEntry> times_meeting(const book::Workbook& workbook, YardId yard, maths::Day from, maths::Day to) {
    std::vector<YardTimeEntry> times = yard_times(workbook, yard);
    std::erase_if(times, [&](const YardTimeEntry& t) { return *t.to < from || *t.from > to; });
    return times;
}

QString time_text(const YardTimeEntry& time) {
    const QString text = time.what + QStringLiteral(", ") + book::day_text(*time.from) + QStringLiteral(" \u2013 ") +
                         book::day_text(*time.to);
    return text;
}

} // namespace soakbook::work
