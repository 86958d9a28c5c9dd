// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/stock.h"

#include "core/book/queries/bags.h"
#include "core/work/facts.h"
#include "core/work/perform.h"
#include "core/work/yard_checks.h"

namespace soakbook::work {

namespace {

const QString strips_field = QStringLiteral("strips");

/// A bag that is there, sealed and not void.
Outcome<book::BagStock> filled_bag(const book::Workbook& workbook, BagId id) {
    auto stock = book::bag_stock(workbook, id);
    if (!stock)
        return refuse(Why::not_found, QStringLiteral("bag"));
    if (stock->bag.void_reason)
        return refuse(Why::bag_gone, QStringLiteral("bag"), {stock->bag.code});
    if (!stock->bag.sealed_on)
        return refuse(Why::not_filled, QStringLiteral("bag"), {stock->bag.code});
    return *stock;
}

/// The day of an entry about a bag: not to come, not before it was sealed.
Outcome<maths::Day> day_of_bag(const book::Bag& bag, std::optional<maths::Day> on, maths::Day today) {
    const auto day = day_not_to_come(on, today);
    if (day && *day < *bag.sealed_on)
        return refuse(Why::before_sealed, QStringLiteral("on"), {bag.code, fact(*bag.sealed_on)});
    return day;
}

} // namespace

Outcome<int> move_bags(book::Workbook& workbook, const std::vector<BagId>& bags, const QString& stands,
                       const book::Doing& doing) {
    if (bags.empty())
        return refuse(Why::missing, QStringLiteral("bags"));
    if (auto refusal = text_refused(stands, longest_name, QStringLiteral("stands")))
        return unexpected(*refusal);
    std::vector<book::Bag> moved;
    for (const BagId id : bags) {
        auto bag = book::fetch(workbook, id);
        if (!bag)
            return refuse(Why::not_found, QStringLiteral("bags"));
        if (bag->void_reason)
            return refuse(Why::bag_gone, QStringLiteral("bags"), {bag->code});
        if (bag->stands == stands.trimmed())
            continue;
        bag->stands = stands.trimmed();
        moved.push_back(std::move(*bag));
    }
    if (moved.empty())
        return refuse(Why::nothing_changed);
    const int count = static_cast<int>(moved.size());
    return perform(workbook, {QStringLiteral("bags_moved"), count, stands.trimmed()}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       for (const book::Bag& bag : moved)
                           book::update(w, bag);
                       return count;
                   });
}

Outcome<int> open_bag(book::Workbook& workbook, BagId id, std::optional<maths::Day> on, const book::Doing& doing) {
    auto stock = filled_bag(workbook, id);
    if (!stock)
        return unexpected(stock.error());
    book::Bag& bag = stock->bag;
    if (stock->left == 0)
        return refuse(Why::bag_gone, QStringLiteral("bag"), {bag.code});
    const auto day = day_of_bag(bag, on, doing.today());
    if (!day)
        return unexpected(day.error());
    if (bag.opened_on && !bag.resealed_on)
        return refuse(Why::nothing_changed);
    if (bag.resealed_on && *day < *bag.resealed_on)
        return refuse(Why::before_start, QStringLiteral("on"), {fact(*bag.resealed_on)});
    // An opened bag's days run from the first opening, resealed or not.
    if (!bag.opened_on)
        bag.opened_on = *day;
    bag.resealed_on.reset();
    return perform(workbook, {QStringLiteral("bag_opened"), 1, bag.code}, doing, [&](book::Writing& w) -> Outcome<int> {
        book::update(w, bag);
        return 1;
    });
}

Outcome<int> reseal_bag(book::Workbook& workbook, BagId id, std::optional<maths::Day> on, const book::Doing& doing) {
    auto stock = filled_bag(workbook, id);
    if (!stock)
        return unexpected(stock.error());
    book::Bag& bag = stock->bag;
    const auto day = day_of_bag(bag, on, doing.today());
    if (!day)
        return unexpected(day.error());
    if (!bag.opened_on || bag.resealed_on)
        return refuse(Why::nothing_changed);
    if (*day < *bag.opened_on)
        return refuse(Why::before_start, QStringLiteral("on"), {fact(*bag.opened_on)});
    bag.resealed_on = *day;
    return perform(workbook, {QStringLiteral("bag_resealed"), 1, bag.code}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, bag);
                       return 1;
                   });
}

Outcome<int> discard_strips(book::Workbook& workbook, BagId id, std::optional<int> strips, std::optional<maths::Day> on,
                            const QString& reason, const book::Doing& doing) {
    const auto stock = filled_bag(workbook, id);
    if (!stock)
        return unexpected(stock.error());
    if (!strips)
        return refuse(Why::missing, strips_field);
    if (*strips <= 0)
        return refuse(Why::not_positive, strips_field);
    const auto day = day_of_bag(stock->bag, on, doing.today());
    if (!day)
        return unexpected(day.error());
    if (*strips > stock->left)
        return refuse(Why::bag_short, strips_field, {stock->bag.code, fact(stock->left), fact(*strips)});
    if (auto refusal = reason_refused(reason))
        return unexpected(*refusal);
    const book::BagChange change{{}, id, book::ChangeKind::discard, -*strips, *day, reason.trimmed(), {}};
    return perform(workbook, {QStringLiteral("strips_discarded"), *strips, stock->bag.code}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::insert(w, change);
                       return *strips;
                   });
}

Outcome<int> discard_bags(book::Workbook& workbook, const std::vector<BagId>& bags, std::optional<maths::Day> on,
                          const QString& reason, const book::Doing& doing) {
    if (bags.empty())
        return refuse(Why::missing, QStringLiteral("bags"));
    if (auto refusal = reason_refused(reason))
        return unexpected(*refusal);
    std::vector<book::BagChange> changes;
    std::set<BagId> seen;
    int strips = 0;
    QStringList codes;
    for (const BagId id : bags) {
        if (!seen.insert(id).second)
            continue;
        const auto stock = filled_bag(workbook, id);
        if (!stock)
            return unexpected(stock.error());
        if (stock->left == 0)
            return refuse(Why::bag_gone, QStringLiteral("bags"), {stock->bag.code});
        const auto day = day_of_bag(stock->bag, on, doing.today());
        if (!day)
            return unexpected(day.error());
        changes.push_back({{}, id, book::ChangeKind::discard, -stock->left, *day, reason.trimmed(), {}});
        strips += stock->left;
        codes << stock->bag.code;
    }
    const QString subject =
        codes.size() <= 3 ? codes.join(QStringLiteral(", ")) : codes.first() + QStringLiteral(" ... ") + codes.last();
    return perform(workbook, {QStringLiteral("strips_discarded"), strips, subject}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       for (const book::BagChange& change : changes)
                           book::insert(w, change);
                       return strips;
                   });
}

Outcome<int> recount_bag(book::Workbook& workbook, BagId id, std::optional<int> left, const QString& reason,
                         const book::Doing& doing) {
    const auto stock = filled_bag(workbook, id);
    if (!stock)
        return unexpected(stock.error());
    const QString field = QStringLiteral("left");
    if (!left)
        return refuse(Why::missing, field);
    if (*left < 0)
        return refuse(Why::too_small, field, {fact(0)});
    if (*left > most_strips)
        return refuse(Why::too_large, field, {fact(most_strips)});
    if (auto refusal = reason_refused(reason))
        return unexpected(*refusal);
    const auto day = day_of_bag(stock->bag, {}, doing.today());
    if (!day)
        return unexpected(day.error());
    if (*left == stock->left)
        return refuse(Why::nothing_changed);
    const int difference = *left - stock->left;
    const book::BagChange change{{}, id, book::ChangeKind::recount, difference, *day, reason.trimmed(), {}};
    return perform(workbook, {QStringLiteral("bag_recounted"), 1, stock->bag.code}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::insert(w, change);
                       return difference;
                   });
}

} // namespace soakbook::work
