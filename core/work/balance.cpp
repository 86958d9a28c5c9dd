// SPDX-License-Identifier: GPL-3.0-or-later
// Leftovers, the account: where every kilogram of a batch went, and the batch closed on it.
#include "core/maths/balance.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/soaks.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/figures.h"
#include "core/work/leftovers.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

Piece batch_piece(const char* key) {
    return {QLatin1String(key), 1, {}};
}

/// What the strips of a bag took up, and what lay free beside them at sealing.
void add_bag(const book::Bag& bag, Balance& balance) {
    if (bag.void_reason || !bag.packed)
        return;
    const maths::Mass dry = bag.dry.value_or(maths::Mass{}) * *bag.packed;
    const maths::Mass wet = bag.strip ? *bag.strip * *bag.packed : maths::Mass{};
    if (bag.strip)
        balance.in_strips += wet - dry;
    if (!bag.net)
        return;
    // Without a weighing nobody knows what lies free: all of it counts as taken up.
    (bag.strip ? balance.free_in_bags : balance.in_strips) += *bag.net - (bag.strip ? wet : dry);
}

int still_soaking(const book::Workbook& workbook, BatchId batch) {
    const Bagged bagged = bagged_of(workbook, batch);
    int strips = 0;
    for (const book::Soak& soak : book::soaks_of(workbook, batch))
        if (!soak.ended)
            strips += std::max(0, soak.strips - bagged.by_soak.at(soak.id.value));
    return strips;
}

} // namespace

Outcome<Balance> balance(const book::Workbook& workbook, BatchId id) {
    const auto batch = book::fetch(workbook, id);
    if (!batch)
        return refuse(Why::not_found);
    if (!batch->mixed)
        return refuse(Why::batch_not_mixed, {}, {batch->code});
    Balance account;
    account.in = liquid_of(workbook, id).total;
    for (const book::Bag& bag : book::bags_of(workbook, id))
        add_bag(bag, account);
    for (const book::Pail& pail : book::pails_of(workbook, id))
        account.in_pails += pail.mass;
    maths::Mass heel;
    for (const book::BatchLoss& loss : book::losses_of(workbook, id)) {
        account.named_losses += loss.mass;
        if (loss.kind == book::LossKind::tank_heel)
            heel += loss.mass;
    }
    if (batch->closed)
        account.limit = batch->unexplained_limit;
    else if (const auto said = figure(workbook, Figure::unexplained_limit))
        account.limit = maths::Fraction{*said};
    const maths::BatchFlow flow{account.in, account.in_strips + account.free_in_bags, account.in_pails,
                                account.named_losses - heel, heel};
    // Without a limit of the user's own nothing is beyond it.
    const auto reckoned = maths::balance_of(flow, account.limit.value_or(maths::ppm(1'000'000)));
    if (!reckoned)
        return refuse(Why::batch_not_mixed, {}, {batch->code});
    account.unexplained = reckoned->unexplained;
    account.beyond_limit = account.limit && reckoned->beyond_limit;
    return account;
}

Outcome<Balance> close_batch(book::Workbook& workbook, BatchId id, const book::Doing& doing,
                             const Confirmed& confirmed) {
    return perform(workbook, batch_piece("batch_closed"), doing, [&](book::Writing& writing) -> Outcome<Balance> {
        auto batch = mixed_batch(writing.workbook(), id);
        if (!batch)
            return unexpected(batch.error());
        if (doing.at < *batch->mixed)
            return refuse(Why::before_start, {}, {fact(batch->mixed->local_day())});
        if (const int strips = still_soaking(writing.workbook(), id); strips > 0)
            return refuse(Why::strips_not_bagged, {}, {fact(strips)});
        for (const book::Bag& bag : book::bags_of(writing.workbook(), id))
            if (!bag.void_reason && !bag.packed)
                return refuse(Why::not_filled, {}, {bag.code});
        const auto account = balance(writing.workbook(), id);
        if (!account)
            return unexpected(account.error());
        if (account->beyond_limit)
            if (const Not odd = no_unless(confirmed, Why::loss_unexplained, {},
                                          {fact(account->unexplained), fact(*account->limit)}))
                return because(odd);
        writing.name(1, batch->code);
        batch->closed = doing.at;
        batch->taken = account->in_strips + account->free_in_bags;
        batch->unexplained = account->unexplained;
        batch->unexplained_limit = account->limit;
        book::update(writing, *batch);
        return *account;
    });
}

Outcome<int> reopen_batch(book::Workbook& workbook, BatchId id, const book::Doing& doing) {
    return perform(workbook, batch_piece("batch_reopened"), doing, [&](book::Writing& writing) -> Outcome<int> {
        auto batch = batch_there(writing.workbook(), id);
        if (!batch)
            return unexpected(batch.error());
        if (!batch->closed)
            return refuse(Why::nothing_changed);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        writing.name(1, batch->code);
        batch->closed.reset();
        batch->taken.reset();
        batch->unexplained.reset();
        batch->unexplained_limit.reset();
        book::update(writing, *batch);
        return 1;
    });
}

} // namespace soakbook::work
