// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/copies.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/pails.h"
#include "core/work/batch_checks.h"
#include "core/work/leftovers.h"

namespace soakbook::work {

namespace {
template <class Labelled> void make_stale(Labelled& record) {
    if (record.label == book::LabelState::printed)
        record.label = book::LabelState::stale;
}
} // namespace

Copies::Copies(const book::Workbook& workbook, book::Id<book::Batch> id)
    : m_batch(id), m_strength(liquid_of(workbook, id).strength()) {
    const auto batch = book::fetch(workbook, id);
    if (!batch)
        return;
    for (const book::Bag& bag : book::bags_of(workbook, id))
        if (bag.sealed_on && !bag.void_reason)
            m_bags.push_back({bag, strip_weights(workbook, *batch, bag.soak, *bag.sealed_on)});
}

void Copies::bring_up(book::Writing& writing, bool only_gaps) const {
    const auto batch = book::fetch(writing.workbook(), m_batch);
    for (const Copied& copied : m_bags) {
        book::Bag bag = copied.bag;
        const StripWeights now = strip_weights(writing.workbook(), *batch, bag.soak, *bag.sealed_on);
        const bool followed = bag.strip == copied.weights.strip && bag.strength == copied.weights.strength;
        if (!followed || (only_gaps && bag.strip) || now == copied.weights)
            continue;
        const auto acid_before = bag.acid_per_strip;
        bag.strip = now.strip;
        bag.strength = now.strength;
        bag.acid_per_strip = now.acid;
        make_stale(bag);
        if (bag == copied.bag)
            continue;
        book::update(writing, bag);
        for (book::Placement placement : book::placements_of_bag(writing.workbook(), bag.id)) {
            if (placement.acid_per_strip != acid_before || placement.acid_per_strip == bag.acid_per_strip)
                continue;
            placement.acid_per_strip = bag.acid_per_strip;
            book::update(writing, placement);
        }
    }
}

void Copies::bring_up_pails(book::Writing& writing) const {
    const maths::Fraction now = liquid_of(writing.workbook(), m_batch).strength();
    if (now == m_strength)
        return;
    for (book::Pail pail : book::pails_of(writing.workbook(), m_batch)) {
        if (pail.strength != m_strength)
            continue;
        const auto input = book::input_of_pail(writing.workbook(), pail.id);
        std::optional<Copies> later;
        if (input && input->mass)
            later.emplace(writing.workbook(), input->batch);
        pail.strength = now;
        make_stale(pail);
        book::update(writing, pail);
        if (!later)
            continue;
        book::BatchInput corrected = *input;
        corrected.acid = maths::part_of(*corrected.mass, now);
        if (corrected != *input)
            book::update(writing, corrected);
        later->follow(writing);
    }
}

void Copies::follow(book::Writing& writing) const {
    bring_up(writing, false);
    bring_up_pails(writing);
}

void Copies::fill_gaps(book::Writing& writing) const {
    bring_up(writing, true);
}

void rebalance(book::Writing& writing, book::Id<book::Batch> id) {
    auto batch = book::fetch(writing.workbook(), id);
    if (!batch || !batch->closed || batch->void_reason)
        return;
    const auto account = balance(writing.workbook(), id);
    if (!account)
        return;
    batch->taken = account->in_strips + account->free_in_bags;
    batch->unexplained = account->unexplained;
    book::update(writing, *batch);
}

} // namespace soakbook::work
