// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pull.h"

#include "core/book/queries/placements.h"
#include "core/work/checks.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/perform.h"
#include "core/work/yard_checks.h"
#include "core/work/yards_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

struct Counted {
    int pulled = 0;
    int missing = 0;
};

/// What was said of `strips`: nothing means all of them are out; one number leaves the rest to the other.
Outcome<Counted> counted(std::optional<int> pulled, std::optional<int> missing, int strips, const QString& pulled_field,
                         const QString& missing_field) {
    if (pulled && *pulled < 0)
        return refuse(Why::too_small, pulled_field, {fact(0)});
    if (missing && *missing < 0)
        return refuse(Why::too_small, missing_field, {fact(0)});
    Counted c;
    c.pulled = pulled ? *pulled : strips - std::min(missing.value_or(0), strips);
    c.missing = missing ? *missing : strips - std::min(c.pulled, strips);
    if (qint64{c.pulled} + c.missing != strips)
        return refuse(Why::counted_more, pulled ? pulled_field : missing_field,
                      {fact(qint64{c.pulled} + c.missing), fact(strips)});
    return c;
}

} // namespace

PullState pull_state(std::optional<maths::Day> pull_from, std::optional<maths::Day> pull_by, maths::Day today,
                     int warn_days) {
    if (pull_by && *pull_by < today)
        return PullState::past;
    if (pull_by && maths::days_between(today, *pull_by) <= warn_days)
        return PullState::closing_soon;
    return pull_from && *pull_from > today ? PullState::waiting : PullState::open;
}

std::vector<PullLine> hanging(const book::Workbook& workbook, YardId yard, maths::Day today) {
    // Without a warning time nothing is said to close soon.
    const int warn_days = static_cast<int>(figure(workbook, Figure::pull_warn_days).value_or(-1));
    book::PlacementFilter filter;
    filter.hanging = true;
    filter.yard_now = yard;
    std::vector<PullLine> lines;
    for (const book::PlacementRow& row : book::placements(workbook, filter)) {
        const book::Placement& p = row.placement;
        PullLine line;
        line.placement = p.id;
        line.hive = p.hive;
        line.hive_name = row.hive;
        line.hives = row.hives;
        line.yard = row.yard_now;
        line.yard_name = row.yard_now_name;
        if (p.yard != row.yard_now)
            line.placed_in = row.yard_name;
        line.bag_code = row.bag_code;
        line.round_name = row.round_name;
        line.strips = p.strips;
        line.placed_on = p.placed_on;
        line.day_number = static_cast<int>(maths::days_between(p.placed_on, today)) + 1;
        line.pull_from = p.pull_from;
        line.pull_by = p.pull_by;
        line.state = pull_state(p.pull_from, p.pull_by, today, warn_days);
        line.hive_dead = row.hive_state != book::HiveState::alive;
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const PullLine& a, const PullLine& b) {
        const auto last_a = a.pull_by.value_or(maths::Day::max());
        const auto last_b = b.pull_by.value_or(maths::Day::max());
        if (last_a != last_b)
            return last_a < last_b;
        if (a.yard_name != b.yard_name)
            return comes_before(a.yard_name, b.yard_name);
        return comes_before(a.hive_name, b.hive_name);
    });
    return lines;
}

Outcome<PullDone> enter_pull(book::Workbook& workbook, const PullEntry& entry, const book::Doing& doing,
                             const Confirmed& confirmed) {
    const auto on = day_not_to_come(entry.on, doing.today());
    if (!on)
        return unexpected(on.error());
    if (entry.rows.empty())
        return refuse(Why::missing, QStringLiteral("rows"));
    std::vector<book::Placement> pulled;
    std::set<HiveId> hives;
    std::set<PlacementId> seen;
    std::optional<Refusal> question = asked_if_long_ago(*on, doing.today(), confirmed);
    QString yard_name;
    PullDone done;
    for (std::size_t i = 0; i < entry.rows.size(); ++i) {
        const PullEntry::Row& row = entry.rows[i];
        auto p = book::fetch(workbook, row.placement);
        if (!p || p->void_reason || !seen.insert(row.placement).second)
            return refuse(Why::not_found, row_field(i, "pulled"));
        const auto hive = book::fetch(workbook, p->hive);
        if (p->pulled_on)
            return refuse(Why::already_pulled, row_field(i, "pulled"), {fact(hive->name), fact(*p->pulled_on)});
        if (*on < p->placed_on)
            return refuse(Why::before_placed, QStringLiteral("on"), {fact(p->placed_on)});
        const auto count = counted(row.pulled, row.missing, p->strips, row_field(i, "pulled"), row_field(i, "missing"));
        if (!count)
            return unexpected(count.error());
        const QString note = p->note.isEmpty() || row.note.trimmed().isEmpty()
                                 ? QString(p->note + row.note.trimmed())
                                 : QString(p->note + QLatin1Char('\n') + row.note.trimmed());
        if (auto refusal = text_refused(note, longest_note, row_field(i, "note")))
            return unexpected(*refusal);
        if (p->pull_from && *on < *p->pull_from) {
            if (!confirmed.count(Why::window_not_open) && !question)
                question = Refusal{Why::window_not_open, QStringLiteral("on"), {fact(*p->pull_from)}, true};
            p->asked += (p->asked.isEmpty() ? QString() : QStringLiteral(" ")) + key_of(Why::window_not_open);
        }
        p->pulled_on = *on;
        p->pulled = count->pulled;
        p->missing = count->missing;
        p->pulled_by = doing.who;
        p->note = note;
        if (hives.insert(p->hive).second)
            done.hives += hive->hives;
        done.pulled += count->pulled;
        done.missing += count->missing;
        if (yard_name.isEmpty())
            if (const auto yard = book::fetch(workbook, hive->yard))
                yard_name = yard->name;
        pulled.push_back(std::move(*p));
    }
    if (question)
        return unexpected(*question);
    return perform(workbook, {QStringLiteral("strips_out"), done.hives, yard_name}, doing,
                   [&](book::Writing& w) -> Outcome<PullDone> {
                       for (const book::Placement& p : pulled)
                           book::update(w, p);
                       return done;
                   });
}

Outcome<int> correct_pull(book::Workbook& workbook, PlacementId id, std::optional<int> pulled,
                          std::optional<int> missing, std::optional<maths::Day> on, const book::Doing& doing) {
    const auto before = book::fetch(workbook, id);
    if (!before || before->void_reason || !before->pulled_on)
        return refuse(Why::not_found);
    if (auto refusal = reason_missing(doing))
        return because(refusal);
    book::Placement p = *before;
    if (pulled || missing) {
        const auto count = counted(pulled, missing, p.strips, QStringLiteral("pulled"), QStringLiteral("missing"));
        if (!count)
            return unexpected(count.error());
        p.pulled = count->pulled;
        p.missing = count->missing;
    }
    if (on) {
        if (const auto day = day_not_to_come(on, doing.today()); !day)
            return unexpected(day.error());
        if (*on < p.placed_on)
            return refuse(Why::before_placed, QStringLiteral("on"), {fact(p.placed_on)});
        p.pulled_on = *on;
    }
    if (p == *before)
        return refuse(Why::nothing_changed);
    const auto hive = book::fetch(workbook, p.hive);
    return perform(workbook, {QStringLiteral("corrected"), 1, hive->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, p);
                       return *p.pulled;
                   });
}

} // namespace soakbook::work
