// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bag_choice.h"

#include "core/work/facts.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// A bag on the shelf while strips are taken from it.
struct Shelf {
    book::BagStock stock;
    int left = 0;
    bool opened = false;
};

std::optional<Refusal> named_refused(const std::optional<book::BagStock>& stock, StripKindId kind, maths::Day on,
                                     const QString& field) {
    if (!stock || stock->bag.strip_kind != kind)
        return Refusal{Why::not_found, field, {stock ? stock->bag.code : QString()}, false};
    const book::Bag& bag = stock->bag;
    if (bag.void_reason)
        return Refusal{Why::bag_gone, field, {bag.code}, false};
    if (!bag.sealed_on)
        return Refusal{Why::not_filled, field, {bag.code}, false};
    if (stock->left <= 0)
        return Refusal{Why::bag_gone, field, {bag.code}, false};
    if (*bag.sealed_on > on)
        return Refusal{Why::before_sealed, field, {bag.code, fact(*bag.sealed_on)}, false};
    return std::nullopt;
}

/// The bags in the order strips are taken from them when `need` strips are wanted in all.
std::vector<Shelf*> order_of_taking(std::vector<Shelf>& shelf, int need, maths::Day on) {
    std::vector<Shelf*> ready;
    for (Shelf& s : shelf)
        if (s.left > 0 && is_ready(s.stock, on))
            ready.push_back(&s);
    std::stable_sort(ready.begin(), ready.end(), [](const Shelf* a, const Shelf* b) {
        const auto limit_a = *a->stock.bag.use_by;
        const auto limit_b = *b->stock.bag.use_by;
        if (limit_a != limit_b)
            return limit_a < limit_b;
        if (a->opened != b->opened)
            return a->opened;
        return a->left != b->left ? a->left > b->left : a->stock.bag.id < b->stock.bag.id;
    });
    // Among unopened bags of one limit the fullest come first, and the last one needed is the smallest that will do.
    int still = need;
    for (std::size_t i = 0; i < ready.size() && still > 0; ++i) {
        if (!ready[i]->opened && ready[i]->left > still) {
            std::size_t best = i;
            for (std::size_t j = i + 1; j < ready.size() && ready[j]->stock.bag.use_by == ready[i]->stock.bag.use_by;
                 ++j)
                if (ready[j]->left >= still && ready[j]->left < ready[best]->left)
                    best = j;
            std::swap(ready[i], ready[best]);
        }
        still -= ready[i]->left;
    }
    return ready;
}

} // namespace

bool is_ready(const book::BagStock& stock, maths::Day on) {
    const book::Bag& bag = stock.bag;
    return stock.left > 0 && !bag.void_reason && bag.sealed_on && *bag.sealed_on <= on && *bag.use_by >= on &&
           (!bag.rest_until || *bag.rest_until <= on);
}

int strips_ready(const std::vector<book::BagStock>& stock, maths::Day on) {
    int ready = 0;
    for (const book::BagStock& s : stock)
        if (is_ready(s, on))
            ready += s.left;
    return ready;
}

Outcome<Shares> share_from_bags(const book::Workbook& workbook, StripKindId kind, const std::vector<Wish>& wishes,
                                maths::Day on) {
    std::vector<Shelf> shelf;
    for (book::BagStock& stock : book::bag_stock_of_kind(workbook, kind)) {
        const int left = stock.left;
        const bool opened = stock.bag.opened_on.has_value();
        shelf.push_back({std::move(stock), left, opened});
    }
    Shares shares;
    shares.of.resize(wishes.size());
    for (const Shelf& s : shelf)
        if (is_ready(s.stock, on))
            shares.ready += s.left;
    const auto give = [&](std::size_t wish, Shelf& from, int strips) {
        shares.of[wish].push_back({from.stock.bag.id, from.stock.bag.code, strips});
        shares.bags.emplace(from.stock.bag.id, from.stock);
        from.left -= strips;
        from.opened = true;
    };
    int need = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const Wish& wish = wishes[i];
        if (wish.strips <= 0)
            continue;
        if (!wish.bag) {
            need += wish.strips;
            continue;
        }
        const auto found =
            std::find_if(shelf.begin(), shelf.end(), [&](const Shelf& s) { return s.stock.bag.id == *wish.bag; });
        const auto stock = found != shelf.end() ? std::optional(found->stock) : book::bag_stock(workbook, *wish.bag);
        if (auto refusal = named_refused(stock, kind, on, wish.bag_field))
            return unexpected(*refusal);
        if (wish.strips > found->left)
            return refuse(Why::bag_short, wish.strips_field, {stock->bag.code, fact(found->left), fact(wish.strips)});
        give(i, *found, wish.strips);
    }
    std::vector<Shelf*> order = order_of_taking(shelf, need, on);
    std::size_t next = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        if (wishes[i].bag)
            continue;
        int still = std::max(wishes[i].strips, 0);
        while (still > 0 && next < order.size()) {
            if (order[next]->left == 0) {
                ++next;
                continue;
            }
            const int taken = std::min(still, order[next]->left);
            give(i, *order[next], taken);
            still -= taken;
        }
        if (still > 0) {
            shares.short_of += still;
            if (!shares.first_short)
                shares.first_short = i;
        }
    }
    return shares;
}

} // namespace soakbook::work
