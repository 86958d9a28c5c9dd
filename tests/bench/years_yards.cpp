// SPDX-License-Identifier: GPL-3.0-or-later
#include "years_player.h"

#include "core/work/count.h"
#include "core/work/papers.h"
#include "core/work/pull.h"
#include "core/work/round.h"
#include "core/work/undo.h"
#include "core/work/visit.h"
#include "core/work/weigh.h"

#include <algorithm>

namespace soakbook::tests {

using namespace work;

void YearsPlayer::begin_round(int number, int year, maths::Day day) {
    RoundEntry entry;
    entry.name = QStringLiteral("Round %1 of %2").arg(number).arg(year);
    entry.planned_on = maths::days_after(day, 8);
    entry.strip_kind = m_kind;
    for (const Yard& yard : m_yards)
        entry.yards.push_back(yard.id);
    const RoundId round = must([&](const Confirmed& yes) { return plan_round(m_book, entry, at(day, 20), yes); });
    ++m_made.rounds;
    // A handful of days on the road, as many as there are rounds to fit in.
    const int days = m_wish.rounds > 4 ? 4 : 10;
    for (std::size_t yard = 0; yard < m_yards.size(); ++yard) {
        const maths::Day visited = maths::days_after(day, 8 + static_cast<int>(yard) % days);
        on(visited, [this, round, yard, visited] { visit(round, yard, visited); });
        const maths::Day pulled = maths::days_after(visited, m_pull_from + below(m_pull_by - m_pull_from + 2));
        on(pulled, [this, yard, pulled] { pull(yard, pulled); });
        const maths::Day counted = maths::days_after(pulled, 14);
        on(counted, [this, round, yard, counted] { count(yard, round, counted); });
    }
}

void YearsPlayer::visit(RoundId round, std::size_t yard, maths::Day day) {
    if (one_in(2))
        count(yard, round, day);
    const auto plan = plan_visit(m_book, round, m_yards[yard].id, day);
    if (!plan || plan->lines.empty())
        return;
    VisitEntry entry;
    entry.round = round;
    entry.yard = m_yards[yard].id;
    entry.on = day;
    entry.supers_on = false;
    int short_of = plan->short_of;
    for (const VisitLine& line : plan->lines) {
        VisitEntry::Row row{line.hive, line.planned.value_or(0), {}, {}, {}};
        if (*row.strips > 0 && one_in(150)) {
            row.strips = 0;
            row.state = StateOfHive::dead;
            row.note = QStringLiteral("no bees left");
            ++m_made.hives_dead;
        } else if (*row.strips > 1 && one_in(60)) {
            row.strips = *row.strips - 1;
            row.note = QStringLiteral("small on this day");
        } else if (short_of > 0) {
            short_of -= *row.strips;
            row.strips = 0;
        }
        entry.rows.push_back(row);
    }
    // Now and then the evening passes before it is written down.
    const maths::Day written = one_in(8) ? maths::days_after(day, 1) : day;
    const VisitDone done = must([&](const Confirmed& yes) { return enter_visit(m_book, entry, at(written, 18), yes); });
    m_made.strips_hung += done.strips;
    ++m_made.visits;
}

void YearsPlayer::pull(std::size_t yard, maths::Day day) {
    correct_before_pull(yard, day);
    PullEntry entry;
    entry.on = day;
    const std::vector<PullLine> lines = hanging(m_book, m_yards[yard].id, day);
    for (const PullLine& line : lines) {
        PullEntry::Row row{line.placement, {}, {}, {}};
        if (line.strips > 1 && one_in(30))
            row.missing = 1;
        entry.rows.push_back(row);
    }
    if (entry.rows.empty())
        return;
    const maths::Day written = one_in(8) ? maths::days_after(day, 1) : day;
    const PullDone done = must([&](const Confirmed& yes) { return enter_pull(m_book, entry, at(written, 18), yes); });
    m_made.strips_out += done.pulled;
    m_made.strips_missing += done.missing;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        m_pulled.push_back(lines[i].placement);
        if (!entry.rows[i].missing && one_in(300))
            correct_after_pull(lines[i].placement, lines[i].strips, maths::days_after(written, 1));
    }
    if (one_in(20)) {
        WeighEntry weighing;
        weighing.placement = lines.front().placement;
        weighing.strips = 1;
        weighing.total = maths::grams(19 + 0.1 * below(20));
        must([&](const Confirmed& yes) { return log_weighing(m_book, weighing, at(written, 20), yes); });
        ++m_made.weighings;
    }
}

void YearsPlayer::correct_before_pull(std::size_t yard, maths::Day day) {
    for (const PullLine& line : hanging(m_book, m_yards[yard].id, day)) {
        if (line.strips > 1 && one_in(200)) {
            must_because([&](const Confirmed&) {
                return correct_placement(m_book, line.placement, line.strips - 1, {}, because(QStringLiteral("counted twice"), day, 12));
            });
            --m_made.strips_hung;
        } else if (one_in(400)) {
            must_because([&](const Confirmed&) {
                return void_placement(m_book, line.placement, because(QStringLiteral("written for the wrong hive"), day, 12));
            });
            m_made.strips_hung -= line.strips;
            ++m_made.placements_void;
        }
    }
}

void YearsPlayer::correct_after_pull(PlacementId placement, int hung, maths::Day day) {
    must_because([&](const Confirmed&) {
        return correct_pull(m_book, placement, hung - 1, 1, {}, because(QStringLiteral("one was found on the floor, then lost"), day, 9));
    });
    --m_made.strips_out;
    ++m_made.strips_missing;
}

void YearsPlayer::count(std::size_t yard, std::optional<RoundId> round, maths::Day day) {
    CountEntry entry;
    entry.round = round;
    entry.on = day;
    // A yard has its own way, so that counts before and after can be compared.
    const bool drop = yard % 4 == 3;
    entry.kind = drop ? MiteCountKind::drop : MiteCountKind::wash;
    const auto hives = work::hives(m_book, m_yards[yard].id);
    // Every fourth, so that the same hives are counted before and after.
    for (std::size_t i = 0; i < hives.size(); i += 4) {
        CountEntry::Row row;
        row.hive = hives[i].id;
        row.mites = below(16);
        if (drop)
            row.days = 3;
        else
            row.bees = 300;
        entry.rows.push_back(row);
    }
    if (entry.rows.empty())
        return;
    const auto enter = [&] { must([&](const Confirmed& yes) { return enter_counts(m_book, entry, at(day, 17), yes); }); };
    enter();
    if (one_in(25)) {
        must([&](const Confirmed&) { return undo(m_book, at(day, 17, 5)); });
        ++m_made.undone;
        enter();
    }
    m_made.counts += static_cast<int>(entry.rows.size());
}

void YearsPlayer::move_some(maths::Day day) {
    if (m_yards.size() < 2)
        return;
    for (std::size_t from = 0; from < m_yards.size(); from += 20) {
        const auto hives = work::hives(m_book, m_yards[from].id);
        if (hives.size() < 3)
            continue;
        const std::size_t to = (from + 1) % m_yards.size();
        must([&](const Confirmed&) { return move_hives(m_book, {hives.back().id}, m_yards[to].id, day, at(day, 7)); });
        ++m_made.hives_moved;
    }
}

void YearsPlayer::print_register(maths::Day day) {
    if (m_pulled.empty())
        return;
    must([&](const Confirmed&) { return sheet_printed(m_book, QStringLiteral("register"), {}, {}, m_pulled, at(day, 19)); });
    m_pulled.clear();
}

} // namespace soakbook::tests
