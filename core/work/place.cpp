// SPDX-License-Identifier: GPL-3.0-or-later
// Strips hung in one hive outside a round, and placements put right or made void.
#include "core/book/queries/bags.h"
#include "core/book/queries/placements.h"
#include "core/book/queries/rounds.h"
#include "core/work/checks.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/hang.h"
#include "core/work/perform.h"
#include "core/work/standing.h"
#include "core/work/visit.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// The kind of the bag named, or the only kind there is in the store.
Outcome<StripKindId> kind_wanted(const book::Workbook& workbook, std::optional<BagId> named) {
    const QString field = QStringLiteral("bag");
    if (named) {
        const auto bag = book::fetch(workbook, *named);
        return bag ? Outcome<StripKindId>(bag->strip_kind) : refuse(Why::not_found, field);
    }
    std::set<StripKindId> kinds;
    for (const book::BagStock& stock : book::bag_stock_on_shelf(workbook))
        kinds.insert(stock.bag.strip_kind);
    if (kinds.empty())
        return refuse(Why::not_enough_strips, QStringLiteral("strips"), {fact(0), fact(1)});
    if (kinds.size() > 1)
        return refuse(Why::missing, field);
    return *kinds.begin();
}

Outcome<book::Placement> placement_that_stands(const book::Workbook& workbook, PlacementId id,
                                               const book::Doing& doing) {
    const auto placement = book::fetch(workbook, id);
    if (!placement || placement->void_reason)
        return refuse(Why::not_found);
    if (auto refusal = reason_missing(doing))
        return because(refusal);
    return *placement;
}

/// The placement moved to another day; its window keeps the days it was given.
std::optional<Refusal> move_day(const book::Workbook& workbook, book::Placement& p, maths::Day on, const book::Bag& bag,
                                const book::Doing& doing) {
    const QString field = QStringLiteral("on");
    if (const auto day = day_not_to_come(on, doing.today()); !day)
        return day.error();
    if (on < *bag.sealed_on)
        return Refusal{Why::before_sealed, field, {bag.code, fact(*bag.sealed_on)}, false};
    if (on > *bag.use_by && !p.past_limit_reason)
        return Refusal{Why::bag_past_limit, field, {bag.code, fact(*bag.use_by)}, false};
    if (p.pulled_on && *p.pulled_on < on)
        return Refusal{Why::before_placed, field, {fact(on)}, false};
    const auto later = maths::days_between(p.placed_on, on);
    if (p.pull_from) {
        p.pull_from = maths::days_after(*p.pull_from, later);
        p.pull_by = maths::days_after(*p.pull_by, later);
    }
    p.placed_on = on;
    if (const auto hive = book::fetch(workbook, p.hive))
        p.yard = yard_of_hive(workbook, *hive, on);
    return std::nullopt;
}

} // namespace

Outcome<VisitDone> place_strips(book::Workbook& workbook, const PlaceEntry& entry, const book::Doing& doing,
                                const Confirmed& confirmed) {
    auto hive = book::fetch(workbook, entry.hive);
    if (!hive || hive->void_reason)
        return refuse(Why::not_found, QStringLiteral("hive"));
    const QString strips_field = QStringLiteral("strips");
    if (!entry.strips)
        return refuse(Why::missing, strips_field);
    if (*entry.strips <= 0)
        return refuse(Why::not_positive, strips_field);
    if (*entry.strips > most_strips)
        return refuse(Why::too_large, strips_field, {fact(most_strips)});
    if (auto refusal = text_refused(entry.note, longest_note, QStringLiteral("note")))
        return unexpected(*refusal);
    const auto on = day_not_to_come(entry.on, doing.today());
    if (!on)
        return unexpected(on.error());
    if (!lives_on(*hive, *on))
        return refuse(Why::hive_dead, strips_field, {fact(hive->name)});
    const auto kind = kind_wanted(workbook, entry.bag);
    if (!kind)
        return unexpected(kind.error());
    const auto from = needed(workbook, Figure::pull_from_days, QStringLiteral("pull_from"));
    if (!from)
        return unexpected(from.error());
    const auto by = needed(workbook, Figure::pull_by_days, QStringLiteral("pull_by"));
    if (!by)
        return unexpected(by.error());
    if (!entry.supers_on && !hive->supers_on)
        return refuse(Why::missing, QStringLiteral("supers_on"));
    hive->yard = yard_of_hive(workbook, *hive, *on);
    const auto yard = book::fetch(workbook, hive->yard);
    const auto strip_kind = book::fetch(workbook, *kind);
    Hanging hanging;
    hanging.kind = *kind;
    hanging.yard = hive->yard;
    hanging.yard_name = yard->name;
    hanging.on = *on;
    hanging.pull_from_days = static_cast<int>(*from);
    hanging.pull_by_days = static_cast<int>(*by);
    if (const auto days = figure(workbook, Figure::withdrawal_days))
        hanging.withdrawal_days = static_cast<int>(*days);
    hanging.least = strip_kind->dose_least;
    hanging.most = strip_kind->dose_most;
    hanging.supers_on = entry.supers_on;
    hanging.past_limit_reason = entry.past_limit_reason;
    hanging.rows.push_back(
        {*hive, {*entry.strips, entry.bag, strips_field, QStringLiteral("bag")}, entry.note.trimmed()});
    const auto hung = plan_hanging(workbook, hanging, doing, confirmed);
    if (!hung)
        return unexpected(hung.error());
    return perform(workbook, {QStringLiteral("strips_in"), hive->hives, yard->name}, doing,
                   [&](book::Writing& w) -> Outcome<VisitDone> {
                       write_hung(w, *hung);
                       return hung->done;
                   });
}

Outcome<int> correct_placement(book::Workbook& workbook, PlacementId id, std::optional<int> strips,
                               std::optional<maths::Day> on, const book::Doing& doing) {
    const auto before = placement_that_stands(workbook, id, doing);
    if (!before)
        return unexpected(before.error());
    book::Placement p = *before;
    const auto stock = book::bag_stock(workbook, p.bag);
    const QString field = QStringLiteral("strips");
    if (strips) {
        if (*strips <= 0)
            return refuse(Why::not_positive, field);
        if (*strips > stock->left + p.strips)
            return refuse(Why::bag_short, field, {stock->bag.code, fact(stock->left + p.strips), fact(*strips)});
        p.strips = *strips;
        if (p.pulled_on) {
            // What came out was counted; the difference is what is missing.
            if (*p.pulled > p.strips)
                return refuse(Why::counted_more, field, {fact(*p.pulled), fact(p.strips)});
            p.missing = p.strips - *p.pulled;
        }
    }
    if (on && *on != p.placed_on)
        if (auto refusal = move_day(workbook, p, *on, stock->bag, doing))
            return unexpected(*refusal);
    if (p == *before)
        return refuse(Why::nothing_changed);
    book::Bag bag = stock->bag;
    if (bag.opened_on && *bag.opened_on > p.placed_on)
        bag.opened_on = p.placed_on;
    const auto hive = book::fetch(workbook, p.hive);
    return perform(workbook, {QStringLiteral("corrected"), 1, hive->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, p);
                       if (bag != stock->bag)
                           book::update(w, bag);
                       return p.strips;
                   });
}

Outcome<int> void_placement(book::Workbook& workbook, PlacementId id, const book::Doing& doing) {
    auto p = placement_that_stands(workbook, id, doing);
    if (!p)
        return unexpected(p.error());
    p->void_reason = doing.why.trimmed();
    // With its last strips void the yard is to be visited again.
    std::optional<book::RoundYard> unvisited;
    if (p->round) {
        book::PlacementFilter filter;
        filter.round = *p->round;
        filter.yard_then = p->yard;
        const auto others = book::placements(workbook, filter);
        const bool last = std::all_of(others.begin(), others.end(),
                                      [id](const book::PlacementRow& row) { return row.placement.id == id; });
        if (last)
            for (book::RoundYard& y : book::yards_of_round(workbook, *p->round))
                if (y.yard == p->yard && y.visited_on)
                    unvisited = y;
    }
    const auto hive = book::fetch(workbook, p->hive);
    return perform(workbook, {QStringLiteral("made_void"), 1, hive->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, *p);
                       if (unvisited) {
                           unvisited->visited_on.reset();
                           book::update(w, *unvisited);
                       }
                       return p->strips;
                   });
}

} // namespace soakbook::work
