// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bag.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/work/bag_filling.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/lot_stock.h"
#include "core/work/perform.h"

#include <set>

namespace soakbook::work {

namespace {

constexpr int most_bags = 5'000;

QString bag_row_field(std::size_t i, const char* name) {
    return QStringLiteral("rows/%1/%2").arg(static_cast<qulonglong>(i)).arg(QLatin1String(name));
}

/// Bags of one size and a last one that may be short.
struct Sizes {
    int bags = 0;
    int per_bag = 0;
    int last = 0;
    int strips() const { return (bags - 1) * per_bag + last; }
};
Outcome<Sizes> sizes_of(const BagEntry& entry, const book::StripKind& kind) {
    const auto bags = checked_count(entry.bags, QStringLiteral("bags"), most_bags);
    if (!bags)
        return unexpected(bags.error());
    const auto per_bag =
        checked_count(entry.strips_per_bag.value_or(kind.strips_per_bag), QStringLiteral("strips_per_bag"), 10'000);
    if (!per_bag)
        return unexpected(per_bag.error());
    const auto last = checked_count(entry.last_bag.value_or(*per_bag), QStringLiteral("last_bag"), *per_bag);
    if (!last)
        return unexpected(last.error());
    return Sizes{*bags, *per_bag, *last};
}

struct BagReckoned {
    Filling filling;
    Sizes sizes;
    BagFigures figures;
};
Outcome<BagReckoned> reckon(const book::Workbook& workbook, const BagEntry& entry, const book::Doing& doing,
                         const Confirmed& confirmed) {
    const auto filling = filling_of(workbook, entry.batch, entry.soak, entry.sealed_on, doing, confirmed);
    if (!filling)
        return unexpected(filling.error());
    const auto sizes = sizes_of(entry, filling->kind);
    if (!sizes)
        return unexpected(sizes.error());
    const int most = to_bag(workbook, entry.batch, filling->soak);
    if (sizes->strips() > most)
        return refuse(Why::more_than_soaked, QStringLiteral("bags"), {fact(sizes->strips()), fact(most)});
    if (const Not odd = odd_net(*filling, sizes->per_bag, entry.net, QStringLiteral("net"), confirmed))
        return because(odd);
    return BagReckoned{*filling, *sizes,
                    figures_of(workbook, *filling, sizes->bags, sizes->strips(), sizes->last, sizes->per_bag)};
}

Piece piece_of(const char* key, int count) {
    return {QLatin1String(key), count, {}};
}

} // namespace

Outcome<BagFigures> reckon_bags(const book::Workbook& workbook, const BagEntry& entry, maths::Day today) {
    book::Doing doing;
    doing.at.utc_ms = std::chrono::duration_cast<std::chrono::milliseconds>(today.time_since_epoch()).count();
    const auto reckoned = reckon(workbook, entry, doing, {Why::long_ago, Why::odd_bag_weight});
    return reckoned ? Outcome<BagFigures>(reckoned->figures) : unexpected(reckoned.error());
}

Outcome<BagsFilled> fill_bags(book::Workbook& workbook, const BagEntry& entry, const book::Doing& doing,
                              const Confirmed& confirmed) {
    return perform(workbook, piece_of("bags_filled", 1), doing, [&](book::Writing& writing) -> Outcome<BagsFilled> {
        const auto reckoned = reckon(writing.workbook(), entry, doing, confirmed);
        if (!reckoned)
            return unexpected(reckoned.error());
        const Filling& filling = reckoned->filling;
        const Sizes& sizes = reckoned->sizes;
        const auto stands = checked_text(entry.stands, QStringLiteral("stands"), 200, false);
        if (!stands)
            return unexpected(stands.error());
        std::optional<book::MaterialLot> lot;
        if (entry.bag_lot && *entry.bag_lot) {
            const auto usable = usable_lot(writing.workbook(), *entry.bag_lot, {book::Material::bags, sizes.bags},
                                           QStringLiteral("bag_lot"));
            if (!usable)
                return unexpected(usable.error());
            lot = *usable;
        }
        if (const Not bad = not_weighed_well(filling, confirmed))
            return because(bad);
        writing.name(sizes.bags, filling.batch.code);
        BagsFilled filled;
        filled.figures = reckoned->figures;
        for (int i = 0; i < sizes.bags; ++i) {
            const bool short_one = i + 1 == sizes.bags && sizes.last < sizes.per_bag;
            book::Bag bag;
            bag.code = next_code(writing, 'S');
            bag.reserved_on = doing.today();
            bag.stands = *stands;
            if (lot)
                bag.bag_lot = lot->id;
            // The weight is that of a full bag; a short one was not weighed.
            fill(bag, filling, short_one ? sizes.last : sizes.per_bag, short_one ? std::nullopt : entry.net);
            filled.bags.push_back(book::insert(writing, bag));
            filled.codes << bag.code;
        }
        end_bagged_soaks(writing, filling);
        return filled;
    });
}

Outcome<BagsFilled> reserve_labels(book::Workbook& workbook, BatchId id, std::optional<int> labels,
                                   const book::Doing& doing) {
    return perform(workbook, piece_of("labels_reserved", labels.value_or(1)), doing,
                   [&](book::Writing& writing) -> Outcome<BagsFilled> {
                       const auto batch = mixed_batch(writing.workbook(), id);
                       if (!batch)
                           return unexpected(batch.error());
                       const auto count = checked_count(labels, QStringLiteral("labels"), most_bags);
                       if (!count)
                           return unexpected(count.error());
                       writing.name(*count, batch->code);
                       BagsFilled reserved;
                       reserved.figures.bags = *count;
                       for (int i = 0; i < *count; ++i) {
                           book::Bag bag;
                           bag.code = next_code(writing, 'S');
                           bag.batch = batch->id;
                           bag.strip_kind = batch->strip_kind;
                           bag.reserved_on = doing.today();
                           reserved.bags.push_back(book::insert(writing, bag));
                           reserved.codes << bag.code;
                       }
                       return reserved;
                   });
}

Outcome<BagsFilled> fill_reserved(book::Workbook& workbook, const FillReserved& entry, const book::Doing& doing,
                                  const Confirmed& confirmed) {
    return perform(workbook, piece_of("label_filled", 1), doing, [&](book::Writing& writing) -> Outcome<BagsFilled> {
        const book::Workbook& book = writing.workbook();
        const auto filling = filling_of(book, entry.batch, std::nullopt, entry.sealed_on, doing, confirmed);
        if (!filling)
            return unexpected(filling.error());
        const auto stands = checked_text(entry.stands, QStringLiteral("stands"), 200, false);
        if (!stands)
            return unexpected(stands.error());
        if (entry.rows.empty())
            return refuse(Why::missing, bag_row_field(0, "strips"));
        std::vector<book::Bag> bags;
        std::set<qint64> seen;
        int strips = 0;
        for (std::size_t i = 0; i < entry.rows.size(); ++i) {
            const FillReserved::Row& row = entry.rows[i];
            auto bag = book::fetch(book, row.bag);
            if (!bag || bag->batch != entry.batch)
                return refuse(Why::not_found, bag_row_field(i, "bag"), bag ? QStringList{bag->code} : QStringList{});
            if (bag->void_reason)
                return refuse(Why::bag_gone, bag_row_field(i, "bag"), {bag->code});
            if (bag->packed || !seen.insert(bag->id.value).second)
                return refuse(Why::already_filled, bag_row_field(i, "bag"), {bag->code});
            const auto count =
                checked_count(row.strips.value_or(filling->kind.strips_per_bag), bag_row_field(i, "strips"), 10'000);
            if (!count)
                return unexpected(count.error());
            if (const Not odd = odd_net(*filling, *count, row.net, bag_row_field(i, "net"), confirmed))
                return because(odd);
            strips += *count;
            fill(*bag, *filling, *count, row.net);
            if (!stands->isEmpty())
                bag->stands = *stands;
            bags.push_back(*bag);
        }
        const int most = to_bag(book, entry.batch, std::nullopt);
        if (strips > most)
            return refuse(Why::more_than_soaked, bag_row_field(entry.rows.size() - 1, "strips"),
                          {fact(strips), fact(most)});
        if (const Not bad = not_weighed_well(*filling, confirmed))
            return because(bad);
        writing.name(static_cast<int>(bags.size()), bags.size() == 1 ? bags.front().code : filling->batch.code);
        BagsFilled filled;
        filled.figures = figures_of(book, *filling, static_cast<int>(bags.size()), strips, *bags.back().packed,
                                    filling->kind.strips_per_bag);
        for (const book::Bag& bag : bags) {
            book::update(writing, bag);
            filled.bags.push_back(bag.id);
            filled.codes << bag.code;
        }
        end_bagged_soaks(writing, *filling);
        return filled;
    });
}

} // namespace soakbook::work
