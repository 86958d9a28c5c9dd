// SPDX-License-Identifier: GPL-3.0-or-later
// Due in the store: bags that rest, come near their limit or pass it, stay open, pails that wait, labels to print
// again.
#include "core/work/due_rows.h"

#include <algorithm>

namespace soakbook::work {

namespace {

void add_bag(DueRow& row, const BagLine& bag) {
    row.ids.push_back(bag.id.value);
    ++row.count;
    row.strips += bag.left;
    if (row.count == 1)
        row.subject = bag.code;
}

/// Bags of one batch whose rest ends on one day stand in one row.
void rests(DueList& list, const std::vector<BagLine>& bags) {
    std::map<std::pair<maths::Day, BatchId>, std::vector<const BagLine*>> ends;
    for (const BagLine& bag : bags) {
        const bool ends_later = bag.state == BagState::resting;
        const bool ends_today = bag.rest_until == list.today && bag.sealed_on != list.today && bag.left > 0;
        if (ends_later || ends_today)
            ends[{*bag.rest_until, bag.batch}].push_back(&bag);
    }
    for (const auto& [when, of_batch] : ends) {
        DueRow& row = list.add(DueKind::rest_ends, list.group_of(when.first), when.first);
        for (const BagLine* bag : of_batch)
            add_bag(row, *bag);
        row.batch = when.second;
        row.subject = of_batch.front()->batch_code;
        row.by = when.first;
    }
}

void limits(DueList& list, const std::vector<BagLine>& bags) {
    std::vector<const BagLine*> near;
    std::vector<const BagLine*> past;
    std::vector<const BagLine*> open_long;
    bool any_open = false;
    for (const BagLine& bag : bags) {
        if (bag.state == BagState::near_limit)
            near.push_back(&bag);
        if (bag.state == BagState::past_limit)
            past.push_back(&bag);
        if (bag.opened_too_long && bag.state != BagState::past_limit)
            open_long.push_back(&bag);
        any_open = any_open || bag.opened_on;
    }
    if (!bags.empty())
        list.wanted(Figure::near_limit_days);
    if (any_open)
        list.wanted(Figure::opened_days);
    // Bags come in order of their limit.
    if (!near.empty()) {
        const maths::Day first = *near.front()->use_by;
        DueRow& row = list.add(DueKind::bags_near_limit, std::min(list.group_of(first), DueGroup::this_week), first);
        for (const BagLine* bag : near)
            add_bag(row, *bag);
        row.from = first;
        row.by = near.back()->use_by;
    }
    if (!past.empty()) {
        DueRow& row = list.add(DueKind::bags_past_limit, DueGroup::today, *past.front()->use_by);
        for (const BagLine* bag : past)
            add_bag(row, *bag);
        row.by = past.front()->use_by;
    }
    if (!open_long.empty()) {
        DueRow& row = list.add(DueKind::opened_too_long, DueGroup::today, list.today);
        maths::Day first = *open_long.front()->opened_on;
        for (const BagLine* bag : open_long) {
            add_bag(row, *bag);
            first = std::min(first, *bag->opened_on);
        }
        row.since = start_of(first);
    }
}

void waiting_pails(DueList& list, const std::vector<PailLine>& pails) {
    if (pails.empty() || !list.wanted(Figure::pail_wait_days))
        return;
    std::optional<maths::Day> oldest;
    std::vector<const PailLine*> waiting;
    for (const PailLine& pail : pails)
        if (pail.waits_too_long && pail.state != PailState::planned) {
            waiting.push_back(&pail);
            oldest = oldest ? std::min(*oldest, pail.sealed_on) : pail.sealed_on;
        }
    if (waiting.empty())
        return;
    DueRow& row = list.add(DueKind::pail_waits, DueGroup::this_week, *oldest);
    for (const PailLine* pail : waiting)
        row.ids.push_back(pail->id.value);
    row.count = static_cast<int>(waiting.size());
    row.subject = waiting.front()->code;
    row.since = start_of(*oldest);
}

void stale_labels(DueList& list, const std::vector<BagLine>& bags, const std::vector<PailLine>& pails) {
    std::vector<const BagLine*> stale;
    for (const BagLine& bag : bags)
        if (bag.label == QStringLiteral("stale") && bag.state != BagState::gone && bag.state != BagState::made_void)
            stale.push_back(&bag);
    if (!stale.empty()) {
        DueRow& row = list.add(DueKind::print_label_again, DueGroup::today, list.today);
        for (const BagLine* bag : stale)
            add_bag(row, *bag);
    }
    std::vector<const PailLine*> stale_pails;
    for (const PailLine& pail : pails)
        if (pail.label == QStringLiteral("stale"))
            stale_pails.push_back(&pail);
    if (!stale_pails.empty()) {
        DueRow& row = list.add(DueKind::print_label_again, DueGroup::today, list.today);
        row.of_pails = true;
        for (const PailLine* pail : stale_pails)
            row.ids.push_back(pail->id.value);
        row.count = static_cast<int>(stale_pails.size());
        row.subject = stale_pails.front()->code;
    }
}

} // namespace

void due_in_store(DueList& list) {
    const std::vector<BagLine> in_stock = bags(list.workbook, list.today);
    const std::vector<PailLine> on_shelf = pails(list.workbook, list.today);
    rests(list, in_stock);
    limits(list, in_stock);
    waiting_pails(list, on_shelf);
    std::vector<BagLine> labelled = in_stock;
    for (BagLine& bag : bags(list.workbook, list.today, BagFilter::reserved))
        labelled.push_back(std::move(bag));
    stale_labels(list, labelled, on_shelf);
}

} // namespace soakbook::work
