// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/store_view.h"

#include "core/book/queries/bags.h"
#include "core/book/queries/placements.h"
#include "core/maths/keeping.h"
#include "core/work/figures.h"
#include "core/work/store_lines.h"

#include <algorithm>

namespace soakbook::work {

namespace {

bool passes(const BagLine& bag, BagFilter filter) {
    const bool in_stock = bag.state == BagState::resting || bag.state == BagState::ready ||
                          bag.state == BagState::near_limit || bag.state == BagState::past_limit;
    switch (filter) {
    case BagFilter::in_stock:
        return in_stock;
    case BagFilter::resting:
        return bag.state == BagState::resting;
    case BagFilter::ready:
        return bag.state == BagState::ready || bag.state == BagState::near_limit;
    case BagFilter::near_limit:
        return bag.state == BagState::near_limit;
    case BagFilter::past_limit:
        return bag.state == BagState::past_limit;
    case BagFilter::opened:
        return in_stock && bag.opened_on;
    case BagFilter::reserved:
        return bag.state == BagState::reserved;
    case BagFilter::gone:
        return bag.state == BagState::gone || bag.state == BagState::made_void;
    case BagFilter::all:
        return true;
    }
    return true;
}

/// No more bags than the filter may let pass.
std::vector<book::BagStock> stock_to_look_at(const book::Workbook& workbook, BagFilter filter) {
    if (filter == BagFilter::gone || filter == BagFilter::all)
        return book::all_bag_stock(workbook);
    return filter == BagFilter::reserved ? book::reserved_bag_labels(workbook) : book::bag_stock_on_shelf(workbook);
}

} // namespace

BagState bag_state(const BagLine& bag, maths::Day today, std::optional<qint64> near_limit_days) {
    if (!bag.void_reason.isEmpty())
        return BagState::made_void;
    if (!bag.sealed_on)
        return BagState::reserved;
    if (bag.left <= 0)
        return BagState::gone;
    const auto left = maths::days_left(today, *bag.use_by);
    if (left < 0)
        return BagState::past_limit;
    if (bag.rest_until && *bag.rest_until > today)
        return BagState::resting;
    return near_limit_days && left <= *near_limit_days ? BagState::near_limit : BagState::ready;
}

BagLine line_of(const book::BagStock& stock, maths::Day today, const ShelfRules& figures) {
    const book::Bag& b = stock.bag;
    BagLine line;
    line.id = b.id;
    line.code = b.code;
    line.batch = b.batch;
    line.batch_code = stock.batch_code;
    line.strip_kind = b.strip_kind;
    line.strip_kind_name = stock.strip_kind_name;
    line.packed = b.packed;
    line.left = stock.left;
    line.placed = stock.placed;
    line.discarded = stock.discarded;
    line.recounted = stock.recounted;
    line.net = b.net;
    line.acid_per_strip = b.acid_per_strip;
    line.strength = b.strength;
    line.sealed_on = b.sealed_on;
    line.rest_until = b.rest_until;
    line.use_by = b.use_by;
    if (b.use_by)
        line.days_left = static_cast<int>(maths::days_left(today, *b.use_by));
    line.opened_on = b.opened_on;
    line.resealed_on = b.resealed_on;
    line.opened_too_long = b.opened_on && figures.opened_days && stock.left > 0 &&
                           maths::days_after(*b.opened_on, *figures.opened_days) < today;
    line.stands = b.stands;
    line.label = QLatin1String(book::Names<book::LabelState>::all[static_cast<std::size_t>(b.label)]);
    line.note = b.note;
    line.void_reason = b.void_reason.value_or(QString());
    line.state = bag_state(line, today, figures.near_limit_days);
    return line;
}

ShelfRules shelf_rules(const book::Workbook& workbook) {
    return {figure(workbook, Figure::near_limit_days), figure(workbook, Figure::opened_days)};
}

std::vector<BagLine> bags(const book::Workbook& workbook, maths::Day today, BagFilter filter) {
    const ShelfRules figures = shelf_rules(workbook);
    std::vector<BagLine> lines;
    for (const book::BagStock& stock : stock_to_look_at(workbook, filter)) {
        BagLine line = line_of(stock, today, figures);
        if (passes(line, filter))
            lines.push_back(std::move(line));
    }
    std::stable_partition(lines.begin(), lines.end(),
                          [](const BagLine& l) { return l.state != BagState::gone && l.state != BagState::made_void; });
    return lines;
}

std::optional<BagLine> bag(const book::Workbook& workbook, BagId id, maths::Day today) {
    const auto stock = book::bag_stock(workbook, id);
    return stock ? std::optional(line_of(*stock, today, shelf_rules(workbook))) : std::nullopt;
}

std::vector<BagEvent> bag_events(const book::Workbook& workbook, BagId id) {
    std::vector<BagEvent> events;
    const auto bag = book::fetch(workbook, id);
    if (!bag || !bag->sealed_on)
        return events;
    events.push_back({*bag->sealed_on, BagEvent::Kind::sealed, bag->packed.value_or(0), {}, {}, false});
    if (bag->opened_on)
        events.push_back({*bag->opened_on, BagEvent::Kind::opened, 0, {}, {}, false});
    book::PlacementFilter filter;
    filter.bag = id;
    filter.also_void = true;
    for (const book::PlacementRow& row : book::placements(workbook, filter)) {
        const QString where = row.hive + QStringLiteral(", ") + row.yard_name;
        events.push_back({row.placement.placed_on, BagEvent::Kind::placed, -row.placement.strips, where,
                          row.placement.void_reason.value_or(QString()), row.placement.void_reason.has_value()});
    }
    for (const book::BagChange& change : book::changes_of_bag(workbook, id))
        events.push_back(
            {change.on,
             change.kind == book::ChangeKind::discard ? BagEvent::Kind::discarded : BagEvent::Kind::recounted,
             change.strips,
             {},
             change.reason,
             change.void_reason.has_value()});
    if (bag->resealed_on)
        events.push_back({*bag->resealed_on, BagEvent::Kind::resealed, 0, {}, {}, false});
    std::stable_sort(events.begin(), events.end(), [](const BagEvent& a, const BagEvent& b) { return a.on < b.on; });
    return events;
}

StockFigures stock_figures(const book::Workbook& workbook, maths::Day today) {
    StockFigures figures;
    for (const BagLine& line : bags(workbook, today)) {
        ++figures.bags_in_stock;
        switch (line.state) {
        case BagState::resting:
            figures.resting += line.left;
            break;
        case BagState::past_limit:
            figures.past_limit += line.left;
            break;
        case BagState::near_limit:
            figures.near_limit += line.left;
            [[fallthrough]];
        case BagState::ready:
            figures.ready += line.left;
            break;
        default:
            break;
        }
    }
    for (const PailLine& pail : pails(workbook, today)) {
        ++figures.pails;
        figures.in_pails += pail.mass;
    }
    return figures;
}

} // namespace soakbook::work
