// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/visit_rows.h"

#include "core/book/queries/rounds.h"
#include "core/work/facts.h"
#include "core/work/standing.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// A hive found dead or gone, or with something to note and no strips to note it with.
Outcome<std::optional<book::Hive>> hive_changed(const VisitEntry::Row& row, const book::Hive& stood,
                                                const book::Hive& record, maths::Day on, std::size_t i) {
    const bool none_hung = row.strips.value_or(0) == 0;
    const bool found = row.state && *row.state != StateOfHive::alive;
    if (found && !none_hung)
        return refuse(Why::hive_dead, row_field(i, "strips"), {fact(stood.name)});
    const bool noted = none_hung && !row.note.trimmed().isEmpty();
    if (!found && !noted)
        return std::optional<book::Hive>{};
    book::Hive changed = record;
    if (found) {
        changed.state = static_cast<book::HiveState>(*row.state);
        changed.state_on = on;
    }
    if (noted)
        changed.note = changed.note.isEmpty() ? row.note.trimmed()
                                              : QString(changed.note + QLatin1Char('\n') + row.note.trimmed());
    if (changed.note.size() > longest_note)
        return refuse(Why::too_long, row_field(i, "note"), {fact(longest_note)});
    return std::optional<book::Hive>(changed);
}

} // namespace

Outcome<RoundInYard> round_in_yard(const book::Workbook& workbook, RoundId id, YardId yard) {
    RoundInYard found;
    const auto round = book::fetch(workbook, id);
    if (!round || round->void_reason || round->closed_on)
        return refuse(Why::not_found, QStringLiteral("round"), {round ? fact(round->name) : QString()});
    found.round = *round;
    const auto record = book::fetch(workbook, yard);
    if (!record)
        return refuse(Why::not_found, QStringLiteral("yard"));
    found.yard = *record;
    const auto yards = book::yards_of_round(workbook, id);
    const auto in_yard =
        std::find_if(yards.begin(), yards.end(), [yard](const book::RoundYard& y) { return y.yard == yard; });
    if (in_yard == yards.end())
        return refuse(Why::not_found, QStringLiteral("yard"), {fact(record->name)});
    found.in_yard = *in_yard;
    return found;
}

Outcome<VisitRows> read_visit(const book::Workbook& workbook, const VisitEntry& entry, maths::Day today) {
    VisitRows rows;
    auto where = round_in_yard(workbook, entry.round, entry.yard);
    if (!where)
        return unexpected(where.error());
    rows.where = std::move(*where);
    const auto on = day_not_to_come(entry.on, today);
    if (!on)
        return unexpected(on.error());
    rows.on = *on;
    if (entry.rows.empty())
        return refuse(Why::missing, QStringLiteral("rows"));
    std::map<HiveId, book::Hive> standing;
    for (book::Hive& hive : hives_standing(workbook, entry.yard, *on))
        standing.emplace(hive.id, std::move(hive));
    for (std::size_t i = 0; i < entry.rows.size(); ++i) {
        const VisitEntry::Row& row = entry.rows[i];
        const auto found = standing.find(row.hive);
        if (found == standing.end()) {
            const auto elsewhere = book::fetch(workbook, row.hive);
            return refuse(Why::not_found, row_field(i, "strips"), {elsewhere ? fact(elsewhere->name) : QString()});
        }
        const book::Hive& hive = found->second;
        if (!row.strips)
            return refuse(Why::missing, row_field(i, "strips"));
        if (*row.strips < 0)
            return refuse(Why::too_small, row_field(i, "strips"), {fact(0)});
        if (*row.strips > most_strips)
            return refuse(Why::too_large, row_field(i, "strips"), {fact(most_strips)});
        if (auto refusal = text_refused(row.note, longest_note, row_field(i, "note")))
            return unexpected(*refusal);
        if (*row.strips > 0 && !lives_on(hive, *on))
            return refuse(Why::hive_dead, row_field(i, "strips"), {fact(hive.name)});
        const auto record = book::fetch(workbook, row.hive);
        const auto changed = hive_changed(row, hive, *record, *on, i);
        if (!changed)
            return unexpected(changed.error());
        if (*changed && **changed != *record)
            rows.changed.push_back(**changed);
        rows.seen.insert(row.hive);
        if (*row.strips == 0)
            continue;
        rows.hanging.push_back(
            {hive, {*row.strips, row.bag, row_field(i, "strips"), row_field(i, "bag")}, row.note.trimmed()});
        rows.row_of.push_back(i);
    }
    return rows;
}

} // namespace soakbook::work
