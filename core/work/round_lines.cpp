// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/hives.h"
#include "core/book/queries/placements.h"
#include "core/book/queries/rounds.h"
#include "core/work/round.h"
#include "core/work/round_rule.h"

namespace soakbook::work {

std::vector<RoundLine> rounds(const book::Workbook& workbook, bool also_closed) {
    std::map<YardId, QString> yard_names;
    for (const book::Yard& yard : book::yards_by_name(workbook))
        yard_names[yard.id] = yard.name;
    std::map<StripKindId, QString> kind_names;
    for (const book::StripKind& kind : book::fetch_all<book::StripKind>(workbook))
        kind_names[kind.id] = kind.name;
    std::map<RoundId, std::vector<book::RoundYard>> yards;
    for (book::RoundYard& y : book::yards_of_round(workbook, {}))
        yards[y.round].push_back(std::move(y));
    std::map<RoundId, std::vector<Wanted>> wanted;
    for (Wanted& w : strips_wanted(workbook))
        wanted[w.round].push_back(std::move(w));
    std::map<RoundId, book::RoundStrips> strips;
    for (const book::RoundStrips& s : book::strips_by_round(workbook))
        strips[s.round] = s;
    std::vector<RoundLine> lines;
    for (const book::Round& round : book::rounds_newest_first(workbook)) {
        if (round.closed_on && !also_closed)
            continue;
        RoundLine line;
        line.id = round.id;
        line.name = round.name;
        line.strip_kind = round.strip_kind;
        line.strip_kind_name = kind_names[round.strip_kind];
        line.planned_on = round.planned_on;
        line.closed = round.closed_on.has_value();
        for (const book::RoundYard& y : yards[round.id]) {
            line.yards.emplace_back(y.yard, y.visited_on.has_value());
            line.yard_names << yard_names[y.yard];
        }
        const book::RoundStrips& hung = strips[round.id];
        line.strips_in = hung.in;
        line.strips_hanging = hung.hanging;
        line.pull_from = hung.pull_from;
        line.pull_by = hung.pull_by;
        // What was hung is what was planned for it; what is still to be visited is planned by the rule.
        line.hives_planned = hung.hives;
        line.strips_planned = line.strips_in;
        for (const Wanted& w : wanted[round.id]) {
            line.hives_planned += w.hives;
            line.strips_planned += w.strips;
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

RoundEntry round_entry(const book::Workbook& workbook, RoundId id) {
    RoundEntry entry;
    const auto round = book::fetch(workbook, id);
    if (!round)
        return entry;
    entry.id = id;
    entry.name = round->name;
    entry.strip_kind = round->strip_kind;
    entry.planned_on = round->planned_on;
    for (const book::RoundYard& y : book::yards_of_round(workbook, id))
        entry.yards.push_back(y.yard);
    entry.dose_rule = static_cast<DoseRule>(round->dose_kind);
    entry.dose_strips = round->dose_strips;
    entry.dose_frames_tenths = round->dose_frames_tenths;
    entry.dose_least = round->dose_least;
    entry.dose_most = round->dose_most;
    entry.pull_from_days = round->pull_from_days;
    entry.pull_by_days = round->pull_by_days;
    entry.withdrawal_days = round->withdrawal_days;
    entry.note = round->note;
    return entry;
}

} // namespace soakbook::work
