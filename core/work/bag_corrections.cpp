// SPDX-License-Identifier: GPL-3.0-or-later
// Bag, put right: strips, weight, day sealed; a spoilt label or a burst bag.
#include "core/book/queries/bags_of_batch.h"
#include "core/work/bag.h"
#include "core/work/bag_filling.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/copies.h"
#include "core/work/perform.h"

#include <algorithm>

namespace soakbook::work {

namespace {

Outcome<book::Bag> bag_there(const book::Workbook& workbook, BagId id) {
    const auto bag = book::fetch(workbook, id);
    if (!bag)
        return refuse(Why::not_found);
    if (bag->void_reason)
        return refuse(Why::bag_gone, {}, {bag->code});
    return *bag;
}

Not correct_packed(const book::Workbook& workbook, const BagCorrection& entry, book::Bag& bag) {
    const QString field = QStringLiteral("packed");
    const auto packed = checked_count(entry.packed, field, 10'000);
    if (!packed)
        return packed.error();
    const int gone = *bag.packed - book::left_in_bag(workbook, bag.id);
    if (*packed < gone)
        return no(Why::too_small, field, {fact(gone)});
    const int most = to_bag(workbook, bag.batch, bag.soak, bag.id);
    if (*packed > most)
        return no(Why::more_than_soaked, field, {fact(*packed), fact(most)});
    bag.packed = *packed;
    return {};
}

/// A new day moves rest and limit by the rules copied at the time. Strips that hang already must still be possible.
Not correct_sealed(const book::Workbook& workbook, const BagCorrection& entry, const book::Doing& doing,
                   book::Bag& bag) {
    const QString field = QStringLiteral("sealed_on");
    const auto batch = book::fetch(workbook, bag.batch);
    const auto day = checked_day(entry.sealed_on, doing, {Why::long_ago}, batch->mixed->local_day(), field);
    if (!day)
        return day.error();
    if (bag.soak)
        if (const auto soak = book::fetch(workbook, *bag.soak); soak && *day < soak->started.local_day())
            return no(Why::before_start, field, {fact(soak->started.local_day())});
    Filling dates;
    dates.sealed = *day;
    dates.rest_days = bag.rest_days;
    dates.use_months = *bag.use_months;
    if (const Not bad = date_bag(dates))
        return bad;
    if (bag.opened_on && *bag.opened_on < *day)
        return no(Why::before_sealed, field, {bag.code, fact(*bag.opened_on)});
    for (const book::Placement& placement : book::placements_of_bag(workbook, bag.id)) {
        if (placement.placed_on < *day)
            return no(Why::before_sealed, field, {bag.code, fact(placement.placed_on)});
        if (placement.placed_on > dates.use_by && !placement.past_limit_reason)
            return no(Why::bag_past_limit, field, {bag.code, fact(dates.use_by)});
    }
    bag.sealed_on = *day;
    bag.rest_until = dates.rest_until;
    bag.use_by = dates.use_by;
    return {};
}

} // namespace

Outcome<int> correct_bag(book::Workbook& workbook, const BagCorrection& entry, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("corrected"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<int> {
        const book::Workbook& book = writing.workbook();
        const auto before = bag_there(book, entry.bag);
        if (!before)
            return unexpected(before.error());
        if (!before->packed)
            return refuse(Why::not_filled, {}, {before->code});
        book::Bag bag = *before;
        if (entry.packed)
            if (const Not bad = correct_packed(book, entry, bag))
                return because(bad);
        if (entry.sealed_on)
            if (const Not bad = correct_sealed(book, entry, doing, bag))
                return because(bad);
        if (entry.net)
            bag.net = entry.net;
        if (bag == *before)
            return refuse(Why::nothing_changed);
        Filling filling;
        filling.weights.dry = bag.dry.value_or(maths::Mass{});
        filling.weights.strip = bag.strip;
        if (const Not bad = odd_net(filling, *bag.packed, bag.net, QStringLiteral("net"), {Why::odd_bag_weight}))
            return because(bad);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        if (bag.label == book::LabelState::printed)
            bag.label = book::LabelState::stale;
        writing.name(1, bag.code);
        book::update(writing, bag);
        rebalance(writing, bag.batch);
        return 1;
    });
}

Outcome<int> void_bag(book::Workbook& workbook, BagId id, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("made_void"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<int> {
        auto bag = bag_there(writing.workbook(), id);
        if (!bag)
            return unexpected(bag.error());
        if (const Not missing = reason_missing(doing))
            return because(missing);
        if (const auto placed = book::placements_of_bag(writing.workbook(), id); !placed.empty())
            return refuse(Why::undo_blocked, {}, {book::hive_name(writing.workbook(), placed.front())});
        writing.name(1, bag->code);
        bag->void_reason = doing.why.trimmed();
        book::update(writing, *bag);
        rebalance(writing, bag->batch);
        return 1;
    });
}

} // namespace soakbook::work
